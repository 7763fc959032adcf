import type { Batch } from "@partsproof/house/protocol";
import { abvDigits, listed, printAge, printDay, printMl, proofDigits } from "../figures/index.ts";
import { contentsGive, printGive } from "../mixing/index.ts";
import { batchNumber } from "./batch-number.ts";
import "./print.css";

/** A label for a bottle of a batch, 90 by 60 mm. */
export function BottleLabel({ batch, oak }: { readonly batch: Batch; readonly oak: string }) {
  const { made } = batch;
  return (
    <article className="print-label" aria-label={`Label: ${batch.name}`}>
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
      <p>
        No. {batchNumber(batch)} · {batch.recipeName}, version {batch.recipeNumber}
      </p>
      <p>
        made {printDay(batch.madeAt)} ·{" "}
        {batch.restDueAt === null ? "no rest" : `rests until ${printDay(batch.restDueAt)}`} · youngest:{" "}
        {printAge(made.youngestAge.years)}
      </p>
      <p className="print-of">
        {listed(batch.poured.map(({ label, ml }) => `${printMl(ml)} ${label}`))}
        {oak !== "" && `. Oak: ${oak}`}
      </p>
      <p className="print-foot">
        Home use only, not for sale. Alcohol: keep from children and flames; not before driving, not in
        pregnancy.
      </p>
    </article>
  );
}
