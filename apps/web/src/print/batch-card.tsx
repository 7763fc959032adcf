import type { Batch } from "@partsproof/house/protocol";
import { abvDigits, printAge, printCask, printDay, printG, printMl, printShare } from "../figures/index.ts";
import { contentsGive, printGive } from "../mixing/index.ts";
import { LiquidColumn } from "../parts/index.ts";
import { batchNumber } from "./batch-number.ts";
import "./print.css";

/** A card with all that is needed to make a batch again. */
export function BatchCard({ batch, oak }: { readonly batch: Batch; readonly oak: string }) {
  const { made } = batch;
  return (
    <article className="print-card" aria-label={`Card: ${batch.name}`}>
      <h2 className="print-name">{batch.name}</h2>
      <p>
        No. {batchNumber(batch)} · {batch.recipeName}, version {batch.recipeNumber}, made{" "}
        {printDay(batch.madeAt)}
      </p>
      <div className="print-body">
        <LiquidColumn
          size="print"
          title={`What was poured into ${batch.name}`}
          segments={batch.poured.map((pour) => ({
            label: pour.label,
            amount: pour.ml,
            amountText: printMl(pour.ml),
            sub: printG(pour.g),
            water: pour.label.toLowerCase() === "water",
          }))}
        />
        <dl>
          <dt>Strength</dt>
          <dd>
            {made.abv20 === null
              ? "empty"
              : `${abvDigits(made.abv20)} ${printGive(contentsGive(made))} % vol, from labels good to 0.3`}
          </dd>
          <dt>Volume</dt>
          <dd>{printMl(made.volumeMl)}</dd>
          <dt>Youngest</dt>
          <dd>{printAge(made.youngestAge.years)}</dd>
          {made.grainShares.length > 0 && (
            <>
              <dt>Grains</dt>
              <dd>
                {made.grainShares.map(({ grain, share }) => `${printShare(share)} ${grain}`).join(", ")}
              </dd>
            </>
          )}
          {made.casks.length > 0 && (
            <>
              <dt>Casks</dt>
              <dd>{made.casks.map((cask) => printCask(cask)).join("; ")}</dd>
            </>
          )}
          <dt>Rest</dt>
          <dd>{batch.restDays === null ? "none" : `${batch.restDays} days`}</dd>
          {oak !== "" && (
            <>
              <dt>Oak</dt>
              <dd>{oak}</dd>
            </>
          )}
        </dl>
      </div>
      {batch.note !== "" && <p>{batch.note}</p>}
      <p className="print-foot">
        Home use only, not for sale. mL and % vol at 20 °C. Strong spirit: no flame near it, no lead crystal.
        {oak !== "" && " Oak: untreated and food-grade only."}
      </p>
    </article>
  );
}
