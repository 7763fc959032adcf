import { mix } from "@partsproof/core/alcoholometry";
import { type Abv20, type Celsius, celsius } from "@partsproof/core/quantity";
import {
  additionUncertainty,
  type Input,
  measuredUncertainty,
  standardUncertainty,
} from "@partsproof/core/uncertainty";
import type { BodyRead, Instruments, ReduceResult } from "../../protocol/index.ts";
import { benchInput, labelInput, measuredPour, measureOf, takenAs } from "./measured.ts";
import type { Reduction } from "./reduction.ts";
import { told } from "./told.ts";

/** Where a reduction lands when its amounts are measured, and how sure the amount to add is. */
export function uncertainReduction(
  instruments: Instruments,
  { start, added }: Reduction,
  to: Abv20,
  { volumeMl }: Pick<BodyRead<"reckonReduce">, "volumeMl">,
  t: Celsius | undefined,
): NonNullable<ReduceResult["uncertainty"]> {
  measureOf(instruments);
  const at = t ?? celsius(20);
  const labelOf = (strength: Abv20): Input =>
    labelInput("label of what is added", strength, "the label of what is added", instruments, at);
  const bench = benchInput(
    t,
    [...start, ...added].map(({ abv20 }) => abv20),
    instruments,
  );
  const words = (what: string, count: number, n: number): string => (count === 1 ? what : `${what} ${n + 1}`);
  const measuredOf = (pours: Reduction["start"], what: string) =>
    pours.flatMap((pour, n) => {
      // Water may be a part as well: two things of one name would be taken for one.
      const isWater = pours === added && pour.abv20 === 0;
      const name = isWater ? "the water" : words(what, pours.length, n);
      return pour.volumeMl === 0 ? [] : [measuredPour(pour, name, at, instruments)];
    });
  const before = measuredOf(start, start.length === 1 ? "the start" : "part");
  const after = measuredOf(added, "what is added");
  const only = added.length === 1 && volumeMl !== undefined ? added[0] : undefined;
  const landing = [...before, ...after];
  const labels = before.map(({ abv20 }) => abv20);
  return {
    takenAs: takenAs(instruments, ["label", "measure", "thermometer"], t),
    abv20: told(measuredUncertainty(landing, "abv20", bench)),
    finalMl: told(measuredUncertainty(landing, "volumeMl", bench)),
    addMl:
      only === undefined ||
      !clearOf(to, mix(start).abv20, labels) ||
      !clearOf(to, only.abv20, [labelOf(only.abv20)])
        ? null
        : told(additionUncertainty({ start: before, add: labelOf(only.abv20), to }, bench)),
  };
}

/** Whether the target lies between the strengths whatever their labels are off by. */
function clearOf(to: number, strength: number, labels: readonly Input[]): boolean {
  // Of a rectangle, the half width.
  const widest = Math.max(0, ...labels.map((label) => standardUncertainty(label) * Math.sqrt(3)));
  return Math.abs(strength - to) > 1.01 * widest;
}
