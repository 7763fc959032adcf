import { NOTED_SD, type Problem } from "@partsproof/core/blending";
import { memo } from "react";
import { type Found, type Shelf, tastedTogetherAt } from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";

export interface FootingProps {
  readonly shelf: Shelf;
  readonly problem: Problem | null;
  readonly nameOf: (id: string) => string;
  readonly found: Found | null;
}

/** On what the distances rest. */
export const Footing = memo(function Footing({ shelf, problem, nameOf, found }: FootingProps) {
  const bent = Object.keys(problem?.target.exponents ?? {}).length > 0;
  const unknown = found?.unknown ?? [];
  const at = tastedTogetherAt(
    shelf,
    shelf.whiskeys.map(({ id }) => id),
  );
  return (
    <details className="closest-more">
      <summary>What the distance is</summary>
      <p className="small">
        The root of the mean squared difference over what counts, by its weight, on the scale of 0 to 10: 0 is
        the same. A blend is taken to taste as the mean of its parts
        {bent ? ", but where it says otherwise," : ""}
        {problem?.shares === "alcohol" && at !== null
          ? `, all brought to the ${at} % vol they were tasted at.`
          : ", by what is poured; the profiles were noted at different strengths or it is not known at which, and no water is reckoned in."}{" "}
        What was noted is taken to be off by about {NOTED_SD} (common practice, no source); what nobody has
        said is taken as 5, give or take 2.9.
      </p>
      {found?.done === true && (
        <p className="small">
          {found.nodes.toLocaleString("en-GB")} possibilities looked into, in{" "}
          <span className="closest-took">{Math.ceil(found.tookMs)}</span> ms.
        </p>
      )}
      {unknown.length > 0 && (
        <p className="small">
          Not said yet: {unknown.length} {unknown.length === 1 ? "intensity" : "intensities"}, of{" "}
          {listed([...new Set(unknown.map(({ id }) => id))].map(nameOf))}.
        </p>
      )}
      {shelf.untasted.length > 0 && (
        <p className="small">Without a profile, and left out: {listed(shelf.untasted.map(nameOf))}.</p>
      )}
    </details>
  );
});
