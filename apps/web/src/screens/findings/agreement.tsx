import type { AgreementFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { PairPlot } from "../../plots/index.ts";
import { Luck } from "./luck.tsx";

/** Two orders of the same glasses by the same taster: how many pairs stood the same way round again. */
export function Agreement({ found }: { readonly found: AgreementFound }) {
  const { sheets, luck } = found;
  return (
    <Section title="Do they agree with themselves">
      {sheets.length === 0 && <p>{found.sentence}</p>}
      {sheets.length > 1 && luck !== null && (
        <div className="guessed">
          <p className="guessed-count">
            <span>{found.kept}</span> of {found.pairs} pairs the same way again, all sheets together
          </p>
          <Luck chance={luck} tail="this many pairs kept or more over all sheets" />
        </div>
      )}
      {sheets.map((sheet) => (
        <section key={sheet.sheetId} className="guessed" aria-label={sheet.taster}>
          <PairPlot
            title={`${sheet.taster} put ${sheet.kept} of ${sheet.pairs} pairs the same way again`}
            glasses={sheet.places.length}
            pairs={sheet.places.map(({ label, first, second }) => ({ taster: label, first, second }))}
            once="first round"
            again="second round"
          />
          <Luck chance={sheet.luck} tail="this many pairs kept or more" />
        </section>
      ))}
    </Section>
  );
}
