import type { AnswerOf } from "@partsproof/house/protocol";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import ICAL from "ical.js";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { root } from "../../../tools/place.ts";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { goToStep, lockSheet, saved, takeSheet, tapRanking } from "./fixtures/sheet-steps.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const POLL = { timeout: 45_000, interval: 100 };
const CASE_MS = 120_000;
const KETTLE = "Bellharrow Full Kettle";
const WALL = "Quernmouth Harbour Wall";
const DAY_MS = 86_400_000;

/** A day of this device's calendar, as a date field has it. */
const daysAgo = (days: number): string => {
  const date = new Date(Date.now() - days * DAY_MS);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
};

describe("from trials to a bottle that has rested, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let at: { readonly household: string };
  let home = "";
  let recipe: AnswerOf<"addRecipe">;
  let batch: AnswerOf<"getBatch">;

  const addBottle = async (maker: string, name: string, value: number): Promise<AnswerOf<"addBottle">> => {
    const body = { maker, name, strength: { basis: "abv20" as const, value } };
    const { id } = await evening.api("addWhiskey", { at, body });
    return evening.api("addBottle", { at, body: { whiskeyId: id } });
  };
  beforeAll(async () => {
    evening = await startEvening();
    at = { household: (await evening.api("addHousehold", { body: { name: "The lamp room" } })).id };
    home = `/h/${at.household}`;
    const slots = [
      await addBottle("Bellharrow", "Full Kettle", 62.4),
      await addBottle("Quernmouth", "Harbour Wall", 46),
    ];
    recipe = await evening.api("addRecipe", {
      at,
      body: {
        name: "Kettle and Wall",
        restDays: 14,
        slots: slots.map(({ whiskeyId }, i) => ({
          parts: 2 - i,
          of: { kind: "whiskey" as const, whiskeyId: whiskeyId ?? "" },
        })),
      },
    });
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
    if (process.env["PARTSPROOF_PICTURES"] !== "1") return;
    const before = page.viewportSize();
    for (const width of [390, 1280])
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize({ width, height: 844 });
        await page.emulateMedia({ colorScheme });
        await picture(page, `${screen.replaceAll(/[^a-z0-9]+/g, "-")}-${colorScheme}`);
      }
    await page.emulateMedia({ colorScheme: "light" });
    if (before !== null) await page.setViewportSize(before);
  };
  const heading = (level: 1 | 2, name: RegExp | string): Promise<void> =>
    page.getByRole("heading", { level, name }).waitFor();
  const press = (name: RegExp | string): Promise<void> => page.getByRole("button", { name }).click();
  const target = async (): Promise<number> => Number(await page.locator(".weigh-digits").innerText());
  const pour = async (g: number): Promise<void> => {
    await page.getByRole("textbox", { name: "The scale shows" }).fill(g.toFixed(1));
    await press("It is in");
  };
  const restNow = async (): Promise<AnswerOf<"pullRest">> => {
    const { items } = await evening.api("listRests", { at: { ...at, batch: batch.id } });
    if (items[0] === undefined) throw new Error("a rest requires to be there, got none");
    return items[0];
  };

  it("three trials are planned of the shelf, kept, poured and set as a flight with one tap", {
    timeout: CASE_MS,
  }, async () => {
    await comeTo(page, `${home}/trials/new`);
    await heading(1, "Plan bench trials");
    await page.getByText("Choose at least two whiskeys").waitFor();
    await page.getByLabel("Part 1").selectOption({ label: `${KETTLE}, 62.4 % vol` });
    await page.getByLabel("Part 2").selectOption({ label: `${WALL}, 46.0 % vol` });
    await page.getByRole("heading", { name: "3 mixes" }).waitFor();
    // Equal parts of 62.4 and 46 % vol come to 54.25: what `mix` of the command line says as well.
    await page.locator(".trial-glasses li", { hasText: /54\.[23]/ }).waitFor();
    await page.getByLabel("A trial measures at least").fill("5 mL");
    await press("Keep this set");
    await page
      .getByText(/requires 20 to 100 mL/)
      .first()
      .waitFor();
    await page.getByLabel("A trial measures at least").fill("30 mL");
    await page.getByLabel("Name of the set").fill("Lamp bench");
    await page.getByRole("heading", { name: "3 mixes" }).waitFor();
    await look("trials, planned");
    await press("Keep this set");
    await heading(1, "Lamp bench");
    await look("trials, kept");
    await press("They are poured");
    const [set] = (await evening.api("listTrialSets", { at })).items;
    expect(set?.made.map(({ leftMl }) => Math.round(leftMl))).toEqual([30, 30, 30]);
    await page.getByRole("link", { name: "Set a flight of them" }).click();
    await heading(1, "Set a flight");
    await page.getByText("3 glasses for each taster.").waitFor();
    expect(await page.getByLabel("Name of the flight").inputValue()).toBe("Lamp bench");
  });

  it("the flight of them is poured, ranked, locked and opened", { timeout: CASE_MS }, async () => {
    await page.getByLabel("The pourer’s name").fill("Wynna");
    await page.getByLabel("Another taster").fill("Ilka");
    await page.getByRole("button", { name: "Add", exact: true }).click();
    await page.getByRole("checkbox", { name: "Ilka" }).and(page.locator(":checked")).waitFor();
    await press("Set the flight");
    await heading(1, "Lamp bench");
    const flight = new URL(page.url()).pathname.split("/").at(-1) ?? "";
    const token = (await page.getByLabel("Link to Wynna’s page").inputValue()).split("#")[1] ?? "";
    const list = await evening.api("getPourList", { at: { ...at, flight }, token });
    await evening.api("markPoured", { at: { ...at, flight }, token });
    await press("Hand over Ilka’s sheet");
    const sheet = await page.getByLabel("Link to Ilka’s sheet").inputValue();
    await page.keyboard.press("Escape");
    const ilka = await evening.phone("Ilka");
    await ilka.goto(sheet);
    await takeSheet(ilka);
    await goToStep(ilka, "Ranking");
    await tapRanking(ilka, list.tasters[0]?.glasses.map(({ code }) => code) ?? []);
    await saved(ilka);
    await lockSheet(ilka);
    await page.getByRole("button", { name: "Reveal", exact: true }).click();
    await press("Open the first glass");
    await press("Open all");
    await page.getByText("Every glass is open.").waitFor();
    const { sheets } = await evening.api("getFinding", { at: { ...at, flight } });
    expect(sheets.map(({ glasses }) => glasses.length)).toEqual([3]);
    await comeTo(page, `${home}/trials`);
    await page.getByText("3 of 3 poured").waitFor();
    await look("trials, all sets");
  });

  it("a batch by weight, with a tenth too much of the first", { timeout: CASE_MS }, async () => {
    await comeTo(page, `${home}/recipes/${recipe.id}`);
    await page.getByRole("link", { name: "Pour by weight" }).click();
    await heading(1, "Pour by weight");
    // 700 mL are offered.
    await page.getByLabel(/^The vessel holds/).fill("800 mL");
    await press("Start pouring");
    await heading(2, KETTLE);
    await pour((await target()) * 1.1);
    await heading(2, /too much of/);
    await press(/^Make a bit more/);
    await heading(2, WALL);
    await pour(await target());
    await heading(2, "What was really made");
    await page.getByRole("link", { name: "Record it as a batch" }).click();
    await press("Record the batch");
    await heading(1, "Kettle and Wall");
    const { items } = await evening.api("listBatches", { at });
    const made = items.find(({ recipeId }) => recipeId === recipe.id);
    if (made === undefined) throw new Error("a batch requires to be recorded, got none");
    batch = made;
    expect(batch.made.volumeMl).toBeCloseTo(770, 0);
  });

  it("a sample is kept, the oak goes in, and what it comes to stands beside a cask", {
    timeout: CASE_MS,
  }, async () => {
    await page.getByRole("link", { name: "Oak and check tastings" }).click();
    await heading(1, "Kettle and Wall: its rest");
    await page.getByLabel("Begun on").fill(daysAgo(12));
    await page.getByLabel("Flight, before and after").fill(daysAgo(-30));
    await look("rest, begin");
    await press("Begin its rest");
    await heading(2, "Put the oak in");
    // 1 × 1 × 16 cm have 66 cm² by geometry: in 740 mL 89 cm² a litre, 0.97 of a cask's 92.
    await page.getByLabel("Width, thickness and length").fill("10x10x160mm");
    await page.getByLabel("Weighs").fill("10.9");
    await expect.poll(() => page.locator(".number-digits").allInnerTexts(), POLL).toEqual(["89", "0.97"]);
    await page.getByLabel("Width, thickness and length").fill("long");
    await press("The oak is in");
    await page.getByRole("heading", { level: 2, name: "One thing to put right" }).waitFor();
    await page.getByLabel("Width, thickness and length").fill("10x10x160mm");
    await page.getByLabel("In since").fill(daysAgo(11));
    await look("rest, oak in");
    await press("The oak is in");
    await page.getByText("No published constants.").waitFor();
    const { sample, dose } = await restNow();
    expect(sample?.ml).toBeCloseTo(30, 6);
    expect(dose?.caskRatio).toBeCloseTo(0.97, 2);
  });

  it("two check tastings, in words and by hand; what to believe narrows, and is due on the front page", {
    timeout: CASE_MS,
  }, async () => {
    const widths: number[] = [];
    for (const [when, note, level] of [
      [8, "vanilla and a little toasted oak", "3"],
      [4, "vanilla, toasted oak", "4"],
    ] as const) {
      await press("Taste it now");
      await expect.poll(() => page.locator("form :focus").count(), POLL).toBe(1);
      await page.getByLabel("Tasted on").fill(daysAgo(when));
      await page.getByLabel("Nose", { exact: true }).fill(note);
      const chip = page
        .getByRole("list", { name: "Read in the note on the nose" })
        .getByRole("button", { name: /toasted wood/i });
      await chip.click();
      const strip = page.getByRole("slider", { name: /toasted wood, how strong/i });
      await strip.focus();
      await strip.press("Home");
      for (let n = 0; n < Number(level); n += 1) await strip.press("ArrowRight");
      if (when === 8) await look("rest, a check tasting");
      await press("Keep this tasting");
      await page.getByRole("button", { name: "Taste it now" }).waitFor();
      await expect.poll(() => page.locator("main :focus").count(), POLL).toBe(1);
      const rest = await restNow();
      expect(rest.checks.at(-1)?.levels["wood.toasted"]).toBeCloseTo(Number(level), 6);
      const { answer } = await evening.api("adviseRest", { at: { ...at, rest: rest.id } });
      const { ifEver } = answer?.ready ?? {};
      widths.push(Math.log((ifEver?.high ?? 0) / (ifEver?.low ?? 1)));
    }
    expect(widths[1]).toBeLessThan(widths[0] ?? 0);
    await page.getByText(/4\.0 of 10 tasted on day 7/).waitFor();
    await page.getByText("As a table, and as files").first().click();
    await page.getByRole("columnheader", { name: "Believed, of 10" }).first().waitFor();
    await look("rest, tasted twice");
    await comeTo(page, home);
    await page.getByText(/^Taste Kettle and Wall/).waitFor();
    await look("front, with a rest");
  });

  it("the days go into a calendar by a secret link of neutral words, until it is revoked", {
    timeout: CASE_MS,
  }, async () => {
    await page.getByRole("link", { name: "These days in your own calendar" }).click();
    await heading(1, "In your own calendar");
    await page.getByLabel("What will follow it").fill("kitchen phone");
    await press("Make a link");
    const address = await page.getByLabel("Link to the calendar of kitchen phone").inputValue();
    await look("calendar, a link");
    const feed = await (await fetch(address)).text();
    const events = new ICAL.Component(ICAL.parse(feed)).getAllSubcomponents("vevent");
    expect(events.length).toBeGreaterThanOrEqual(3);
    expect(feed).not.toMatch(/Kettle|Wall|toasted|lamp room|kitchen/i);
    await press(/^Revoke/);
    await page
      .getByText(/it opens nothing/)
      .first()
      .waitFor();
    expect((await fetch(address)).status).toBe(404);
  });

  it("one piece comes out while the others stay in; all of them out, and a slip taken back", {
    timeout: CASE_MS,
  }, async () => {
    const volume = async (): Promise<number> =>
      (await evening.api("getBatch", { at: { ...at, batch: batch.id } })).now.volumeMl;
    const inAndOut = async () =>
      (await restNow()).oak
        .map(({ count, piece, outAt }) => [count, piece?.shape, outAt === null ? "in" : "out"].join(" "))
        .toSorted();
    const before = await volume();
    await comeTo(page, `${home}/batches/${batch.id}/rest`);
    await press("Put more wood in");
    await page.getByLabel("It is").selectOption({ label: "a cube" });
    await page.getByLabel("Its side").fill("10mm");
    await press("More: How many");
    await page.getByLabel("In since").fill(daysAgo(3));
    await press("The oak is in");
    await page.getByText(/^2 cubes/).waitFor();
    expect(await inAndOut()).toEqual(["1 stick in", "2 cube in"]);
    const { dose: all } = await restNow();
    await press(/^Take it out ?: 2 cubes/);
    await page.getByLabel("Out on").first().waitFor();
    await press("Fewer: How many come out");
    await page.getByLabel("Lost with it").fill("900");
    await press("It is out");
    await page.getByRole("heading", { level: 2, name: "One thing to put right" }).waitFor();
    expect(await inAndOut()).toEqual(["1 stick in", "2 cube in"]);
    // The house refused it, and the browser says so of its own.
    const refused = evening.troubles.take();
    expect(refused.length).toBeGreaterThan(0);
    for (const trouble of refused) expect(trouble).toMatch(/\b422\b/);
    await page.getByLabel("Lost with it").fill("2");
    await look("rest, one piece out");
    await press("It is out");
    await page.getByText(/out since .*in for/).waitFor();
    await expect.poll(() => page.locator("main :focus").count(), POLL).toBe(1);
    expect(await inAndOut()).toEqual(["1 cube in", "1 cube out", "1 stick in"]);
    expect(before - (await volume())).toBeCloseTo(2, 6);
    expect((await restNow()).dose?.areaCm2).toBeCloseTo((all?.areaCm2 ?? 0) - 6, 1);
    await page.getByText(/^Each piece counts by its own contact/).waitFor();
    await look("rest, a piece is out");
    await comeTo(page, `${home}/batches/${batch.id}`);
    await page.getByText(/^Oak in it: 1 stick.* and 1 cube.*in since/).waitFor();
    await page.getByText(/^Oak that was in it: 1 cube/).waitFor();
    await look("batch, with its oak");
    await comeTo(page, `${home}/batches/${batch.id}/rest`);
    for (const name of [/^Take it out ?: 1 stick/, /^Take it out ?: 1 cube/]) {
      await press(name);
      await press("It is out");
      await page.getByRole("button", { name }).waitFor({ state: "detached" });
      await page.getByRole("button", { name: "It is out", exact: true }).waitFor({ state: "detached" });
    }
    await page.getByText("No wood is in now: all of it is out.").waitFor();
    await page.getByText(/^All of its wood is out, and nothing more is drawn/).waitFor();
    await heading(2, "End the rest");
    await look("rest, all wood is out");
    await press(/^It is in still ?: 1 stick/);
    await heading(2, "Pull the oak");
    expect(await inAndOut()).toEqual(["1 cube out", "1 cube out", "1 stick in"]);
  });

  it("the sample and the batch are set up as a flight; the oak is pulled, and the loss is in the ledger", {
    timeout: CASE_MS,
  }, async () => {
    await comeTo(page, `${home}/batches/${batch.id}/rest`);
    await page.getByRole("link", { name: "Set the flight of both" }).click();
    await heading(1, "Set a flight");
    await expect
      .poll(() => page.getByLabel("Name of the flight").inputValue(), POLL)
      .toBe("Kettle and Wall, before and after");
    await page.getByText("2 glasses for each taster.").waitFor();
    await comeTo(page, `${home}/batches/${batch.id}/rest`);
    await heading(2, "Pull the oak");
    await page.getByLabel("Lost in filtering").fill("8");
    await press("The oak is out");
    await heading(2, /^On oak, /);
    await look("rest, pulled");
    const rest = await restNow();
    expect(rest.lossMl).toBe(8);
    expect(rest.oak.map(({ piece, outAt }) => [piece?.shape, outAt === rest.endedAt])).toEqual([
      ["stick", true],
      ["cube", false],
      ["cube", false],
    ]);
    const now = await evening.api("getBatch", { at: { ...at, batch: batch.id } });
    expect(now.now.volumeMl).toBeCloseTo(batch.made.volumeMl - 30 - 2 - 8, 3);
    await comeTo(page, `${home}/batches/${batch.id}`);
    await page.getByText(/^Oak that was in it: 1 stick.*\d days.* and 1 cube/).waitFor();
    expect(await page.getByText("Oak in it:").count()).toBe(0);
  });

  it("the label goes to paper as a PDF", { timeout: CASE_MS }, async () => {
    await comeTo(page, `${home}/batches/${batch.id}/label`);
    await heading(1, /^Label and card/);
    await page
      .getByText(/Oak: 1 stick.*days/)
      .first()
      .waitFor();
    const paper = await page.pdf({ format: "A4" });
    expect(paper.subarray(0, 5).toString("latin1")).toBe("%PDF-");
    if (process.env["PARTSPROOF_PICTURES"] === "1")
      writeFileSync(join(root, ".screens", "e2e", "rested-label.pdf"), paper);
  });
});
