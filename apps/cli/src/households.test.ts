import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Archive, Household, Vessel } from "@partsproof/house/protocol";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type CliAt, cliAt, issuesOf, refusalsOf } from "./fixtures/cli.ts";
import { words } from "./fixtures/words.ts";

let at: CliAt;
beforeAll(async () => {
  at = await cliAt();
});
afterAll(() => at[Symbol.asyncDispose]());

const refused = async (...args: readonly string[]) => refusalsOf(await at.run([...args, "--json"]));

describe("households", { timeout: 120_000 }, () => {
  test("none: says how to begin one", async () => {
    expect(await refused("shelf", "list")).toEqual(["no_household household"]);
  });

  test("one: need not be named. Several: must be, and are listed", async () => {
    const kitchen: Household = await at.ask("household", "add", "Kitchen table", "--currency", "eur");
    expect(kitchen).toMatchObject({ name: "Kitchen table", currency: "EUR", demo: false });
    expect(await at.ask("shelf", "list")).toEqual({ items: [], next: null });
    const cellar: Household = await at.ask("household", "add", "Cellar");
    const run = await at.run(["shelf", "list", "--json"]);
    expect(run.code).toBe(2);
    expect(issuesOf(run)[0]).toMatchObject({
      code: "household_not_named",
      limit: expect.stringContaining(`Kitchen table (${kitchen.id}), Cellar (${cellar.id})`),
    });
    expect(await at.ask("household", "show", "cellar")).toEqual(cellar);
    expect(await at.ask("shelf", "list", "--household", cellar.id)).toEqual({ items: [], next: null });
    expect(await refused("shelf", "list", "--household", "attic")).toEqual(["unknown_household household"]);
    expect(await refused("household", "add", "X", "--currency", "euro")).toEqual([
      "currency_unreadable currency",
    ]);
  });

  test("a whiskey on one shelf is not found from the other", async () => {
    const rye = ["--maker", "Dunnage Row", "--name", "Barn Door", "--strength", "62.4"];
    await at.ask("shelf", "add", ...rye, "--household", "cellar");
    expect(await refused("shelf", "show", "Dunnage Row Barn Door", "--household", "kitchen table")).toEqual([
      "unknown_vessel vessel",
    ]);
  });

  test("a bottle that is refused leaves no whiskey behind", async () => {
    const more = [
      "--maker",
      "Ninepenny Mill",
      "--name",
      "Sweet Sack",
      "--strength",
      "46",
      "--household",
      "cellar",
    ];
    const whiskeys = await at.ask("whiskey", "list", "--household", "cellar");
    expect(await refused("shelf", "add", ...more, "--size", "500ml", "--level", "600ml")).toEqual([
      "vessel_overflow level",
    ]);
    // The house alone knows this limit, so the whiskey was there for a moment.
    expect(await refused("shelf", "add", ...more, "--label", "x".repeat(121))).toEqual([
      "value_too_large label",
    ]);
    expect(await refused("shelf", "add", ...more, "--grain", "wheat=70")).toHaveLength(1);
    expect(await at.ask("whiskey", "list", "--household", "cellar")).toEqual(whiskeys);
  });

  test("a known whiskey is not added twice, and has its facts", async () => {
    const rye = [
      "--maker",
      "DUNNAGE ROW",
      "--name",
      "barn door",
      "--strength",
      "60",
      "--household",
      "cellar",
    ];
    expect(await refused("shelf", "add", ...rye)).toEqual(["whiskey_known name"]);
    const here = ["--household", "cellar", "--whiskey", "Dunnage Row Barn Door"];
    expect(await refused("shelf", "add", ...here, "--strength", "60")).toEqual(["flags_exclude strength"]);
    const { bottle }: { bottle: Vessel } = await at.ask(
      "shelf",
      "add",
      ...here,
      "--label",
      "Second",
      "--level",
      "0",
    );
    expect(bottle).toMatchObject({ label: "Second", sealed: false, contents: { volumeMl: 0 } });
    expect(await refused("shelf", "add", "--household", "cellar", "--name", "x")).toEqual([
      "flag_missing maker",
      "flag_missing strength",
    ]);
    expect(await refused("shelf", "add", ...rye, "--price", "1,000.00")).toEqual(["price_unreadable price"]);
  });

  test("pour, undo, and what the vessel does not hold", async () => {
    const here = ["--household", "cellar"];
    const jug: Vessel = await at.ask(
      ...words(`shelf add-vessel --kind jug --label "Glass jug" --capacity "1 l"`),
      ...here,
    );
    const into = ["--from", "dunnage row barn door", "--to", "glass jug"];
    const poured: { id: string } = await at.ask("shelf", "pour", ...into, "--amount", "2 oz", ...here);
    const held: Vessel = await at.ask("shelf", "show", jug.id.slice(0, 20), ...here);
    expect(held.contents.volumeMl).toBeCloseTo(59.147, 3);
    expect(await refused("shelf", "pour", ...into, "--amount", "900ml", ...here)).toEqual([
      "vessel_short amount",
    ]);
    await at.ask("shelf", "undo", poured.id, ...here);
    expect(await at.ask("shelf", "show", "Glass jug", ...here)).toMatchObject({ contents: { volumeMl: 0 } });
    expect(await at.ask("shelf", "list", "--kind", "jug", ...here)).toMatchObject({
      items: [{ id: jug.id }],
    });
    expect(await refused("shelf", "pour", ...into, "--amount", "a dram", ...here)).toEqual([
      "amount_unreadable amount",
    ]);
  });

  test("export writes a file that was not there, whole; restore makes another household of it", async () => {
    const file = join(at.data, "cellar.json");
    await at.ask("household", "export", "--to", file, "--household", "cellar");
    const archive = JSON.parse(await readFile(file, "utf8")) as Archive;
    expect(archive).toMatchObject({ format: "partsproof-household", household: { name: "Cellar" } });
    expect((await readdir(at.data)).filter((name) => name.endsWith(".part"))).toEqual([]);
    expect(await refused("household", "export", "--to", file, "--household", "cellar")).toEqual([
      "file_exists to",
    ]);
    const nowhere = join(at.data, "no", "such", "folder.json");
    expect(await refused("household", "export", "--to", nowhere, "--household", "cellar")).toEqual([
      "file_not_written to",
    ]);
    const copy: Household = await at.ask("household", "restore", "--from", file);
    const labels = async (household: string) => {
      const { items }: { items: Vessel[] } = await at.ask("shelf", "list", "--household", household);
      return items.map(({ label, contents }) => `${label} ${contents.volumeMl}`).toSorted();
    };
    const [original] = ((await at.ask("household", "list")) as { items: Household[] }).items.filter(
      ({ name, id }) => name === "Cellar" && id !== copy.id,
    );
    expect(await labels(copy.id)).toEqual(await labels(original?.id ?? ""));
    await writeFile(join(at.data, "broken.json"), "{");
    expect(await refused("household", "restore", "--from", join(at.data, "broken.json"))).toEqual([
      "json_unreadable from",
    ]);
    await writeFile(join(at.data, "other.json"), "{}");
    expect(await refused("household", "restore", "--from", join(at.data, "other.json"))).not.toEqual([]);
    expect(await refused("household", "restore", "--from", nowhere)).toEqual(["file_not_read from"]);
  });

  test("remove wants the whole name", async () => {
    expect(await refused("household", "remove", "kitchen table", "--confirm", "kitchen")).toHaveLength(1);
    await at.ask("household", "remove", "kitchen table", "--confirm", "Kitchen table");
    const { items }: { items: Household[] } = await at.ask("household", "list");
    expect(items.map(({ name }) => name)).not.toContain("Kitchen table");
  });

  test("the demo is loaded once and removed again", async () => {
    expect(await at.ask("demo", "load")).toMatchObject({ demo: true });
    expect(await refused("demo", "load")).toEqual(["demo_loaded"]);
    await at.ask("demo", "remove");
    expect(await refused("demo", "remove")).toEqual(["no_demo"]);
  });
});
