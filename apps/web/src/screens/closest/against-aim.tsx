import { memo, useMemo } from "react";
import { type Aim, attributeName, type Shown } from "../../closest/index.ts";
import { DotPlot } from "../../plots/index.ts";
import { furthestWords } from "./furthest-words.ts";
import { STEP_MS } from "./later.tsx";
import { useBySlices } from "./use-by-slices.ts";

export interface AgainstAimProps {
  readonly aim: Aim;
  readonly best: Shown;
  readonly other: Shown | undefined;
  /** The attributes that count, in the order of the predictions. */
  readonly counted: readonly string[];
}

/** Rows drawn in one piece. */
const SLICE = 6;

/** What the closest is taken to taste of, beside what was sought, attribute by attribute; another recipe with it if wished. */
export const AgainstAim = memo(function AgainstAim({ aim, best, other, counted }: AgainstAimProps) {
  const rows = useMemo(
    () =>
      counted.map((attribute, n) => ({
        key: attribute,
        label: attributeName(attribute),
        values: [
          aim.profile[attribute] ?? null,
          best.predicted[n] ?? null,
          ...(other === undefined ? [] : [other.predicted[n] ?? null]),
        ],
      })),
    [aim.profile, best, other, counted],
  );
  return (
    <DotPlot
      title={furthestWords(aim, counted, best.predicted, attributeName)}
      series={["what you are after", "the closest", ...(other === undefined ? [] : ["the one beside it"])]}
      rows={useBySlices(rows, SLICE, STEP_MS)}
    />
  );
});
