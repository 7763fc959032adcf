import type { Pour } from "@partsproof/house/protocol";
import { type Pouring, type Standing, WATER } from "./pouring.ts";

/** One source's share in the batch: where it came from and its mass, g; the scale's reading freed of the air. */
export interface PouredFrom {
  readonly from: Pour["from"];
  readonly label: string;
  readonly massG: number;
}

/** What was poured from each bottle, in the order of the first pour, water last; nothing that came from no shelf. */
export function poursOf(pouring: Pouring, now: Standing): readonly PouredFrom[] {
  const sums = new Map<number, number>();
  for (const { source, massG } of now.poured) sums.set(source, (sums.get(source) ?? 0) + massG);
  return [...sums]
    .toSorted(([a], [b]) => Number(a === WATER) - Number(b === WATER))
    .flatMap(([source, massG]): PouredFrom[] => {
      if (massG <= 0) return [];
      if (source === WATER) return [{ from: { kind: "water" }, label: "water", massG }];
      const { from, label } = pouring.sources[source] ?? { from: null, label: "" };
      return from === null ? [] : [{ from, label, massG }];
    });
}
