import { page, repeatableRng, shuffled } from "@partsproof/core/statistics";
import { boundedTable } from "./bounded-table.ts";
import { timed } from "./timed.ts";

// Page's test, p counted exactly: twelve judges of as many items as a table pours, and of the most it is counted for.

const JUDGES = 12;
const ROWS = [
  { items: 8, most: 50 },
  { items: 12, most: undefined },
] as const;

/** How many bounds were missed. */
export function benchTrendTest(): number {
  return boundedTable(
    `Page's test, ${JUDGES} judges, median`,
    ROWS.map(({ items, most }) => {
      const rng = repeatableRng(66);
      const all = Array.from({ length: items }, (_, i) => i);
      const table = Array.from({ length: JUDGES }, () => shuffled(all, rng));
      const { method } = page(table);
      const [nanoseconds = Number.NaN] = timed([{ name: `${items}`, size: 1, run: () => page(table).p }], 15);
      const figure = {
        name: `${items} items`,
        value: nanoseconds / 1e6,
        unit: "ms" as const,
        beside: method,
      };
      return most === undefined ? figure : { ...figure, most };
    }),
  );
}
