import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import {
  type AnswerOf,
  type Batch,
  createClient,
  type Finding,
  type Flight,
  type Household,
  type PourList,
  type Sheet,
  type Vessel,
  type Whiskey,
} from "@partsproof/house/protocol";
import { openEmbeddedHouse } from "@partsproof/server";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type CliAt, cliAt, issuesOf } from "./fixtures/cli.ts";
import { words } from "./fixtures/words.ts";

// A whole evening, where it matters in processes of their own: two bottles, a recipe 2:1, a batch, and a flight that somebody else
// pours. What the commands print is held against what the API answers for the same thing, in another process.

const SUNDAY = "Sunday, blind";
let at: CliAt;
let household: Household;
let made: AnswerOf<"addFlight">;
const tokens = new Map<string, string>();

beforeAll(async () => {
  at = await cliAt();
});
afterAll(() => at[Symbol.asyncDispose]());

/** The house of the same folder, opened here. */
async function api<T>(ask: (client: ReturnType<typeof createClient>) => Promise<T>): Promise<T> {
  const house = await openEmbeddedHouse(at.data);
  try {
    return await ask(createClient(house.fetch, "http://house.test"));
  } finally {
    await house.close();
  }
}

const inHousehold = (more: Readonly<Record<string, string>> = {}) => ({ household: household.id, ...more });

describe("an evening on the command line", { timeout: 180_000 }, () => {
  test("a household, and two whiskeys with their bottles", async () => {
    household = await at.json("household", "add", "Kitchen table", "--currency", "EUR");
    const rye = ["--maker", "Dunnage Row", "--name", "Barn Door", "--strength", "62.4", "--kind", "rye"];
    const first: { whiskey: Whiskey; bottle: Vessel } = await at.json(
      ...words(`shelf add`),
      ...rye,
      ...words(`--grain rye=95 --grain barley=5 --cask "American oak:nothing" --price 52.50 --size 700ml`),
    );
    const wheat = [
      "--maker",
      "Ninepenny Mill",
      "--name",
      "Sweet Sack",
      "--strength",
      "92 proof",
      "--age",
      "6",
    ];
    const second: { whiskey: Whiskey; bottle: Vessel } = await at.ask(
      ...words(`shelf add`),
      ...wheat,
      ...words(`--price 40 --level 500ml --gone`),
    );
    expect(first.whiskey).toMatchObject({
      priceMinor: 5250,
      strength: { basis: "abv20", value: 62.4 },
      grains: [
        { grain: "rye", percent: 95 },
        { grain: "barley", percent: 5 },
      ],
      casks: [{ species: "American oak", held: "nothing" }],
    });
    expect(first.bottle).toMatchObject({ sealed: true, capacityMl: 700 });
    expect(second.whiskey).toMatchObject({ availability: "gone", ageYears: 6, proof60F: 92 });
    expect(second.bottle.sealed).toBe(false);
    expect(second.bottle.contents.volumeMl).toBeCloseTo(500, 9);
    expect(await at.ask("shelf", "list")).toEqual(await api((c) => c("listVessels", { at: inHousehold() })));
    expect(await at.ask("whiskey", "list")).toEqual(
      await api((c) => c("listWhiskeys", { at: inHousehold() })),
    );
    expect(await at.ask("shelf", "show", "ninepenny mill SWEET sack")).toEqual(second.bottle);
  });

  test("a recipe in parts, seen before it is written, then revised", async () => {
    const slots = ["--slot", "2@Dunnage Row Barn Door", "--slot", "1@sweet sack"];
    const preview: { result: { abv20: number } } = await at.ask(
      "recipe",
      "preview",
      ...slots,
      "--volume",
      "750ml",
    );
    // 92 proof is 46.08 % vol at 20 °C; 2:1 with 62.4 % vol is what `mix` says.
    const mixed: { abv20: number } = await at.ask(
      ...words(`mix --part 2@62.4 --part 1@92proof --volume 750ml`),
    );
    expect(preview.result.abv20).toBeCloseTo(mixed.abv20, 9);
    await at.ask(
      "recipe",
      "add",
      "--name",
      "Two to one",
      ...slots,
      "--rest",
      "0",
      "--target",
      "ninepenny mill sweet sack",
    );
    const revised = await at.ask("recipe", "revise", "two to one", "--water-to", "50", "--rest", "0");
    expect(revised).toMatchObject({
      latest: { number: 2, waterTo: { basis: "abv20", value: 50 }, slots: [{ parts: 2 }, { parts: 1 }] },
    });
    expect(await at.ask("recipe", "show", "Two to one")).toEqual(revised);
    expect(await at.ask("recipe", "history", "Two to one")).toMatchObject({
      items: [{ number: 2 }, { number: 1, waterTo: null }],
    });
  });

  test("a batch as planned takes its stock off the shelf", async () => {
    const plan = await at.ask("batch", "plan", "--recipe", "two to one", "--final", "300ml");
    expect(plan).toMatchObject({ issues: [], recipeNumber: 2 });
    const batch: Batch = await at.ask(
      ...words(
        `batch add --recipe "two to one" --final 300ml --name "First try" --vessel-label "Blending bottle 1" --capacity 500ml`,
      ),
    );
    expect(batch.made.volumeMl).toBeCloseTo(300, 6);
    expect(batch.made.abv20).toBeCloseTo(50, 6);
    expect(await at.ask("batch", "show", "first try")).toEqual(
      await api((c) => c("getBatch", { at: inHousehold({ batch: batch.id }) })),
    );
    const shelf: { items: Vessel[] } = await at.ask("shelf", "list");
    const rye = shelf.items.find(({ label }) => label === "Dunnage Row Barn Door");
    const poured = batch.poured.find(({ label }) => label === "Dunnage Row Barn Door");
    expect((rye?.contents.volumeMl ?? 0) + (poured?.ml ?? 0)).toBeCloseTo(700, 6);
  });

  test("a flight for two tasters, poured by a third, its key sealed", async () => {
    await at.ask("taster", "add", "Ilka");
    await at.ask("taster", "add", "Jorren");
    made = await at.ask(
      ...words(
        `flight add --name "${SUNDAY}" --pour 15ml --pourer Wynna --glass "Blending bottle 1" --glass "Ninepenny Mill Sweet Sack" --glass "ninepenny mill sweet sack" --taster ilka --taster jorren --distractor "Dunnage Row Barn Door" --target "Sweet Sack"`,
      ),
    );
    expect(made.flight.namesOnOffer.map(({ label, count }) => [label, count])).toEqual([
      ["Dunnage Row Barn Door", 1],
      ["First try", 1],
      ["Ninepenny Mill Sweet Sack", 2],
    ]);
    const shown = await at.run(["flight", "show", SUNDAY, "--json"]);
    expect(JSON.parse(shown.stdout)).toEqual(
      await api((c) => c("getFlight", { at: inHousehold({ flight: made.flight.id }) })),
    );
    const list: PourList = await at.ask("flight", "pour-list", SUNDAY, "--token", made.pourerToken ?? "");
    for (const { glasses } of list.tasters) {
      for (const { code } of glasses) expect(shown.stdout).not.toContain(`"${code}"`);
    }
    const peek = await at.run(["flight", "pour-list", SUNDAY, "--json"]);
    expect([peek.code, peek.stdout]).toEqual([2, ""]);
    expect(issuesOf(peek)[0]?.code).toBe("token_needed");
    const early = await at.run(["flight", "finding", SUNDAY, "--json"]);
    expect([early.code, issuesOf(early)[0]?.code]).toEqual([2, "not_revealed"]);
    const poured = await at.run(["flight", "poured", SUNDAY, "--json"], {
      PARTSPROOF_TOKEN: made.pourerToken ?? "",
    });
    expect(JSON.parse(poured.stdout)).toMatchObject({ state: "tasting" });
  });

  test.for(["Ilka", "Jorren"])("%s takes a sheet, fills it in two goes and locks it", async (taster) => {
    const which = [SUNDAY, "--taster", taster];
    const young = await at.run(["flight", "take", ...which, "--json"]);
    expect([young.code, issuesOf(young)[0]?.code]).toEqual([2, "legal_age_needed"]);
    const taken: AnswerOf<"takeSheet"> = await at.ask("flight", "take", ...which, "--of-legal-age");
    tokens.set(taster, taken.token);
    const [a = "", b = "", c = ""] = taken.sheet.glasses.map(({ code }) => code);
    const mine = ["--token", taken.token];
    await at.ask(
      "flight",
      "sheet",
      "edit",
      ...which,
      ...mine,
      "--nose",
      `${a}=salt, pear`,
      "--score",
      `${b}=80`,
      "--strong",
      `${a}=nose:smoke=6`,
      "--typed-by",
      "Wynna",
    );
    const sheet: Sheet = await at.ask(
      ...words(`flight sheet edit`),
      ...which,
      ...mine,
      ...words(
        `--finish2 ${a}=long --rank "${a} > ${b} = ${c}" --guess "${a}=first try" --guess "${b}=Ninepenny Mill Sweet Sack" --guess "${c}=ninepenny mill sweet sack"`,
      ),
    );
    // What was written in the first go is still there after the second.
    expect(sheet.notes.find(({ code }) => code === a)).toEqual({
      code: a,
      first: { nose: "salt, pear", palate: "", finish: "" },
      second: { nose: "", palate: "", finish: "long" },
      score: null,
    });
    expect(sheet.ranking).toEqual([[a], [b, c]]);
    expect(sheet).toMatchObject({
      typedBy: "Wynna",
      strengths: [{ code: a, pass: "first", section: "nose", attribute: "smoke.smoke", strength: 6 }],
    });
    const shown = await at.run(["flight", "sheet", "show", ...which], { PARTSPROOF_TOKEN: taken.token });
    expect(shown.stdout).toMatch(/How strong, nose\s+smoke 6 of 10/);
    expect(shown.stdout).toMatch(/Typed from paper\s+by Wynna/);
    const twice = await at.run(
      [
        "flight",
        "sheet",
        "edit",
        ...which,
        "--guess",
        `${b}=First try`,
        "--guess",
        `${c}=First try`,
        "--json",
      ],
      { PARTSPROOF_TOKEN: taken.token },
    );
    expect(twice.code).toBe(2);
    expect(issuesOf(twice)[0]).toMatchObject({ code: "name_used_too_often" });
    expect(issuesOf(twice)[0]?.path[0]).toBe("guess");
    expect(await at.ask("flight", "lock", ...which, ...mine)).toMatchObject({ state: "locked" });
    const late = await at.run(["flight", "sheet", "edit", ...which, ...mine, "--score", `${a}=1`, "--json"]);
    expect([late.code, issuesOf(late)[0]?.code]).toEqual([2, "sheet_locked"]);
  });

  test("the reveal, and the finding in the API's words", async () => {
    const revealed: Finding = await at.json("flight", "reveal", SUNDAY);
    const finding = await api((c) => c("getFinding", { at: inHousehold({ flight: made.flight.id }) }));
    expect(revealed).toEqual(finding);
    expect(await at.ask("flight", "finding", SUNDAY)).toEqual(finding);
    expect(revealed.sheets.map(({ guessed }) => guessed)).toEqual([3, 3]);
    const again = await at.run(["flight", "reveal", SUNDAY, "--json"]);
    expect([again.code, issuesOf(again)[0]?.code]).toEqual([2, "already_revealed"]);
    const text = await at.run(["flight", "finding", SUNDAY]);
    expect(text.stdout).toContain(finding.headline);
    expect(text.stdout).toContain("US standard drinks");
    expect(await at.ask("findings", "list")).toEqual(
      await api((c) => c("listFindings", { at: inHousehold() })),
    );
    const flight: Flight = await at.ask("flight", "show", SUNDAY);
    expect(flight.state).toBe("revealed");
    expect(await at.ask("shelf", "transfers")).toEqual(
      await api((c) => c("listTransfers", { at: inHousehold(), query: { limit: 200 } })),
    );
  });

  test("alone: marks under the glasses, entered after the lock", async () => {
    const alone: AnswerOf<"addFlight"> = await at.ask(
      ...words(
        `flight add --name Alone --alone --pour 10ml --taster Ilka --glass "Blending bottle 1" --glass "Ninepenny Mill Sweet Sack"`,
      ),
    );
    expect(alone.pourerToken).toBeNull();
    const { token }: AnswerOf<"takeSheet"> = await at.ask("flight", "take", "alone", "--of-legal-age");
    const mine = ["--token", token];
    await at.ask("flight", "poured", "alone", ...mine);
    await at.ask(
      "flight",
      "sheet",
      "edit",
      "alone",
      ...mine,
      "--guess",
      "1=first try",
      "--guess",
      "2=ninepenny mill sweet sack",
    );
    await at.ask("flight", "lock", "alone", ...mine);
    const none = await at.run(["flight", "reveal", "alone", "--json"]);
    expect([none.code, issuesOf(none)[0]?.code]).toEqual([2, "undersides_missing"]);
    const [one, other] = alone.flight.marks;
    const marks = ["--mark", `1=${one?.mark}`, "--mark", `2=${other?.mark.toLowerCase()}`];
    await at.ask("flight", "undersides", "alone", ...marks, ...mine);
    const finding: Finding = await at.ask("flight", "reveal", "alone");
    const truth = finding.sheets[0]?.glasses.map(({ nameId }) => nameId);
    expect(truth).toEqual([one?.nameId, other?.nameId]);
    expect(finding.sheets[0]?.right).toBe(one?.nameId.startsWith("batch:") ? 2 : 0);
  });

  test("what is next follows", async () => {
    expect(await at.ask("next")).toEqual(await api((c) => c("next", { at: inHousehold() })));
  });

  test("what to pour next asks for no more than is left, as the API says", async () => {
    const { items } = await api((c) => c("listRecipes", { at: inHousehold() }));
    const recipe = items.find(({ name }) => name === "Two to one")?.id ?? "";
    const { asked } = await api((c) => c("getTried", { at: inHousehold({ recipe }) }));
    expect(Object.keys(asked.shelf?.leftMl ?? {})).toEqual(asked.items.map(({ id }) => id));
    expect(await at.ask("next", "--recipe", "two to one")).toEqual(
      await api((c) => c("nextFlight", { body: asked })),
    );
    const leftMl = Object.fromEntries(asked.items.map(({ id }) => [id, 12]));
    const file = join(at.data, "left.json");
    await writeFile(file, JSON.stringify({ ...asked, ready: [], shelf: { leftMl } }));
    const { scarce }: AnswerOf<"nextFlight"> = await at.ask("next", "--file", file);
    expect(scarce).not.toEqual([]);
    expect((await at.run(["next", "--file", file])).stdout).toContain(
      `Too little is left of ${scarce.join(", ")} for some mixes: none of them stands in this flight.`,
    );
    const [first = "", second = ""] = asked.mixes ?? [];
    const uneven = { leftMl: { [first]: 190, [second]: 1000 }, mixMl: 200 };
    await writeFile(file, JSON.stringify({ ...asked, ready: [], shelf: uneven }));
    const own = await at.run(["next", "--file", file, "--instead", `1=2 ${first}`, "--instead", "2=none"]);
    expect(own.stdout).toContain(`1. 2 ${first}\n   Your own, in the place of`);
    expect(own.stdout).toContain("2. left out:");
    expect(own.stdout).toContain(`Too little is left of ${first} for these glasses together: they ask for`);
  });

  test("a glass of one's own is held against the shelf, planned or not; what was typed is named where it is none", async () => {
    const { items } = await api((c) => c("listRecipes", { at: inHousehold() }));
    const recipe = items.find(({ name }) => name === "Two to one")?.id ?? "";
    const { asked, names } = await api((c) => c("getTried", { at: inHousehold({ recipe }) }));
    const [id = "", other = ""] = asked.mixes ?? [];
    const parts = { [id]: 29, [other]: 1 };
    const typed = ["--instead", `3=29 ${names[id]}, 1 ${names[other]}`];
    expect(await at.ask("next", "--recipe", "two to one", ...typed)).toEqual(
      await api((c) => c("nextFlight", { body: { ...asked, instead: [{ glass: 3, parts }] } })),
    );
    const set: AnswerOf<"addTrialSet"> = await at.ask("next", "--recipe", "two to one", ...typed, "--plan");
    expect(set.flight?.glasses.map(({ why }) => why)).toContain("Your own.");
    for (const [text, code] of [
      ["3", "instead_unreadable"],
      ["3=Barn Door", "instead_unreadable"],
      ["3=1 Nowhere", "unknown_whiskey"],
      ["12=none", "glass_unknown"],
    ] as const) {
      const refused = await at.run(["next", "--recipe", "two to one", "--instead", text, "--json"]);
      expect([refused.code, issuesOf(refused)[0]?.code]).toEqual([2, code]);
      expect(issuesOf(refused)[0]?.path[0]).toBe("instead");
    }
  });
});
