import { manyOf, temporaryHouse } from "@partsproof/testkit";
import { boundedTable } from "./bounded-table.ts";
import { middle } from "./middle.ts";

// A large household's file restored and exported: the demo's shelf and evenings many times, in a real SQLite file.

const MOST_MS = 10_000;
const SIZE = { shelves: 72, evenings: 240, pours: 14_000 };
const ROUNDS = 3;

/** How many bounds were missed. */
export async function benchHouseholdFile(): Promise<number> {
  await using house = await temporaryHouse("sqlite");
  const demoFrom = performance.now();
  const demo = await house.client("loadDemo", {});
  const demoMs = performance.now() - demoFrom;
  const large = manyOf(await house.client("exportHousehold", { at: { household: demo.id } }), SIZE);
  const count = (name: string): number => large.tables[name]?.length ?? 0;
  const bottles = large.tables["vessel"]?.filter(({ kind }) => kind === "bottle").length ?? 0;
  const restored: number[] = [];
  const exported: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const from = performance.now();
    const { id, name } = await house.client("restoreHousehold", { body: large });
    const middle = performance.now();
    await house.client("exportHousehold", { at: { household: id } });
    restored.push(middle - from);
    exported.push(performance.now() - middle);
    await house.client("removeHousehold", { at: { household: id }, query: { confirm: name } });
  }
  const size = `${bottles} bottles, ${count("transfer")} transfers, ${count("sheet")} sheets`;
  return boundedTable(`household file of ${size}, median of ${ROUNDS}`, [
    { name: "restored", value: middle(restored), unit: "ms", most: MOST_MS },
    { name: "exported", value: middle(exported), unit: "ms", most: MOST_MS },
    { name: "demo loaded, once", value: demoMs, unit: "ms" },
  ]);
}
