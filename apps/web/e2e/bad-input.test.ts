import type { AnswerOf } from "@partsproof/house/protocol";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { saidBeside } from "./fixtures/said-beside.ts";
import {
  goToStep,
  guess,
  lockSheet,
  nameButton,
  saved,
  takeSheet,
  tapRanking,
  writeNotes,
} from "./fixtures/sheet-steps.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const POLL = { timeout: 45_000, interval: 150 };
const CASE_MS = 240_000;
const UNKNOWN = "0".repeat(26);

/** Each bad input of issue 2, as the app says it: beside the field, in words, with nothing half-written behind it. */
describe("bad input is told beside the field", () => {
  let evening: Evening;
  let page: Page;
  let home = "";
  let at: { readonly household: string };
  let kettle: AnswerOf<"addBottle">;
  let wall: AnswerOf<"addBottle">;

  const addBottle = async (maker: string, name: string, value: number): Promise<AnswerOf<"addBottle">> => {
    const body = { maker, name, strength: { basis: "abv20" as const, value } };
    const { id } = await evening.api("addWhiskey", { at, body });
    return evening.api("addBottle", { at, body: { whiskeyId: id } });
  };

  beforeAll(async () => {
    evening = await startEvening();
    at = { household: (await evening.api("addHousehold", { body: { name: "The kitchen table" } })).id };
    home = `/h/${at.household}`;
    kettle = await addBottle("Bellharrow", "Full Kettle", 62.4);
    wall = await addBottle("Quernmouth", "Harbour Wall", 46);
    page = await evening.phone("host");
  }, 240_000);
  afterAll(() => evening.end(), 60_000);
  const nothingWrong = (): void => {
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  };
  afterEach(nothingWrong);

  const look = (where: Page, screen: string): Promise<void> => evening.looks.over(where, screen);
  const kept = async (): Promise<unknown> => {
    const {
      exportedAt: _,
      checksums: __,
      ...rows
    } = (await evening.api("exportHousehold", { at })) as Record<string, unknown>;
    return rows;
  };
  const summary = (where: Page) => where.locator(".issues");

  it("a strength above 100 % or below 0", { timeout: CASE_MS }, async () => {
    const before = await kept();
    await page.goto(`${home}/shelf/add`);
    await page.getByLabel("Maker").fill("Stookfield");
    await page.getByLabel("Name", { exact: true }).fill("Field Wheat");
    const strength = page.getByLabel("Strength");
    for (const [typed, told] of [
      ["104%", 'strength requires 0 to 100 % vol, got "104%"'],
      ["240 proof", 'strength requires 0 to 200 proof, got "240 proof"'],
      ["-4%", 'strength requires 0 to 100 % vol, got "-4%"'],
      ["strong", 'strength requires a number with "%" or "proof", got "strong"'],
      ["", 'strength requires a number with "%" or "proof", got nothing'],
    ] as const) {
      await strength.fill(typed);
      await page.getByRole("button", { name: "Put it on the shelf" }).click();
      await expect
        .poll(async () => (await saidBeside(strength)).toLowerCase(), POLL)
        .toContain(told.toLowerCase());
    }
    await look(page, "add a bottle, refused");
    // The line of the summary leads to the field.
    await summary(page).getByRole("button").first().click();
    expect(await strength.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await kept()).toStrictEqual(before);
  });

  it("parts that are all zero", { timeout: CASE_MS }, async () => {
    const before = await kept();
    await comeTo(page, `${home}/recipes/new`);
    await page.getByLabel("Name of the recipe").fill("Nothing");
    for (const [slot, { whiskeyId }] of [
      [1, kettle],
      [2, wall],
    ] as const) {
      await page.getByLabel(`What slot ${slot} stands for`).selectOption(`whiskey:${whiskeyId}`);
    }
    for (const parts of await page.getByRole("spinbutton").all()) await parts.fill("0");
    await page.getByText("All parts are zero: nothing to mix.").waitFor();
    await page.getByRole("button", { name: "Save the recipe" }).click();
    const parts = page.getByRole("group", { name: "Parts", exact: true });
    await expect.poll(() => parts.innerText(), POLL).toMatch(/parts require.* above 0|requires .*part/i);
    await look(page, "new recipe, refused");
    expect(evening.troubles.takeAnswers(422)).toBe(1);
    expect(await kept()).toStrictEqual(before);
  });

  it("pouring more than the bottle holds", { timeout: CASE_MS }, async () => {
    const before = await kept();
    await comeTo(page, `${home}/shelf/vessels/${wall.id}`);
    await page.getByRole("button", { name: "Pour out" }).click();
    const dialog = page.getByRole("dialog", { name: "Pour out" });
    const amount = dialog.getByLabel("How much?");
    await amount.fill("750 mL");
    await dialog.getByRole("button", { name: "Pour out" }).click();
    await expect.poll(() => saidBeside(amount), POLL).toMatch(/700 mL.*got 750/);
    await look(page, "pour out, refused");
    expect(evening.troubles.takeAnswers(422)).toBe(1);
    expect(await kept()).toStrictEqual(before);
  });

  it("a batch bigger than its vessel, and one that takes more than there is", {
    timeout: CASE_MS,
  }, async () => {
    const slots = [kettle, wall].map(({ whiskeyId }, i) => ({
      parts: 2 - i,
      of: { kind: "whiskey" as const, whiskeyId: whiskeyId ?? "" },
    }));
    await evening.api("addRecipe", { at, body: { name: "Kettle and Wall", slots } });
    const before = await kept();
    await comeTo(page, `${home}/batches/new`);
    await page.getByLabel("Volume at the end").fill("600 mL");
    const poured = page.getByLabel(/^Really poured of/);
    await expect.poll(async () => Math.round(Number(await poured.first().inputValue())), POLL).toBe(400);
    const holds = page.getByLabel("It holds");
    await holds.fill("500 mL");
    await page.getByRole("button", { name: "Record the batch" }).click();
    await expect.poll(() => saidBeside(holds), POLL).toMatch(/500 mL.*got (599|600)/);
    await look(page, "make a batch, vessel too small");
    await holds.fill("2000 mL");
    await poured.first().fill("701");
    await page.getByRole("button", { name: "Record the batch" }).click();
    await expect.poll(() => saidBeside(poured.first()), POLL).toMatch(/700 mL.*got 701/);
    await look(page, "make a batch, bottle too small");
    expect(evening.troubles.takeAnswers(422)).toBe(2);
    expect(await kept()).toStrictEqual(before);
  });

  it("a stale edit from two tabs", { timeout: CASE_MS }, async () => {
    const where = `${home}/shelf/whiskeys/${kettle.whiskeyId}`;
    const other = await page.context().newPage();
    for (const tab of [page, other]) {
      await tab.goto(where);
      await tab.getByRole("button", { name: "Change the facts" }).click();
    }
    await other.getByLabel("Age").fill("12");
    await other.getByRole("button", { name: "Save", exact: true }).click();
    await other.getByRole("button", { name: "Change the facts" }).waitFor();
    await page.getByLabel("Price").fill("64");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    const meanwhile = page.getByRole("region", { name: "Changed meanwhile" });
    await expect.poll(() => meanwhile.innerText(), POLL).toMatch(/age: was no age stated, now 12 years/i);
    await look(page, "whiskey, changed meanwhile");
    expect(await evening.api("getWhiskey", { at: { ...at, whiskey: kettle.whiskeyId ?? "" } })).toMatchObject(
      {
        ageYears: 12,
        priceMinor: null,
      },
    );
    await meanwhile.getByRole("button", { name: "Keep theirs" }).click();
    await page.getByRole("button", { name: "Change the facts" }).waitFor();
    await page.getByText("12 years").waitFor();
    await other.close();
    expect(evening.troubles.takeAnswers(409)).toBe(1);
  });

  it("a recipe saved in two tabs", { timeout: CASE_MS }, async () => {
    const { items } = await evening.api("listRecipes", { at });
    const recipe = items[0]?.id ?? "";
    const other = await page.context().newPage();
    for (const tab of [page, other]) {
      await tab.goto(`${home}/recipes/${recipe}`);
      await tab.getByRole("button", { name: "Change it" }).click();
      await tab.getByRole("button", { name: "Save as the next version" }).waitFor();
    }
    const save = (tab: Page) => tab.getByRole("button", { name: "Save as the next version" }).click();
    await other.getByRole("button", { name: /^More: Parts of .*Kettle/ }).click();
    await save(other);
    await other.getByText("3 : 1, version 2").waitFor();
    await page.getByRole("button", { name: /^More: Parts of .*Wall/ }).click();
    await save(page);
    const meanwhile = page.getByRole("group", { name: "Changed meanwhile" });
    await meanwhile.waitFor();
    await look(page, "recipe, changed meanwhile");
    await meanwhile.getByRole("button", { name: "Save mine as the next version" }).click();
    await page.getByText("2 : 2, that is 1 : 1, version 3").waitFor();
    const { items: versions } = await evening.api("listRecipeVersions", { at: { ...at, recipe } });
    expect(versions.map(({ slots }) => slots.map(({ parts }) => parts))).toStrictEqual([
      [2, 2],
      [3, 1],
      [2, 1],
    ]);
    await other.close();
    expect(evening.troubles.takeAnswers(409)).toBe(1);
  });

  it("a name guessed more often than it is offered; a locked sheet edited", {
    timeout: CASE_MS,
  }, async () => {
    const taster = await evening.api("addTaster", { at, body: { name: "Ilka" } });
    const made = await evening.api("addFlight", {
      at,
      body: {
        name: "Two glasses",
        pouring: "someone else",
        glasses: [{ vesselId: kettle.id }, { vesselId: wall.id }],
        pourMl: 15,
        tasterIds: [taster.id],
        pourer: "Wynna",
      },
    });
    const flight = { ...at, flight: made.flight.id };
    const sheet = made.flight.sheets[0]?.sheetId ?? "";
    const ilka = await evening.phone("Ilka");
    await ilka.goto(`${home}/flights/${made.flight.id}/sheets/${sheet}`);
    await takeSheet(ilka);
    await evening.api("markPoured", { at: flight, token: made.pourerToken ?? "" });
    await ilka.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    const codes = await ilka
      .getByRole("list", { name: /the glasses$/ })
      .getByRole("button")
      .allInnerTexts();
    const [first = "", second = ""] = codes.map((text) => /\d{3}/.exec(text)?.[0] ?? "");
    await writeNotes(ilka, first, { nose: "Wax" });
    await goToStep(ilka, "Names");
    await guess(ilka, first, "Bellharrow Full Kettle");
    await ilka.getByRole("button", { name: `Next: glass ${second}` }).click();
    await ilka.getByRole("heading", { level: 2, name: `${second} is` }).waitFor();
    await nameButton(ilka, "Bellharrow Full Kettle").click();
    const refused = ilka.getByRole("alert").filter({ hasText: "is offered once" });
    await expect
      .poll(() => refused.innerText(), POLL)
      .toContain(`Bellharrow Full Kettle is offered once, and glass ${first} has it.`);
    await look(ilka, "sheet, name used up");
    await saved(ilka);
    const guesses = async (): Promise<unknown> => {
      const token = await ilka.evaluate((id) => localStorage.getItem(`partsproof.token.sheet.${id}`), sheet);
      const { items } = {
        items: await evening.api("getSheet", { at: { ...flight, sheet }, token: token ?? "" }),
      };
      return items.guesses.filter(({ nameId }) => nameId !== null).map(({ code }) => code);
    };
    expect(await guesses()).toStrictEqual([first]);
    await refused.getByRole("button", { name: `Take it from ${first}` }).click();
    await saved(ilka);
    await expect.poll(guesses, POLL).toStrictEqual([second]);

    // A second tab that was open before the lock goes on writing.
    const other = await ilka.context().newPage();
    await other.goto(ilka.url().replace("at=names", "at=first"));
    await other.getByLabel("Nose").waitFor();
    await goToStep(ilka, "Ranking");
    await tapRanking(ilka, [first, second]);
    await saved(ilka);
    // Its questions are held up, so that it does not hear of the lock before it writes.
    await other.route("**/api/**/sheets/*", async (route) => {
      if (route.request().method() === "GET") await new Promise((resolve) => setTimeout(resolve, 20_000));
      await route.continue();
    });
    await lockSheet(ilka);
    await other.getByLabel("Nose").fill("After the lock");
    await other.locator(".kept-stuck").waitFor();
    await expect.poll(() => other.locator(".kept-stuck").innerText(), POLL).toMatch(/Not saved.*lock/is);
    await look(other, "sheet, written on after the lock");
    await other.unrouteAll({ behavior: "ignoreErrors" });
    await other.close();
    expect(evening.troubles.takeAnswers(409)).toBeGreaterThan(0);
    await ilka.context().close();
  });

  it("an id that nothing has, an address that is none", { timeout: CASE_MS }, async () => {
    for (const [path, title] of [
      [`/h/${UNKNOWN}`, "This household could not be opened"],
      [`${home}/shelf/vessels/${UNKNOWN}`, "This vessel could not be fetched"],
      [`${home}/shelf/whiskeys/${UNKNOWN}`, "This whiskey could not be fetched"],
      [`${home}/recipes/${UNKNOWN}`, "This recipe could not be fetched"],
      [`${home}/batches/${UNKNOWN}`, "This batch could not be fetched"],
      [`${home}/flights/${UNKNOWN}`, "The flight could not be fetched"],
      [`${home}/flights/${UNKNOWN}/pour`, "The flight could not be fetched"],
      [`${home}/findings/${UNKNOWN}`, "The finding could not be fetched"],
      [`${home}/batches/that-is-none`, "This batch could not be fetched"],
    ] as const) {
      // The first by its address; the one whose title is that of the one before, too.
      if (path.endsWith("/pour") || path === `/h/${UNKNOWN}`) await page.goto(path);
      else await comeTo(page, path);
      const alert = page.getByRole("alert").filter({ hasText: title });
      await expect.poll(() => alert.innerText(), POLL).toMatch(/requires .*got /);
      await page.getByRole("link", { name: "Go to the front page" }).waitFor();
      expect(evening.troubles.takeAnswers(404) + evening.troubles.takeAnswers(422), path).toBeGreaterThan(0);
    }
    await look(page, "unknown batch");
    evening.troubles.takeAnswers(404);
    await page.goto(`${home}/cellar`);
    await page.getByRole("heading", { level: 1, name: "No such page" }).waitFor();
    await comeTo(page, `${home}/flights/${UNKNOWN}/sheets/${UNKNOWN}`);
    await page.getByText("The sheet could not be fetched").waitFor();
    evening.troubles.takeAnswers(404);
  });

  it("a file that is no JSON, and JSON that is no household", { timeout: CASE_MS }, async () => {
    await comeTo(page, `${home}/household`);
    const file = page.getByLabel("Restore from a file");
    const give = (name: string, text: string): Promise<void> =>
      file.setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
    await give("evening.json", "{not json");
    await page.getByText('Restoring requires a household file in JSON, got "evening.json".').waitFor();
    await look(page, "household, no JSON");
    await give("evening.json", '{"household": 3}');
    await expect.poll(() => summary(page).innerText(), POLL).toMatch(/requires .*got /);
    expect(evening.troubles.takeAnswers(422)).toBe(1);
    expect((await evening.api("listHouseholds")).items).toHaveLength(1);
  });
});
