import { REFERENCE_LABEL, type SetsFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { Verdict } from "../flights/verdict.tsx";
import { Luck } from "./luck.tsx";
import { pickedWords } from "./picked-words.ts";

/** Whether two were told apart: how many sets were right, how often luck does as well, and every set as it stood. */
export function Sets({ found }: { readonly found: SetsFound }) {
  const { between, answered, right, needed, luck, sides } = found;
  return (
    <Section title="Could they be told apart">
      <div className="guessed">
        <p className="guessed-count">
          <span>{right}</span> of {answered}{" "}
          {sides === 1 ? (answered === 1 ? "set right" : "sets right") : "picked the same one"}
        </p>
        {luck === null && <p>{found.sentence}</p>}
        {luck !== null && (
          <Luck
            chance={luck}
            sides={sides}
            tail={sides === 1 ? "this many right or more" : "one of the two picked this often or more"}
          />
        )}
        <p>
          By luck alone {found.chance} of the answers {sides === 1 ? "are right" : "fall on each"}.{" "}
          {needed === null
            ? "So few sets cannot be told from luck, whatever is answered."
            : `Of ${answered}, ${needed} or more would be hard to put down to luck.`}
        </p>
        <p className="soft small">
          {between.map(({ label }) => label).join(" and ")}, by {found.standard}. {found.task}
          {found.expected !== null && (
            <>
              {" "}
              Said beforehand, under seal, to have more:{" "}
              {between.find(({ glass }) => glass === found.expected)?.label}.
            </>
          )}
        </p>
      </div>
      <div className="guessed-sheets">
        {found.sheets.map((sheet) => (
          <section key={sheet.sheetId} className="guessed" aria-label={sheet.taster}>
            <h3>{sheet.taster}</h3>
            <p className="guessed-count">
              {sheet.right === null ? (
                <>{sheet.answered} answered</>
              ) : (
                <>
                  <span>{sheet.right}</span> of {sheet.answered} right
                </>
              )}
            </p>
            {!sheet.counted && <p className="soft">The sheet was not locked; its answers do not count.</p>}
            <table className="truth">
              <thead>
                <tr>
                  <th scope="col">Set</th>
                  <th scope="col">Stood there, and was picked</th>
                </tr>
              </thead>
              <tbody>
                {sheet.sets.map((set) => (
                  <tr key={set.set}>
                    <th scope="row">{set.set}</th>
                    <td>
                      <ul className="setrow">
                        {set.glasses.map(({ code, glass }, i) => (
                          <li
                            // R stands first only; a code stands once.
                            key={code === REFERENCE_LABEL ? `R${String(i)}` : code}
                            className={set.picked?.includes(code) === true ? "setrow-picked" : ""}
                          >
                            <b>{code}</b>{" "}
                            <span className="name">
                              {between.find((one) => one.glass === glass)?.label ?? ""}
                            </span>
                            {set.picked?.includes(code) === true && <span className="unseen">, picked</span>}
                          </li>
                        ))}
                      </ul>
                      <span className="truth-guess">
                        <Verdict right={set.right} />
                        {pickedWords(set)}
                      </span>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        ))}
      </div>
    </Section>
  );
}
