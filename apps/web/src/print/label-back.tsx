import type { Batch } from "@partsproof/house/protocol";
import { abvDigits, listed, printAge, printDay, printMl } from "../figures/index.ts";
import { contentsGive, printGive } from "../mixing/index.ts";
import { batchNumber } from "./batch-number.ts";
import { LABEL_SIZES, type LabelSize } from "./label-size.data.ts";
import { useFit } from "./use-fit.ts";
import "./print.css";
import "./label.css";

interface Props {
  readonly size: LabelSize;
  readonly batch: Batch;
  readonly oak: string;
  /** The recipe as it was made: what each part stands for. Null where it cannot be fetched. */
  readonly recipe: {
    readonly lines: readonly { readonly parts: number; readonly name: string }[];
    /** % vol at 20 °C. */
    readonly waterTo: number | null;
  } | null;
  /** The square code of the recipe's link, as SVG, where it fits. */
  readonly square: string | null;
}

/** The back of a bottle's label: what it was made of, what was done with it, what to beware of. */
export function LabelBack({ size, batch, oak, recipe, square }: Props) {
  const { made } = batch;
  const paper = useFit(
    `${size} ${oak} ${JSON.stringify(batch)} ${JSON.stringify(recipe)} ${square === null}`,
  );
  const { wide, high, codeMm } = LABEL_SIZES[size];
  const code =
    square === null ? null : (
      <img
        className="print-code"
        style={{ width: `${codeMm}mm`, height: `${codeMm}mm` }}
        src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(square)}`}
        alt="Square code: the whole recipe as a link"
      />
    );
  return (
    <article
      ref={paper}
      className={`print-label print-back print-label-${size}`}
      style={{ width: `${wide}mm`, height: `${high}mm` }}
      aria-label={`Back label: ${batch.name}`}
    >
      <p className="print-back-head">
        <b>{batch.name}</b> No. {batchNumber(batch)}
      </p>
      <div className="print-back-body">
        <div>
          {recipe !== null && size === "small" && (
            <p>
              {listed(recipe.lines.map(({ parts, name }) => `${parts} ${name}`))}
              {recipe.waterTo !== null && `, water to ${abvDigits(recipe.waterTo)} %`}
            </p>
          )}
          {recipe !== null && size !== "small" && (
            <ol>
              {recipe.lines.map(({ parts, name }, n) => (
                // oxlint-disable-next-line react/no-array-index-key -- a label never changes its lines
                <li key={n}>
                  <b>{parts}</b> {name}
                </li>
              ))}
              {recipe.waterTo !== null && (
                <li>
                  <b>+</b> water, to {abvDigits(recipe.waterTo)} % vol
                </li>
              )}
            </ol>
          )}
          <p>
            {made.abv20 === null
              ? "empty"
              : `${abvDigits(made.abv20)} ${printGive(contentsGive(made))} % vol at 20 °C`}
            {size !== "small" && `, ${printMl(made.volumeMl)}, youngest: ${printAge(made.youngestAge.years)}`}
          </p>
          <p>
            Made {printDay(batch.madeAt)}
            {batch.restDueAt !== null && `, rests until ${printDay(batch.restDueAt)}`}. Oak:{" "}
            {oak === "" ? "none in the bottle" : oak}.
          </p>
        </div>
        {size === "middle" && code}
      </div>
      {size === "large" && code !== null && (
        <figure>
          {code}
          <figcaption>The whole recipe, to be filled from any shelf</figcaption>
        </figure>
      )}
      <Warnings size={size} oak={oak !== ""} />
    </article>
  );
}

function Warnings({ size, oak }: { readonly size: LabelSize; readonly oak: boolean }) {
  return size === "small" ? (
    <p className="print-foot">
      Home use only, not for sale. Alcohol: for adults; not before driving, not in pregnancy. No flame near
      it.
    </p>
  ) : (
    <p className="print-foot">
      <b>Home use only, not for sale.</b> Alcohol: of legal age only; never before driving; not in pregnancy.
      Keep from children. No flame near it. Not for keeping in lead crystal.
      {oak && " Oak: untreated and food-grade only."}
    </p>
  );
}
