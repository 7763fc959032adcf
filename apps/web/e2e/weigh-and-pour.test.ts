import type { AnswerOf } from "@partsproof/house/protocol";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { saidBeside } from "./fixtures/said-beside.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";
import { tabTo } from "./fixtures/tab-to.ts";

const POLL = { timeout: 45_000, interval: 150 };
const CASE_MS = 300_000;
const PHONE = { width: 390, height: 844 };
const LAPTOP = { width: 1280, height: 800 };
const KETTLE = "Bellharrow Full Kettle";
const WALL = "Quernmouth Harbour Wall";

describe("the bench and the scale, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let at: { readonly household: string };
  let home = "";
  let kettle: AnswerOf<"addBottle">;
  let wall: AnswerOf<"addBottle">;
  let recipe: AnswerOf<"addRecipe">;

  const addBottle = async (maker: string, name: string, value: number): Promise<AnswerOf<"addBottle">> => {
    const body = { maker, name, strength: { basis: "abv20" as const, value } };
    const { id } = await evening.api("addWhiskey", { at, body });
    return evening.api("addBottle", { at, body: { whiskeyId: id } });
  };
  const slot = (bottle: AnswerOf<"addBottle">, parts: number) => ({
    parts,
    of: { kind: "whiskey" as const, whiskeyId: bottle.whiskeyId ?? "" },
  });

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("blender");
  }, 240_000);
  afterAll(() => evening.end(), 60_000);
  const nothingWrong = (): void => {
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  };
  afterEach(nothingWrong);

  const look = async (screen: string): Promise<void> => {
    await evening.looks.over(page, screen);
    await picture(page, screen.replaceAll(/[^a-z0-9]+/g, "-"));
  };
  const open = async (job: string): Promise<void> => {
    await comeTo(page, job === "mix" ? "/reckon" : `/reckon?do=${job}`);
    await page.getByRole("heading", { level: 1, name: "Quick reckoner" }).waitFor();
  };
  /** Numbers and units are kept together by spaces that do not break. */
  const plain = (text: string): string => text.replaceAll("\u00a0", " ");
  /** The large number of the answer. */
  const hero = async (): Promise<string> =>
    plain(await page.locator(".number-hero .number-value").first().innerText());
  const refused = async (label: string, typed: string, told: RegExp): Promise<void> => {
    const field = page.getByLabel(label, { exact: true });
    const before = await field.inputValue();
    await field.fill(typed);
    await expect.poll(async () => plain(await saidBeside(field)), POLL).toMatch(told);
    await page.getByText(/^Waiting for/).waitFor();
    await field.fill(before);
  };

  it("mix: with no household at all, and what cannot be read", { timeout: CASE_MS }, async () => {
    await open("mix");
    // Two of 62.4 and one of 46 % vol come to 56.98: the example of core's mix, by OIML R 22.
    await expect.poll(hero, POLL).toMatch(/^57\.0 % vol give or take 0\.\d$/);
    await page.getByText(/comes from the labels/).click();
    await page.getByText("In 95 of 100 such cases").waitFor();
    await look("bench, mix");
    await refused("Strength of liquid 1", "104%", /requires 0 to 100 % vol, got "104%"/);
    await refused("Poured in all", "lots", /requires a number with ml, cl, l or oz, got "lots"/);
    await refused("Volumes are read at", "60", /requires -20 to 40 °C, or the same in °F, got "60"/);
    await page.getByLabel("Volumes are read at").fill("86 F");
    await page.getByText(/as read at 30 °C/).waitFor();
    for (const parts of await page.getByRole("spinbutton").all()) await parts.fill("0");
    await page.getByText("All parts are zero.").waitFor();
    await look("bench, mix, all zero");
    await page.getByRole("spinbutton").first().fill("2");
    await page.getByRole("spinbutton").nth(1).fill("1");
    await page.getByRole("button", { name: "Send it to a recipe or batch" }).click();
    await page.getByText("There is no household yet.").waitFor();
    // What is typed is there again after a reload.
    await page.reload();
    await page.getByText(/as read at 30 °C/).waitFor();
    await page.getByLabel("Volumes are read at").fill("20");
    // A row taken away: nothing came instead, and what comes of it is another part of the page.
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await page.getByRole("button", { name: "Add a liquid" }).click();
    await page.getByRole("button", { name: "Take liquid 3 away" }).press("Enter");
    await expect.poll(() => page.locator(".reckon-row").count(), POLL).toBe(2);
    await expect.poll(focused, POLL).toBe("Quick reckoner");
  });

  it("tools: a coarser one makes the answer less sure, and takes the blame", {
    timeout: CASE_MS,
  }, async () => {
    await open("mix");
    await page.getByText("What you measure with").click();
    await page.getByLabel("Strengths are from a").selectOption("printed");
    await page.getByLabel("Volumes are measured with a").selectOption("jug");
    const blame = page.locator(".blame > summary");
    await expect.poll(() => blame.innerText(), POLL).toMatch(/comes from the jug, not the labels/);
    await look("bench, tools");
    await page.getByLabel("Strengths are from a").selectOption("us");
    await page.getByLabel("Volumes are measured with a").selectOption("B");
    await page.getByText(/comes from the labels/).waitFor();
  });

  it("reduce: water, another liquid, both; to an end, over days; what cannot be", {
    timeout: CASE_MS,
  }, async () => {
    await open("reduce");
    // 700 mL of 60 to 43 % vol take 285.25 mL of water (the example of core's waterToStrength, by OIML R 22).
    await expect.poll(hero, POLL).toMatch(/^285 mL of water$/);
    await look("bench, reduce");
    await page.getByLabel("Over how many days").fill("3");
    await page.getByText("Day 3").waitFor();
    await look("bench, reduce over days");
    await refused("Over how many days", "0", /requires 1 to 60 days, got "0"/);
    await page.getByLabel("Strength wanted").fill("70%");
    await page.getByText(/Nearest that can be had:/).waitFor();
    expect(plain(await page.locator(".reckon-nearest").innerText())).toMatch(
      /60\.0 % vol, with nothing added/,
    );
    await look("bench, reduce, cannot be");
    await page.getByLabel("Strength wanted").fill("46%");
    await page.getByRole("radio", { name: "both", exact: true }).check();
    await page.getByLabel("You have").fill("350 mL");
    await page.getByLabel("Strength of the other").fill("50%");
    await page.getByLabel("The vessel holds").fill("700 mL");
    await expect.poll(() => page.getByText("mL of water").count(), POLL).toBeGreaterThan(0);
    await look("bench, reduce with both");
    await page.getByRole("radio", { name: "a final weight" }).check();
    await page.getByLabel("Weight at the end").fill("600 g");
    await page.getByText("Comes to").waitFor();
    await refused("Weight at the end", "600 mL", /requires more than 0 g.* got "600 mL"/);
  });

  it("weigh: grams as OIML R 22 has them, in air and in vacuum, and back", { timeout: CASE_MS }, async () => {
    await open("weigh");
    // OIML R 22, Table II: 40 % vol at 20 °C has 948.05 kg/m³; in conventional air a scale shows 0.11 g less of 94.8.
    await expect.poll(hero, POLL).toMatch(/^94\.\d+ g give or take/);
    await page.getByText("948.0", { exact: false }).first().waitFor();
    await look("bench, weigh");
    await page.getByRole("radio", { name: "vacuum: the mass" }).check();
    await expect.poll(hero, POLL).toMatch(/^94\.8/);
    await page.getByRole("radio", { name: "grams to mL" }).check();
    await page.getByLabel("Weight", { exact: true }).fill("94.8");
    await expect.poll(hero, POLL).toMatch(/^100(\.\d)? mL/);
    await refused("Weight", "heavy", /Weight requires more than 0 g, such as 94\.8 g, got "heavy"/);
    await page.getByLabel("Strength", { exact: true }).fill("5%");
    await page.getByLabel("The liquid is at").fill("-15 C");
    await page.locator(".reckon-out .field-issue").waitFor();
    await look("bench, weigh, frozen");
    await page.getByLabel("The liquid is at").fill("20 °C");
    await page.getByLabel("Strength", { exact: true }).fill("40%");
  });

  it("correct: 27 CFR 30.61 and 30.32 on the screen", { timeout: CASE_MS }, async () => {
    await open("correct");
    await page.getByRole("radio", { name: "US proof at 60 °F" }).check();
    await page.getByLabel("The liquid is at").fill("70 °F");
    // Table 1 of the US Gauging Manual (27 CFR 30.61): a reading of 100 at 70 °F is 96.0 proof, within 0.2.
    await expect.poll(hero, POLL).toMatch(/^9[56] proof give or take|^9[56]\.\d proof give or take/);
    await look("bench, correct");
    await page.getByLabel("The liquid is at").fill("60 °F");
    await page.getByLabel("Reading, proof").fill("88");
    // 27 CFR 30.32(b): 0.50 g in 100 mL hides 2 proof.
    await page.getByLabel(/^Dissolved solids/).fill("500");
    await expect.poll(hero, POLL).toMatch(/^90(\.0)? proof/);
    await page.getByText(/500 mg in 100 mL hide 2\.0 proof/).waitFor();
    await look("bench, correct, solids");
    await page.getByLabel(/^Dissolved solids/).fill("");
    await refused("Reading, proof", "201", /Reading requires 0 to 200 proof, got "201"/);
    await page.getByRole("radio", { name: "density at 20 °C" }).check();
    await page.getByLabel("Reading, kg/m³").fill("1050");
    await page.getByText(/Nearest that can be had:/).waitFor();
    await look("bench, correct, heavier than any");
    await page.getByRole("radio", { name: "% at 20 °C" }).check();
    await page.getByLabel("The liquid is at").fill("20 °C");
  });

  it("what if: parts, a lift, a sample, what evaporated", { timeout: CASE_MS }, async () => {
    await open("what-if");
    await page.getByRole("table", { name: /one part fewer/ }).waitFor();
    await page.getByRole("button", { name: "More: Parts of liquid 1" }).click();
    await expect.poll(hero, POLL).toMatch(/^58\.\d % vol/);
    await look("bench, what if, parts");
    await page.getByRole("button", { name: "Fewer: Parts of liquid 1" }).click();
    await page.getByRole("radio", { name: "lift a bottle" }).check();
    await expect.poll(hero, POLL).toMatch(/^943 mL of 62\.4 % vol$/);
    await look("bench, what if, lift");
    await page.getByLabel("Strength wanted").fill("70%");
    await page.getByText(/with an endless amount of the other bottle/).waitFor();
    await page.getByRole("radio", { name: "how much room there is" }).check();
    await page.getByText("Nearest that can be had:").waitFor();
    await page.getByLabel("Strength wanted").fill("50%");
    await expect.poll(hero, POLL).toMatch(/% vol give or take/);
    await page.getByRole("radio", { name: "an unlabelled sample" }).check();
    await page.getByText("hardly better than a guess").waitFor();
    await look("bench, what if, sample");
    await page.getByRole("textbox", { name: "The scale shows" }).fill("140 g");
    await page.getByText("Nearest that can be had:").waitFor();
    await page.getByRole("textbox", { name: "The scale shows" }).fill("94.5 g");
    await page.getByRole("radio", { name: "what evaporated" }).check();
    await expect.poll(hero, POLL).toMatch(/ g give or take/);
    await look("bench, what if, evaporated");
    await page.getByLabel("Strength now").fill("68%");
    await page.getByText(/something was poured in, or a reading is off/).waitFor();
    await page.getByLabel("Strength now").fill("61%");
  });

  it("a result goes to a new recipe, to a new batch and to a batch's note; what is not on the shelf is said", {
    timeout: CASE_MS,
  }, async () => {
    at = { household: (await evening.api("addHousehold", { body: { name: "The kitchen table" } })).id };
    home = `/h/${at.household}`;
    kettle = await addBottle("Bellharrow", "Full Kettle", 62.4);
    wall = await addBottle("Quernmouth", "Harbour Wall", 46);
    recipe = await evening.api("addRecipe", {
      at,
      body: { name: "Kettle and Wall", slots: [slot(kettle, 2), slot(wall, 1)] },
    });
    await open("mix");
    await page.getByRole("button", { name: "Add a liquid" }).click();
    await page.getByLabel("Strength of liquid 3").fill("55%");
    await page.getByRole("button", { name: "Send it to a recipe or batch" }).click();
    await page.getByRole("link", { name: "Open as a new recipe" }).waitFor();
    await look("bench, send on");
    await page.getByRole("link", { name: "Open as a new recipe" }).click();
    const said = page.getByRole("group", { name: "From the bench" });
    await expect
      .poll(async () => plain(await said.innerText()), POLL)
      .toMatch(/Slot 3: no whiskey or batch here has 55\.0 % vol/);
    const chosen = page.getByLabel("What slot 1 stands for");
    expect(await chosen.inputValue()).toBe(`whiskey:${kettle.whiskeyId}`);
    await look("new recipe from the bench");

    page.once("dialog", (dialog) => void dialog.accept());
    await open("correct");
    await page.getByRole("button", { name: "Send it to a recipe or batch" }).click();
    await page.getByLabel("A batch", { exact: true }).selectOption(`make ${recipe.id}`);
    await page.getByRole("button", { name: "Go on with it" }).click();
    await page.getByRole("heading", { level: 1, name: "Make a batch" }).waitFor();
    await page.getByRole("link", { name: "Pour it by weight" }).waitFor();
  });

  /** What the big number says to pour to. */
  const target = async (): Promise<number> => Number(await page.locator(".weigh-digits").innerText());
  const typeReading = async (g: number): Promise<void> => {
    await page.getByRole("textbox", { name: "The scale shows" }).fill(g.toFixed(1));
    await page.getByRole("button", { name: "It is in" }).click();
  };
  const heading = (name: RegExp | string): Promise<void> =>
    page.getByRole("heading", { level: 2, name }).waitFor();

  it("weigh and pour on a phone: too much, made good, undone, reloaded, recorded as it was", {
    timeout: CASE_MS,
  }, async () => {
    await page.setViewportSize(PHONE);
    await page.goto(`${home}/recipes/${recipe.id}`);
    await page.getByRole("link", { name: "Pour by weight" }).click();
    await page.getByRole("heading", { level: 1, name: "Pour by weight" }).waitFor();
    await page.getByLabel("Volume at the end").fill("300 mL");
    await page.getByLabel(/^The vessel holds/).fill("500 mL");
    await look("weigh, set up");
    await page.getByRole("button", { name: "Start pouring" }).press("Enter");
    await heading(KETTLE);
    // The button is gone; who listens goes on at what came instead of it, not at the top of the page.
    await expect.poll(() => page.locator(":focus").innerText(), POLL).toBe(KETTLE);
    const first = await target();
    // 200 mL of 62.4 % vol weigh about 180 g in air.
    expect(first).toBeGreaterThan(175);
    expect(first).toBeLessThan(185);
    await expect
      .poll(() => page.locator("[aria-live=polite][role=status]").last().innerText(), POLL)
      .toMatch(new RegExp(`${KETTLE}\\. Zero the scale.* ${first.toFixed(1)} grams, give or take`));
    await page.getByRole("textbox", { name: "The scale shows" }).fill((first - 20).toFixed(1));
    await page.getByText(/^20\.0 g to go\.$/).waitFor();
    await look("weigh, pouring");
    // The number is read at arm's length: at least 64 px high, and inside the page.
    const box = await page.locator(".weigh-digits").boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(64);
    await page.getByRole("textbox", { name: "The scale shows" }).fill("lots");
    await page.getByRole("button", { name: "It is in" }).click();
    await page.getByText(/Weight requires grams, such as 94\.8 g, got "lots"/).waitFor();

    await typeReading(first * 1.1);
    await heading(/too much of/);
    await look("weigh, too much");
    const ways = page.locator(".decide-way");
    expect(await ways.count()).toBe(3);
    await page.getByRole("button", { name: "Undo the last pour" }).click();
    await heading(KETTLE);
    expect(await target()).toBe(first);

    await typeReading(first * 1.1);
    await page.getByRole("button", { name: /^Make a bit more/ }).click();
    await heading(WALL);
    const second = await target();
    await page.reload();
    await heading(WALL);
    expect(await target()).toBe(second);
    await typeReading(second);
    await heading("What was really made");
    // A tenth more of all that was planned, in the same ratio: 330 mL at the recipe's strength, 56.98 % vol.
    await expect.poll(hero, POLL).toMatch(/^57\.0 % vol give or take 0\.\d$/);
    await expect.poll(() => page.locator(".numbers").first().innerText(), POLL).toMatch(/330(\.\d)?\s+mL/);
    await look("weigh, what was made");

    await page.getByRole("link", { name: "Record it as a batch" }).click();
    await page.getByText("Poured by weight: the amounts below").waitFor();
    await look("record what was weighed");
    await page.getByRole("button", { name: "Record the batch" }).click();
    await page.getByRole("heading", { level: 1, name: "Kettle and Wall" }).waitFor();
    const { items } = await evening.api("listBatches", { at });
    expect(items).toHaveLength(1);
    const [made] = items;
    expect(made?.made.volumeMl).toBeCloseTo(330, 0);
    expect(made?.made.abv20).toBeCloseTo(56.98, 1);
    // Mass is what the scale showed freed of the air: about 0.12 % more (OIML D 28).
    expect((made?.poured[0]?.g ?? 0) / (first * 1.1)).toBeCloseTo(1.0012, 3);
    const left = await evening.api("getVessel", { at: { ...at, vessel: kettle.id } });
    expect(left.contents.volumeMl).toBeCloseTo(700 - 220, 0);
    // It is recorded, so nothing is being poured any more.
    await comeTo(page, `${home}/batches/weigh?recipe=${recipe.id}`);
    await page.getByRole("button", { name: "Start pouring" }).waitFor();
  });

  it("a correction goes into the note of that batch", { timeout: CASE_MS }, async () => {
    const { items } = await evening.api("listBatches", { at });
    await open("correct");
    await page.getByRole("button", { name: "Send it to a recipe or batch" }).click();
    await page.getByLabel("A batch", { exact: true }).selectOption(`note ${items[0]?.id ?? ""}`);
    await page.getByRole("button", { name: "Write it there" }).click();
    const note = page.locator(".batch-note");
    await expect
      .poll(() => note.innerText(), POLL)
      .toMatch(/^Gauged at the bench: 50(\.\d)? % vol, give or take/);
  });

  it("weigh and pour on a laptop, by the keyboard: the scale runs on, a bottle is empty, water is too much", {
    timeout: CASE_MS,
  }, async () => {
    await page.setViewportSize(LAPTOP);
    const { items } = await evening.api("listRecipes", { at });
    const watered = await evening.api("addRecipe", {
      at,
      body: {
        name: "Kettle, Wall and water",
        slots: [slot(kettle, 2), slot(wall, 1)],
        waterTo: { basis: "abv20", value: 50 },
      },
    });
    expect(items).toHaveLength(1);
    await comeTo(page, `${home}/batches/weigh?recipe=${watered.id}&ml=300`);
    await page.getByRole("radio", { name: "I let it run on" }).check();
    await page.getByLabel("It shows before the first pour").fill("412.3 g");
    await page.getByRole("button", { name: "Start pouring" }).click();
    await heading(KETTLE);
    const first = await target();
    expect(first).toBeGreaterThan(412.3 + 100);
    await look("weigh, pouring, running on");
    const type = async (g: number): Promise<void> => {
      await tabTo(page, page.getByRole("textbox", { name: "The scale shows" }));
      await page.keyboard.press("ControlOrMeta+a");
      await page.keyboard.type(g.toFixed(1));
    };
    await type(400);
    await page.keyboard.press("Enter");
    await page
      .getByText(/Scale reading requires at least the 412\.3 g before this pour, got 400\.0 g/)
      .waitFor();
    // The bottle runs dry 30 g short.
    await type(first - 30);
    await tabTo(page, page.getByRole("button", { name: /^No more of it/ }));
    await page.keyboard.press("Enter");
    await heading(/short of/);
    await look("weigh, ran dry");
    await tabTo(page, page.getByRole("button", { name: /^Make a bit less/ }));
    await page.keyboard.press("Enter");
    await heading(WALL);
    await type(await target());
    await page.keyboard.press("Enter");
    await heading("Water");
    const water = await target();
    await look("weigh, water");
    await type(water + 15);
    await page.keyboard.press("Enter");
    await heading(/too much water/);
    // The bottle is empty, so nothing can follow the water: only leaving it so is left.
    expect(await page.locator(".decide-way").count()).toBe(1);
    await page.getByText("Weaker than the 50.0 % vol wanted.").waitFor();
    await look("weigh, too much water");
    await tabTo(page, page.getByRole("button", { name: /^Accept the drift/ }));
    await page.keyboard.press("Enter");
    await heading("What was really made");
    // Below the 50 % vol that was wanted, and it says so.
    await expect.poll(hero, POLL).toMatch(/^4[5-9]\.\d % vol give or take/);
    await look("weigh, what was made, drifted");
    await page.getByRole("link", { name: "Record it as a batch" }).click();
    await page.getByRole("button", { name: "Record the batch" }).click();
    await page.getByRole("heading", { level: 1, name: "Kettle, Wall and water" }).waitFor();
    const batches = await evening.api("listBatches", { at });
    const drifted = batches.items.find(({ name }) => name === "Kettle, Wall and water");
    expect(drifted?.made.abv20).toBeLessThan(49.5);
    expect(drifted?.poured.map(({ label }) => label.toLowerCase()).at(-1)).toBe("water");
  });

  it("a sum of the bench is poured by weight too, and stopped half way", { timeout: CASE_MS }, async () => {
    await page.setViewportSize(PHONE);
    await page.goto("/weigh");
    await page.getByText("Nothing to pour yet").waitFor();
    await look("weigh, nothing");
    await comeTo(page, "/weigh?parts=2@62.4,1@46&water=70&ml=300");
    await page.getByText(/target strength requires/i).waitFor();
    await look("weigh, bench, cannot be");
    expect(await page.getByRole("button", { name: "Start pouring" }).isDisabled()).toBe(true);
    await comeTo(page, "/weigh?parts=2@62.4,1@46&ml=300");
    await page.getByRole("button", { name: "Start pouring" }).click();
    await heading(/^Liquid 1/);
    await typeReading((await target()) * 1.3);
    await page.getByRole("button", { name: /^Stop here/ }).click();
    await heading("What was really made");
    await expect.poll(hero, POLL).toMatch(/^62\.4 % vol give or take 0\.3$/);
    await look("weigh, bench, stopped");
    await page.getByRole("button", { name: "Drop it and begin again" }).click();
    await page.getByRole("button", { name: "Forget this pouring" }).click();
    await page.getByRole("button", { name: "Start pouring" }).waitFor();
  });
});
