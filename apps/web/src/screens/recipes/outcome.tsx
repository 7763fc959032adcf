import { printAbv, printMl } from "../../figures/index.ts";
import type { Cellar } from "../../cellar/index.ts";
import { LABEL_TOLERANCE, printGive, reckonRecipe } from "../../mixing/index.ts";
import { BlendFacts, LiquidColumn, sentence } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ReadBody } from "./recipe-typed.ts";
import { columnTitle, segmentsOf } from "./segments.ts";
import "./outcome.css";

export interface OutcomeProps {
  readonly name: string;
  readonly body: Pick<ReadBody, "slots" | "waterTo">;
  readonly cellar: Cellar;
}

/** The recipe as a column, and what it comes to, reckoned in the browser. */
export function Outcome({ name, body, cellar }: OutcomeProps) {
  const { currency } = useHousehold();
  const reckoned = reckonRecipe(body, 700, cellar.stocks, cellar.facts);
  const give = reckoned.ok ? printGive(reckoned.give) : "";
  return (
    <div className="outcome">
      <LiquidColumn
        title={columnTitle(name, body.slots, cellar)}
        segments={[
          ...segmentsOf(body.slots, cellar),
          ...(reckoned.ok && reckoned.waterMl > 0
            ? [
                {
                  label: "water",
                  amount:
                    (reckoned.waterMl / reckoned.pouredMl) *
                    body.slots.reduce((n, { parts }) => n + parts, 0),
                  amountText: "+",
                  sub: `${printMl(reckoned.waterMl)} to 700 mL poured`,
                  water: true,
                },
              ]
            : []),
        ]}
      />
      {!reckoned.ok && (
        <p className="soft">
          {reckoned.why === "no parts"
            ? "All parts are zero: nothing to mix."
            : body.slots.some(({ of }) => of.kind === "open")
              ? "A line is open: fill it from your shelf, and what it comes to shows here."
              : "Choose what each part stands for, and what they come to shows here."}
        </p>
      )}
      {reckoned.ok && (
        <>
          {reckoned.waterRefused !== null && (
            <p className="field-issue">
              {sentence(reckoned.waterRefused)} Water only brings a strength down.
            </p>
          )}
          <h2 className="unseen">What it comes to</h2>
          <BlendFacts
            of={reckoned.result}
            currency={currency}
            perLitre={reckoned.result.cost.perLitre}
            give={give}
            noVolume
          />
          <p className="soft small">
            {give} if every label is right to {LABEL_TOLERANCE} % vol. Poured to 700 mL
            {reckoned.waterMl > 0 && ` with ${printMl(reckoned.waterMl)} of water`} it makes{" "}
            {printMl(reckoned.result.volumeMl)}: it shrinks by{" "}
            {Math.max(0, reckoned.contractionMl).toFixed(1)}&nbsp;mL.
            {reckoned.result.abv20 !== null &&
              ` Proof is at 60 °F, ${printAbv(reckoned.result.abv20)} at 20 °C.`}
          </p>
        </>
      )}
    </div>
  );
}
