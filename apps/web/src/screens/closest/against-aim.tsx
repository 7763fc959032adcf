import { memo } from "react";
import { type Aim, attributeName, type Shown } from "../../closest/index.ts";
import { DotPlot } from "../../plots/index.ts";
import { furthestWords } from "./furthest-words.ts";

export interface AgainstAimProps {
  readonly aim: Aim;
  readonly best: Shown;
  readonly other: Shown | undefined;
  /** The attributes that count, in the order of the predictions. */
  readonly counted: readonly string[];
}

/** What the closest is taken to taste of, beside what was sought, attribute by attribute; another recipe with it if wished. */
export const AgainstAim = memo(function AgainstAim({ aim, best, other, counted }: AgainstAimProps) {
  return (
    <DotPlot
      title={furthestWords(aim, counted, best.predicted, attributeName)}
      series={["what you are after", "the closest", ...(other === undefined ? [] : ["the one beside it"])]}
      rows={counted.map((attribute, n) => ({
        key: attribute,
        label: attributeName(attribute),
        values: [
          aim.profile[attribute] ?? null,
          best.predicted[n] ?? null,
          ...(other === undefined ? [] : [other.predicted[n] ?? null]),
        ],
      }))}
    />
  );
});
