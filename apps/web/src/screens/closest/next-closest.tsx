import { memo, useState } from "react";
import type { Found } from "../../closest/index.ts";
import { Button, Tick } from "../../parts/index.ts";
import { FoundCard, type FoundCardProps } from "./found-card.tsx";
import { Later, STEP_MS } from "./later.tsx";

export interface NextClosestProps extends Pick<FoundCardProps, "target" | "nameOf" | "whiskeys"> {
  readonly found: Found;
  /** Key of the one that is compared with the closest. */
  readonly beside: string | null;
  readonly onBeside: (key: string | null) => void;
}

const FEW = 4;

/** The list after its first, all of it or only those that are much different. */
export const NextClosest = memo(function NextClosest({ found, beside, onBeside, ...card }: NextClosestProps) {
  const [all, setAll] = useState(false);
  const [unlikeOnly, setUnlikeOnly] = useState(false);
  const { recipes, unlike } = found;
  const next = recipes
    .map((recipe, place) => ({ recipe, place }))
    .slice(1)
    .filter(({ recipe }) => !unlikeOnly || unlike.includes(recipe.key));
  return (
    <section className="section">
      <h2>The next closest</h2>
      <Tick
        label="Only those that differ in a quarter of the glass or more"
        value={unlikeOnly}
        onChange={setUnlikeOnly}
      />
      {next.length === 0 && <p className="soft">None of the {recipes.length} closest differs that much.</p>}
      <ul className="closest-found" aria-label="The next closest">
        {next.slice(0, all ? undefined : FEW).map(({ recipe, place }) => (
          <li key={place}>
            <Later after={(place + 2) * STEP_MS}>
              <FoundCard
                recipe={recipe}
                place={place}
                beside={recipe.key === beside}
                onBeside={onBeside}
                {...card}
              />
            </Later>
          </li>
        ))}
      </ul>
      {next.length > FEW && (
        <div className="form-actions">
          <Button onClick={() => setAll(!all)}>{all ? "Fewer" : `All ${next.length}`}</Button>
        </div>
      )}
    </section>
  );
});
