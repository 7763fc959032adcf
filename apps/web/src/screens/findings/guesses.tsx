import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { Verdict } from "../flights/verdict.tsx";
import { Luck } from "./luck.tsx";

/** Each sheet's guesses beside the truth, and how many would do as well by guessing. */
export function Guesses({ finding }: { readonly finding: Finding }) {
  const { pooledGuesses: pooled, sheets } = finding;
  return (
    <Section title="Who could tell which was which">
      {pooled === null ? (
        <p>Nobody named a glass.</p>
      ) : (
        sheets.length > 1 && (
          <div className="guessed guessed-all">
            <p className="guessed-count">
              <span>{pooled.right}</span> of {pooled.guessed} right, all sheets together
            </p>
            <Luck chance={pooled.luck} tail="this many right or more over all sheets" />
          </div>
        )
      )}
      <div className="guessed-sheets">
        {sheets.map((sheet) => (
          <OneSheet key={sheet.sheetId} sheet={sheet} finding={finding} />
        ))}
      </div>
      <p className="soft small">
        Names on offer:{" "}
        {finding.namesOnOffer
          .map((name) => (name.count > 1 ? `${name.label} (${name.count} times)` : name.label))
          .join("; ")}
        .
      </p>
    </Section>
  );
}

interface OneSheetProps {
  readonly sheet: Finding["sheets"][number];
  readonly finding: Finding;
}

function OneSheet({ sheet, finding }: OneSheetProps) {
  const counted = sheet.state === "locked";
  return (
    <section className="guessed" aria-label={sheet.taster}>
      <h3>{sheet.taster}</h3>
      {sheet.guessed > 0 && (
        <p className="guessed-count">
          <span>{sheet.right}</span> of {sheet.guessed} right
        </p>
      )}
      {sheet.luck !== null && <Luck chance={sheet.luck} tail="this many right or more" />}
      {!counted && <p className="soft">The sheet was not locked; its guesses do not count.</p>}
      <table className="truth">
        <thead>
          <tr>
            <th scope="col">{finding.flight.pouring === "alone" ? "Place" : "Glass"}</th>
            <th scope="col">Was, and was guessed</th>
          </tr>
        </thead>
        <tbody>
          {sheet.glasses.map((glass) => (
            <tr key={glass.code}>
              <th scope="row">{glass.code}</th>
              <td>
                <span className="name">{glass.label}</span>
                <span className="truth-guess">
                  <Verdict right={glass.right} />
                  {glass.right === null
                    ? "no guess"
                    : glass.right
                      ? "guessed right"
                      : `guessed ${glass.guessLabel ?? ""}, wrong`}
                  {glass.sure !== null && `, ${glass.sure} % sure`}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
