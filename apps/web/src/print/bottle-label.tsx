import type { Batch } from "@partsproof/house/protocol";
import { abvDigits, listed, printAge, printDay, printMl, proofDigits } from "../figures/index.ts";
import "./print.css";

/** A label for a bottle of a batch, 90 by 60 mm. */
export function BottleLabel({ batch }: { readonly batch: Batch }) {
  const { made } = batch;
  return (
    <article className="print-label" aria-label={`Label: ${batch.name}`}>
      <p className="print-name">{batch.name}</p>
      <p className="print-strength">
        {made.abv20 === null ? (
          "empty"
        ) : (
          <>
            <b>{abvDigits(made.abv20)}</b> % vol
            {made.proof60F !== null && <span> · {proofDigits(made.proof60F)} proof</span>}
          </>
        )}
      </p>
      <p>
        {batch.recipeName}, version {batch.recipeNumber} · made {printDay(batch.madeAt)}
      </p>
      <p>
        {batch.restDueAt === null ? "no rest" : `rests until ${printDay(batch.restDueAt)}`} · youngest:{" "}
        {printAge(made.youngestAge.years)}
      </p>
      <p className="print-of">{listed(batch.poured.map(({ label, ml }) => `${printMl(ml)} ${label}`))}</p>
      <p className="print-foot">
        Blended at home, not for sale. Strong spirit: away from flames and children.
      </p>
    </article>
  );
}
