import { useDeferredValue, useMemo } from "react";
import { type Aim, attributeName, type Shown } from "../../closest/index.ts";
import { DotPlot } from "../../plots/index.ts";
import { furthestWords } from "./furthest-words.ts";

export interface AgainstAimProps {
  readonly aim: Aim;
  readonly best: Shown;
  readonly other: Shown | undefined;
  readonly attributes: readonly string[];
}

/** What the closest is taken to taste of, beside what was sought, attribute by attribute; another recipe with it if wished. */
export function AgainstAim(props: AgainstAimProps) {
  const { aim, best, other, attributes } = useDeferredValue(props);
  const counted = useMemo(
    () => attributes.filter((attribute) => best.predicted[attribute] !== undefined),
    [attributes, best],
  );
  return (
    <DotPlot
      title={furthestWords(aim, best, attributeName)}
      series={["what you are after", "the closest", ...(other === undefined ? [] : ["the one beside it"])]}
      rows={counted.map((attribute) => ({
        key: attribute,
        label: attributeName(attribute),
        values: [
          aim.profile[attribute] ?? null,
          best.predicted[attribute] ?? null,
          ...(other === undefined ? [] : [other.predicted[attribute] ?? null]),
        ],
      }))}
    />
  );
}
