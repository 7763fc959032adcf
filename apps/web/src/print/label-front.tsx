import type { Batch } from "@partsproof/house/protocol";
import { abvDigits, listed, printAge, printDay, printMl, proofDigits } from "../figures/index.ts";
import { contentsGive, printGive } from "../mixing/index.ts";
import { LiquidColumn } from "../parts/index.ts";
import { batchNumber } from "./batch-number.ts";
import { LABEL_SIZES, type LabelSize } from "./label-size.data.ts";
import { useFit } from "./use-fit.ts";
import "./print.css";
import "./label.css";

/** More pours than these do not fit beside a column on paper. */
const DRAWN = 4;
/** Characters of a name that leaves room for the column. */
const SHORT = 60;

interface Props {
  readonly size: LabelSize;
  readonly batch: Batch;
  readonly oak: string;
}

/** The front of a bottle's label: enough by itself where only one side is stuck on. */
export function LabelFront({ size, batch, oak }: Props) {
  const { made, poured } = batch;
  const paper = useFit(`${size} ${oak} ${JSON.stringify(batch)}`);
  const rests = batch.restDueAt === null ? "no rest" : `rests until ${printDay(batch.restDueAt)}`;
  const { wide, high } = LABEL_SIZES[size];
  const drawn = size === "large" && poured.length <= DRAWN && batch.name.length <= SHORT;
  return (
    <article
      ref={paper}
      className={`print-label print-label-${size}`}
      style={{ width: `${wide}mm`, height: `${high}mm` }}
      aria-label={`Label: ${batch.name}`}
    >
      <p className="print-name">{batch.name}</p>
      <p className="print-strength">
        {made.abv20 === null ? (
          "empty"
        ) : (
          <>
            <b>{abvDigits(made.abv20)}</b> {printGive(contentsGive(made))} % vol
            {made.proof60F !== null && <span> · {proofDigits(made.proof60F)} proof</span>}
          </>
        )}
      </p>
      {size === "small" ? (
        <p>
          No. {batchNumber(batch)} · made {printDay(batch.madeAt)}
        </p>
      ) : (
        <>
          <p>
            No. {batchNumber(batch)} · {batch.recipeName}, version {batch.recipeNumber}
          </p>
          <p>
            made {printDay(batch.madeAt)} · {rests} · youngest: {printAge(made.youngestAge.years)}
          </p>
        </>
      )}
      {size !== "small" && !drawn && (
        <p className="print-of">
          {listed(poured.map(({ label, ml }) => `${printMl(ml)} ${label}`))}
          {oak !== "" && `. Oak: ${oak}`}
        </p>
      )}
      {drawn && (
        <div className="print-of">
          <LiquidColumn
            size="print"
            title={`What was poured into ${batch.name}`}
            segments={poured.map((pour) => ({
              label: pour.label,
              amount: pour.ml,
              amountText: printMl(pour.ml),
              water: pour.label.toLowerCase() === "water",
            }))}
          />
          {oak !== "" && <p>Oak: {oak}</p>}
        </div>
      )}
      <p className="print-foot">
        {size === "small"
          ? "Home use only, not for sale. Alcohol: keep from children and flames."
          : "Home use only, not for sale. Alcohol: keep from children and flames; not before driving, not in pregnancy."}
      </p>
    </article>
  );
}
