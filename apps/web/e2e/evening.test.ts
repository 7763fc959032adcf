import type { AnswerOf } from "@partsproof/house/protocol";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { atLeast, countLuck, together } from "./fixtures/count-luck.ts";
import { countRankings } from "./fixtures/count-rankings.ts";
import { dragByFinger } from "./fixtures/drag-by-finger.ts";
import {
  goToStep,
  guess,
  lockSheet,
  rankingShown,
  saved,
  takeSheet,
  tapRanking,
  writeNotes,
} from "./fixtures/sheet-steps.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";
import { tabTo } from "./fixtures/tab-to.ts";

/** A finding is told to as many figures as the page prints. */
const three = (p: number): string => String(Number(p.toPrecision(3)));
const POLL = { timeout: 45_000, interval: 150 };
/** Each act is looked at in four ways; on a busy machine that takes its time. */
const ACT_MS = 420_000;
const RECIPE = "Kettle and Wall";
const BATCH = "Kettle and Wall, first";
const BATCH_BOTTLE = "Kettle and Wall, big bottle";
const KETTLE = "Bellharrow Full Kettle";
const WALL = "Quernmouth Harbour Wall";
const LAMP = "Saltreach Lamplighter's Rest";
const FLIGHT = "Beside the lamp";

describe("the whole evening at 390 × 844, in a real browser", () => {
  let evening: Evening;
  let host: Page;
  let pourer: Page;
  const tasters: Page[] = [];
  let household = "";
  let flightId = "";
  let list: AnswerOf<"getPourList">;
  let broken = false;

  beforeAll(async () => {
    evening = await startEvening();
    host = await evening.phone("host", { keepsApp: true });
  }, 240_000);
  afterAll(async () => {
    console.log(
      `LONG screens looked at | ${evening.looks.screens.length} | ${evening.looks.screens.join("; ")}`,
    );
    await evening.end();
  }, 60_000);
  beforeEach(() => {
    // Each act stands on the one before; after a failure the rest would only wait in vain.
    if (broken) throw new Error("an act before this one failed");
  });
  afterEach(({ task }) => {
    if (task.result?.state === "fail") broken = true;
  });

  /** No console errors, no failed requests, nothing that axe or the ruler finds. */
  const nothingWrong = (): void => {
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  };
  const look = (page: Page, screen: string): Promise<void> => evening.looks.over(page, screen);
  const place = (page: Page, name: string): Promise<void> =>
    page.getByRole("navigation", { name: "Places" }).getByRole("link", { name }).click();
  const heading = (page: Page, name: string | RegExp): Promise<void> =>
    page.getByRole("heading", { level: 1, name }).waitFor();
  const h1 = (page: Page): Promise<string> => page.getByRole("heading", { level: 1 }).innerText();
  const at = () => ({ household });

  it("first run: a household of one's own begins at the door", { timeout: ACT_MS }, async () => {
    await host.goto("/");
    await heading(host, "From the shelf to the reveal");
    await look(host, "front door, first run");
    await host.getByLabel("Name of the household").fill("The kitchen table");
    await host.getByLabel("Prices are in").selectOption("EUR");
    await host.getByRole("button", { name: "Begin", exact: true }).click();
    await heading(host, "What is next");
    await expect.poll(() => new URL(host.url()).pathname).toMatch(/^\/h\/[0-9a-z]{26}$/);
    household = new URL(host.url()).pathname.split("/")[2] ?? "";
    await look(host, "front, nothing yet");
    expect(await evening.api("getHousehold", { at: at() })).toMatchObject({
      name: "The kitchen table",
      currency: "EUR",
      demo: false,
    });
    nothingWrong();
  });

  it("two bottles by the form: one by finger, one by the keyboard alone", { timeout: ACT_MS }, async () => {
    await place(host, "Shelf");
    await host.getByRole("heading", { name: "The shelf is empty" }).waitFor();
    await look(host, "shelf, empty");
    await host.getByRole("link", { name: "Add the first bottle" }).click();
    await heading(host, "Add a bottle");
    await host.getByLabel("Maker").fill("Bellharrow");
    await host.getByLabel("Name", { exact: true }).fill("Full Kettle");
    await host.getByLabel("Strength").fill("124.8 proof");
    await host.getByLabel("Age").fill("12");
    await host.getByLabel("Kind").selectOption("pot still");
    await host.getByLabel("Price").fill("64.50");
    await host.getByText("Release, casks, grains and the rest").click();
    await host.getByRole("button", { name: "Add a cask" }).click();
    await host.getByLabel("Wood of cask 1").selectOption("European oak");
    await host.getByLabel("What cask 1 held before").fill("sherry");
    await look(host, "add a bottle");
    await host.getByRole("button", { name: "Put it on the shelf" }).click();
    await heading(host, "Shelf");
    await host.getByRole("link", { name: /Full Kettle/ }).waitFor();
    await look(host, "shelf");

    const press = async (target: Parameters<typeof tabTo>[1], key = "Enter"): Promise<void> => {
      await tabTo(host, target);
      await host.keyboard.press(key);
    };
    const type = async (label: string, text: string): Promise<void> => {
      await tabTo(host, host.getByLabel(label, { exact: true }));
      await host.keyboard.type(text);
    };
    await press(host.getByRole("link", { name: "Add a bottle" }));
    await heading(host, "Add a bottle");
    await type("Maker", "Quernmouth");
    await type("Name", "Harbour Wall");
    await type("Strength", "46%");
    await tabTo(host, host.getByLabel("Kind"));
    await host.keyboard.type("malt");
    await tabTo(host, host.getByRole("radio", { name: "Sealed", exact: true }));
    await host.keyboard.press("ArrowRight");
    await tabTo(host, host.getByLabel("In it now"));
    await host.keyboard.press("ControlOrMeta+a");
    await host.keyboard.type("450 ml");
    await press(host.getByRole("button", { name: "Put it on the shelf" }));
    await heading(host, "Shelf");
    await host.getByRole("link", { name: /Harbour Wall/ }).waitFor();

    const { items } = await evening.api("listVessels", { at: at() });
    const found = new Map(items.map((vessel) => [vessel.label.split(" ").slice(-2).join(" "), vessel]));
    expect(found.get("Full Kettle")).toMatchObject({ sealed: true, priceMinor: 6450 });
    expect(found.get("Full Kettle")?.contents.volumeMl).toBeCloseTo(700, 6);
    // 124.8 proof at 60 °F is 62.4 % at 60 °F; at 20 °C it is a little more.
    expect(found.get("Full Kettle")?.contents.abv20).toBeCloseTo(62.4, 0);
    expect(found.get("Harbour Wall")).toMatchObject({ sealed: false });
    expect(found.get("Harbour Wall")?.contents.volumeMl).toBeCloseTo(450, 6);
    nothingWrong();

    // What else a flight of five glasses needs: the target, and a name that is in no glass.
    for (const [maker, name, value, levelMl] of [
      ["Saltreach", "Lamplighter's Rest", 46.3, 270],
      ["Stookfield", "Field Wheat", 48, 640],
    ] as const) {
      const whiskey = await evening.api("addWhiskey", {
        at: at(),
        body: { maker, name, strength: { basis: "abv20", value } },
      });
      await evening.api("addBottle", { at: at(), body: { whiskeyId: whiskey.id, levelMl, sealed: false } });
    }
  });

  it("a recipe of 2 : 1 is written, and its strength follows the steppers", { timeout: ACT_MS }, async () => {
    await place(host, "Recipes");
    await host.getByRole("heading", { name: "No recipe yet" }).waitFor();
    await look(host, "recipes, none");
    await host.getByRole("link", { name: "Write a recipe" }).first().click();
    await heading(host, "New recipe");
    await host.getByLabel("Name of the recipe").fill(RECIPE);
    const choose = async (slot: number, name: string): Promise<void> => {
      const select = host.getByLabel(`What slot ${slot} stands for`);
      const value = await select.locator("option", { hasText: name }).getAttribute("value");
      await select.selectOption(value);
    };
    await choose(1, "Full Kettle");
    await choose(2, "Harbour Wall");
    const shown = (): Promise<string> =>
      host
        .getByRole("region", { name: "What it comes to" })
        .locator(".number-hero .number-digits")
        .innerText();
    const { items: whiskeys } = await evening.api("listWhiskeys", { at: at() });
    const idOf = (name: string): string => whiskeys.find((one) => one.name === name)?.id ?? "";
    const preview = async (parts: readonly [number, number]): Promise<string> => {
      const slots = (["Full Kettle", "Harbour Wall"] as const).map((name, i) => ({
        parts: parts[i] ?? 0,
        of: { kind: "whiskey" as const, whiskeyId: idOf(name) },
      }));
      const { result } = await evening.api("previewRecipe", { at: at(), body: { slots } });
      return (result.abv20 ?? 0).toFixed(1);
    };
    await expect.poll(shown, POLL).toBe(await preview([2, 1]));
    await host
      .getByRole("button", { name: "More: Parts of Harbour Wall" })
      .or(host.getByRole("button", { name: /^More: Parts of .*Harbour Wall/ }))
      .click();
    await expect.poll(shown, POLL).toBe(await preview([2, 2]));
    await host.getByText("2 : 2, that is 1 : 1").waitFor();
    await host.getByRole("button", { name: /^More: Parts of .*Full Kettle/ }).click();
    await expect.poll(shown, POLL).toBe(await preview([3, 2]));
    await host.getByRole("button", { name: /^Fewer: Parts of .*Full Kettle/ }).click();
    await host.getByRole("button", { name: /^Fewer: Parts of .*Harbour Wall/ }).click();
    await expect.poll(shown, POLL).toBe(await preview([2, 1]));
    const target = host.getByLabel("Comes close to");
    await target.selectOption(idOf("Lamplighter's Rest"));
    await look(host, "new recipe");
    await host.getByRole("button", { name: "Save the recipe" }).click();
    await heading(host, RECIPE);
    await host.getByText("2 : 1, version 1").waitFor();
    await look(host, "recipe");
    await host.getByRole("button", { name: "Change it" }).click();
    await host.getByRole("button", { name: "Save as the next version" }).waitFor();
    await look(host, "recipe, being changed");
    await host.getByRole("button", { name: "Leave it as it was" }).click();
    await place(host, "Recipes");
    await heading(host, "Recipes");
    await host.getByRole("link", { name: RECIPE }).waitFor();
    await look(host, "recipes");
    nothingWrong();
  });

  it("a batch of it is planned, poured as it really went, and recorded", { timeout: ACT_MS }, async () => {
    await host.getByRole("link", { name: RECIPE }).click();
    await heading(host, RECIPE);
    await host.getByRole("link", { name: "Make a batch" }).click();
    await heading(host, "Make a batch");
    await host.getByLabel("Volume at the end").fill("450 mL");
    const poured = host.getByLabel(/^Really poured of/);
    const amounts = async (): Promise<readonly number[]> =>
      Promise.all((await poured.all()).map(async (box) => Number(await box.inputValue())));
    // 2 : 1 of 450 mL, and a little more of both for what mixing takes away.
    await expect.poll(async () => Math.round((await amounts())[0] ?? 0), POLL).toBe(300);
    const [kettle = 0, wall = 0] = await amounts();
    expect(kettle / wall).toBeCloseTo(2, 2);
    expect(kettle + wall).toBeGreaterThan(450);
    expect(kettle + wall).toBeLessThan(453);
    await look(host, "make a batch, the plan");
    await poured.first().fill("302");
    await host.getByText("Planned:").waitFor();
    await host.getByLabel("Name of the batch").fill(BATCH);
    await host.getByLabel("Its label").fill(BATCH_BOTTLE);
    await host.getByLabel("It holds").fill("500 mL");
    await look(host, "make a batch, as poured");
    await host.getByRole("button", { name: "Record the batch" }).click();
    await heading(host, BATCH);
    await look(host, "batch");
    const { items } = await evening.api("listBatches", { at: at() });
    expect(items).toHaveLength(1);
    expect(items[0]?.poured.map(({ ml }) => Math.round(ml))).toStrictEqual([302, Math.round(wall)]);
    expect(items[0]?.state).toBe("resting");
    await host.getByRole("link", { name: "Label and card" }).click();
    await heading(host, /Label and card/);
    await look(host, "label");
    await host.getByRole("radio", { name: "The card" }).check();
    await look(host, "card");
    await place(host, "Batches");
    await heading(host, "Batches");
    await look(host, "batches");
    nothingWrong();
  });

  it("a flight of five glasses is set, with the target, a repeat and a name in no glass", {
    timeout: ACT_MS,
  }, async () => {
    await place(host, "Flights");
    await host.getByRole("heading", { name: "No flight has been set" }).waitFor();
    await look(host, "flights, none");
    await host.getByRole("link", { name: "Set the first flight" }).click();
    await heading(host, "Set a flight");
    await look(host, "set a flight, nothing chosen");
    const pourGlass = (name: string): Promise<void> =>
      host.getByRole("button", { name: new RegExp(`^Pour a glass of .*${name}`) }).click();
    await pourGlass("first");
    await host.getByRole("button", { name: /^More: Glasses of .*first/ }).click();
    await pourGlass("Lamplighter");
    await pourGlass("Full Kettle");
    await pourGlass("Harbour Wall");
    await host.getByText("5 glasses for each taster.").waitFor();
    const target = host.getByLabel("The target", { exact: true });
    await target.selectOption(
      await target.locator("option", { hasText: "Lamplighter" }).getAttribute("value"),
    );
    await host.getByText("Add a name").click();
    await host.getByRole("button", { name: /^Offer the name .*Field Wheat/ }).click();
    await host.getByLabel("Name of the flight").fill(FLIGHT);
    await host.getByLabel("The pourer’s name").fill("Wynna");
    for (const name of ["Ilka", "Jorren", "Pell"]) {
      await host.getByLabel("Another taster").fill(name);
      await host.getByRole("button", { name: "Add", exact: true }).click();
      await host.getByRole("checkbox", { name }).and(host.locator(":checked")).waitFor();
    }
    await look(host, "set a flight");
    await host.getByRole("button", { name: "Set the flight" }).click();
    await heading(host, FLIGHT);
    flightId = new URL(host.url()).pathname.split("/").at(-1) ?? "";
    await look(host, "flight, to pour");
    const flight = await evening.api("getFlight", { at: { household, flight: flightId } });
    expect(flight.glassCount).toBe(5);
    expect(flight.namesOnOffer.map(({ count }) => count).toSorted((a, b) => a - b)).toStrictEqual([
      1, 1, 1, 1, 2,
    ]);
    nothingWrong();
  });

  it("somebody else pours, by the link, on a phone of their own", { timeout: ACT_MS }, async () => {
    const link = await host.getByLabel("Link to Wynna’s page").inputValue();
    pourer = await evening.phone("pourer");
    await pourer.goto(link);
    await pourer.getByRole("heading", { name: "Behind this stands the key" }).waitFor();
    await expect.poll(() => pourer.url()).not.toContain("#");
    await look(pourer, "pourer's page, covered");
    await pourer.getByRole("button", { name: "I am Wynna and taste nothing: show it" }).click();
    await pourer.getByRole("heading", { name: "Glass by glass" }).waitFor();
    list = await evening.api("getPourList", {
      at: { household, flight: flightId },
      token: link.split("#")[1] ?? "",
    });
    for (const { taster, glasses } of list.tasters) {
      const lines = pourer.getByRole("group", { name: taster }).getByRole("listitem");
      const said = await lines.allInnerTexts();
      expect(said.length).toBe(5);
      for (const [i, { code, label }] of glasses.entries()) {
        expect(said[i]).toContain(code);
        expect(said[i]).toContain(label);
      }
    }
    await look(pourer, "pourer's page");

    // The first taster is early and sees the page open by itself.
    await host.getByRole("button", { name: "Hand over Ilka’s sheet" }).click();
    await look(host, "a sheet handed over");
    const sheet = await host.getByLabel("Link to Ilka’s sheet").inputValue();
    await host.keyboard.press("Escape");
    const ilka = await evening.phone("Ilka");
    tasters.push(ilka);
    await ilka.goto(sheet);
    await look(ilka, "take a sheet");
    await takeSheet(ilka);
    await ilka.getByText("The glasses are being poured").waitFor();
    await look(ilka, "sheet, before the pouring");

    for (const box of await pourer.getByRole("checkbox").all()) {
      await box.check();
    }
    await pourer.getByRole("button", { name: "The glasses stand ready" }).click();
    const sure = pourer.getByRole("alertdialog", { name: "Everything poured?" });
    await sure.waitFor();
    await look(pourer, "pourer, everything poured?");
    await sure.getByRole("button", { name: "They stand ready" }).click();
    await pourer.getByText("the tasters can write").waitFor();
    await ilka.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    nothingWrong();
  });

  /** What stands in a taster's glasses, in their order, by the names on offer: a batch by its own, not its bottle's. */
  const truthOf = (taster: string): readonly { readonly code: string; readonly label: string }[] =>
    (list.tasters.find((one) => one.taster === taster)?.glasses ?? []).map(({ code, label }) => ({
      code,
      label: label === BATCH_BOTTLE ? BATCH : label,
    }));

  /** The same, ordered by what is in them, so that every run of the evening finds the same. */
  const codesByName = (taster: string): readonly string[] =>
    truthOf(taster)
      .toSorted((a, b) => a.label.localeCompare(b.label))
      .map(({ code }) => code);

  it("Ilka writes two passes, names all, and ranks and locks by the keyboard", {
    timeout: ACT_MS,
  }, async () => {
    const page = tasters[0] ?? host;
    const glasses = truthOf("Ilka");
    const codes = codesByName("Ilka");
    await look(page, "sheet, first pass");
    for (const { code } of glasses) {
      await writeNotes(page, code, {
        nose: `Orange, wax, glass ${code}`,
        palate: "Rye bread, fig",
        finish: "Long, a little bitter",
      });
    }
    await goToStep(page, "Second pass");
    for (const [i, { code }] of glasses.entries()) {
      await writeNotes(page, code, { nose: "Clove", palate: "Softer now", score: String(70 + i * 5) });
    }
    await look(page, "sheet, second pass");
    await goToStep(page, "Names");
    for (const { code, label } of glasses) {
      await guess(page, code, label);
    }
    // How sure of the last of them, which one need not say.
    await page.getByRole("button", { name: /^70\s%$/ }).click();
    await look(page, "sheet, names");
    await goToStep(page, "Ranking");
    await look(page, "sheet, ranking, nothing placed");

    const [a = "", b = "", c = "", d = "", e = ""] = codes;
    for (const code of codes) {
      await tabTo(page, page.getByRole("button", { name: `Put next: glass ${code}` }));
      await page.keyboard.press("Enter");
    }
    await expect.poll(() => rankingShown(page)).toStrictEqual([[a], [b], [c], [d], [e]]);
    // The last up by two, the second level with the first.
    await tabTo(page, page.getByRole("button", { name: `Move glass ${e}` }));
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => rankingShown(page)).toStrictEqual([[a], [b], [e], [c], [d]]);
    await tabTo(page, page.getByRole("button", { name: `Move glass ${b}` }));
    await page.keyboard.press("=");
    await expect.poll(() => rankingShown(page)).toStrictEqual([[a, b], [e], [c], [d]]);
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => rankingShown(page)).toStrictEqual([[a], [b], [e], [c], [d]]);
    await look(page, "sheet, ranking");
    await saved(page);

    await tabTo(page, page.getByRole("button", { name: "Go to the lock" }));
    await page.keyboard.press("Enter");
    await page.getByText(/, 70\s% sure$/).waitFor();
    await page.getByText("Notes, guesses and ranking are all there.").waitFor();
    await look(page, "sheet, before the lock");
    await tabTo(page, page.getByRole("button", { name: "Lock the sheet" }));
    await page.keyboard.press("Enter");
    const sure = page.getByRole("alertdialog", { name: "Lock the sheet?" });
    await sure.waitFor();
    await look(page, "sheet, lock it?");
    await tabTo(page, sure.getByRole("button", { name: "Lock it" }));
    await page.keyboard.press("Enter");
    await page.getByText("; nothing on it can change.").waitFor();
    await look(page, "sheet, locked");
    nothingWrong();
  });

  it("Jorren ranks by dragging, with a tie; Pell leaves a glass unnamed", { timeout: ACT_MS }, async () => {
    for (const name of ["Jorren", "Pell"]) {
      await host.getByRole("button", { name: `Hand over ${name}’s sheet` }).click();
      const link = await host.getByLabel(`Link to ${name}’s sheet`).inputValue();
      await host.keyboard.press("Escape");
      const page = await evening.phone(name);
      tasters.push(page);
      await page.goto(link);
      await takeSheet(page);
      for (const { code } of truthOf(name)) {
        await writeNotes(page, code, { nose: `${name} on ${code}: toffee` });
      }
      await goToStep(page, "Second pass");
      for (const { code } of truthOf(name)) {
        await writeNotes(page, code, { nose: "Still toffee" });
      }
      await goToStep(page, "Names");
    }
    const [, jorren = host, pell = host] = tasters;

    // The two pours of the batch taken for each other count as right; two others truly swapped do not.
    const jorrens = truthOf("Jorren");
    const swapped = new Map([
      [KETTLE, WALL],
      [WALL, KETTLE],
    ]);
    for (const { code, label } of jorrens) {
      await guess(jorren, code, swapped.get(label) ?? label);
    }
    await goToStep(jorren, "Ranking");
    const codes = codesByName("Jorren");
    const [a = "", b = "", c = "", d = "", e = ""] = codes;
    await tapRanking(jorren, codes);
    const handle = (code: string) => jorren.getByRole("button", { name: `Move glass ${code}` });
    const row = (code: string) => jorren.locator("[data-tier]", { has: handle(code) });
    const within = (code: string, share: number) => async (): Promise<number> => {
      const box = await row(code).boundingBox();
      if (box === null) throw new Error("a place requires to be on the screen, got none");
      return box.y + box.height * share;
    };
    await dragByFinger(jorren, handle(d), within(b, 0.05));
    await expect.poll(() => rankingShown(jorren)).toStrictEqual([[a], [d], [b], [c], [e]]);
    await dragByFinger(jorren, handle(e), within(c, 0.5));
    await expect.poll(() => rankingShown(jorren)).toStrictEqual([[a], [d], [b], [c, e]]);
    await saved(jorren);
    await lockSheet(jorren);

    const taken = new Map([
      [BATCH, BATCH],
      [KETTLE, LAMP],
      [WALL, "Stookfield Field Wheat"],
    ]);
    const pells = truthOf("Pell");
    for (const { code, label } of pells) {
      const name = taken.get(label);
      if (name !== undefined) await guess(pell, code, name);
    }
    await goToStep(pell, "Ranking");
    await tapRanking(pell, codesByName("Pell").toReversed());
    await saved(pell);
    await goToStep(pell, "Lock");
    const blank = pells.find(({ label }) => label === LAMP)?.code ?? "";
    await pell.getByText(`No guess for glass ${blank}.`).first().waitFor();
    await look(pell, "sheet, before the lock, a blank");
    await lockSheet(pell);
    nothingWrong();
  });

  it("the key is opened, and the glasses one at a time", { timeout: ACT_MS }, async () => {
    await host.getByRole("button", { name: "Reveal", exact: true }).waitFor();
    await look(host, "flight, to reveal");
    await host.getByRole("button", { name: "Reveal", exact: true }).click();
    await host.getByText("The key is open; the glasses are not, yet.").waitFor();
    await look(host, "reveal, all shut");
    const finding = await evening.api("getFinding", { at: { household, flight: flightId } });
    // Choosing shuts all; that this reaches the house late takes nothing back of what is opened after it.
    await host.route(
      "**/opened",
      async (route) => {
        await new Promise((done) => setTimeout(done, 1500));
        await route.continue();
      },
      { times: 1 },
    );
    await host.getByLabel("Whose glasses").selectOption({ label: "Ilka’s" });
    const shut = host.locator(".opened-one");
    const ilkas = finding.sheets.find(({ taster }) => taster === "Ilka")?.glasses ?? [];
    expect(ilkas.map(({ code, label }) => ({ code, label }))).toStrictEqual(
      truthOf("Ilka").map(({ code, label }) => ({ code, label })),
    );
    for (const [i, glass] of ilkas.entries()) {
      const word = i === 0 ? "first" : i === 4 ? "last" : "next";
      await host.getByRole("button", { name: `Open the ${word} glass` }).click();
      await expect.poll(() => shut.nth(i).innerText()).toContain(glass.label);
      const texts = await shut.allInnerTexts();
      expect(texts.slice(i + 1).every((text) => /Next|Still shut/.test(text))).toBe(true);
      if (i === 1) await look(host, "reveal, two open");
    }
    await host.getByText("Every glass is open.").waitFor();
    await look(host, "reveal, all open");
    for (const page of tasters) {
      await page.getByRole("link", { name: "Open the glasses" }).waitFor();
    }
    await look(tasters[1] ?? host, "sheet, after the reveal");
    await pourer.getByRole("heading", { name: "The list is closed" }).waitFor();
    await look(pourer, "pourer's page, closed");
    nothingWrong();
  });

  it("the finding says what the house says, and luck is what counting it out gives", {
    timeout: ACT_MS,
  }, async () => {
    await host.getByRole("link", { name: "Read the finding" }).click();
    const finding = await evening.api("getFinding", { at: { household, flight: flightId } });
    // Drawn in two sizes, so what a locator would call its name has a space more.
    await expect
      .poll(() => host.getByRole("heading", { level: 1 }).textContent(), POLL)
      .toBe(finding.headline);
    expect(finding.sheets.flatMap(({ glasses }) => glasses.flatMap(({ sure }) => sure ?? []))).toEqual([70]);
    expect(finding.sheets.map(({ taster, right, guessed }) => [taster, right, guessed])).toStrictEqual([
      ["Ilka", 5, 5],
      ["Jorren", 3, 5],
      ["Pell", 2, 4],
    ]);

    const offered = finding.namesOnOffer.flatMap(({ nameId, count }) =>
      Array.from({ length: count }, () => nameId),
    );
    expect(offered).toHaveLength(6);
    const counted = finding.sheets.map((sheet) =>
      countLuck(
        sheet.glasses.filter(({ guessNameId }) => guessNameId !== null).map(({ nameId }) => nameId),
        offered,
      ),
    );
    for (const summary of await host.getByText("The number and how it was reckoned").all()) {
      await summary.click();
    }
    for (const [i, sheet] of finding.sheets.entries()) {
      const law = counted[i];
      if (law === undefined || sheet.luck === null) throw new Error("a sheet with guesses requires its luck");
      const { fraction, p } = atLeast(law, sheet.right);
      expect(sheet.luck.fraction, sheet.taster).toBe(fraction);
      expect(sheet.luck.p, sheet.taster).toBeCloseTo(p, 12);
      const said = await host.getByRole("region", { name: sheet.taster, exact: true }).innerText();
      expect(said).toContain(`${sheet.right} of ${sheet.guessed} right`);
      expect(said.toLowerCase()).toContain(sheet.luck.words);
      expect(said).toContain(`p = ${three(p)} (${fraction.replace("/", " / ")})`);
    }
    const pooled = finding.pooledGuesses;
    if (pooled === null) throw new Error("three sheets with guesses require a pooled count, got none");
    expect(pooled.luck.p).toBeCloseTo(atLeast(together(counted), pooled.right).p, 12);
    const all = await host.locator(".guessed-all").innerText();
    expect(all).toContain(`${pooled.right} of ${pooled.guessed} right, all sheets together`);
    expect(all).toContain(pooled.luck.words);
    expect(all).toContain(`p = ${three(pooled.luck.p)}`);

    // Friedman's test, counted out: each sheet's ranks by glass of the flight.
    const rows = finding.sheets.map((sheet) =>
      finding.glasses.map(({ glass }) => sheet.glasses.find((one) => one.glass === glass)?.rank ?? 0),
    );
    expect(finding.ranks?.chance.p).toBeCloseTo(countRankings(rows), 12);
    const ranks = await host.locator("section", { has: host.getByText("Which was liked best") }).innerText();
    expect(ranks).toContain(finding.ranks?.chance.words ?? "no words");
    expect(ranks).toContain(finding.ranks?.sentence ?? "no sentence");
    expect(finding.leftOut).toStrictEqual(["Pell named 4 of 5 glasses; the others are left out."]);
    await host.getByText(finding.leftOut[0] ?? "").waitFor();
    await look(host, "finding");
    await place(host, "Findings");
    await heading(host, "Findings");
    await host.getByText(finding.headline).waitFor();
    await look(host, "findings");
    nothingWrong();
  });

  it("alone: marks, a blind sheet by places, the undersides after the lock, the reveal", {
    timeout: ACT_MS,
  }, async () => {
    await place(host, "Flights");
    await look(host, "flights");
    await host.getByRole("link", { name: "Set a flight" }).click();
    for (const name of ["first", "Lamplighter", "Harbour Wall"]) {
      await host.getByRole("button", { name: new RegExp(`^Pour a glass of .*${name}`) }).click();
    }
    await host.getByRole("radio", { name: "I am alone" }).check();
    await host.getByRole("radio", { name: "Ilka" }).check();
    await host.getByLabel("Name of the flight").fill("Alone with three");
    await look(host, "set a flight, alone");
    await host.getByRole("button", { name: "Set the flight" }).click();
    await heading(host, "Alone with three");
    const id = new URL(host.url()).pathname.split("/").at(-1) ?? "";
    await look(host, "flight alone, to pour");
    await host.getByRole("link", { name: "Begin" }).click();
    await heading(host, "First take the sheet");
    await takeSheet(host);
    await heading(host, "Pour alone");
    const { marks, namesOnOffer } = await evening.api("getFlight", { at: { household, flight: id } });
    for (const { mark } of marks) {
      await host.getByRole("checkbox", { name: new RegExp(`^${mark}`) }).check();
    }
    for (const shuffle of ["First", "Second"])
      await host.getByRole("checkbox", { name: new RegExp(`^${shuffle} shuffle done`) }).check();
    await look(host, "alone, marks and places");
    await host.getByRole("button", { name: "They stand at their places" }).click();
    await host.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();

    // The mixing up, which only the test sees: C stands at place 1, A at 2, B at 3.
    const order = ["C", "A", "B"];
    const labels = order.map((letter) => {
      const nameId = marks.find(({ mark }) => mark === letter)?.nameId;
      return namesOnOffer.find((name) => name.nameId === nameId)?.label ?? "";
    });
    for (const code of ["1", "2", "3"]) {
      await writeNotes(host, code, { nose: `Place ${code}` });
    }
    await look(host, "alone, first pass");
    await goToStep(host, "Names");
    for (const [i, label] of labels.entries()) {
      await guess(host, String(i + 1), label);
    }
    await goToStep(host, "Ranking");
    await tapRanking(host, ["2", "1", "3"]);
    await saved(host);
    await lockSheet(host);
    await host.getByRole("link", { name: "Look under the glasses" }).click();
    await heading(host, "Look under the glasses");
    for (const [i, letter] of order.entries()) {
      await host
        .getByRole("group", { name: `Place ${i + 1}` })
        .getByRole("radio", { name: letter, exact: true })
        .check();
    }
    await look(host, "undersides");
    await host.getByRole("button", { name: "Enter the letters" }).click();
    await host.getByRole("alertdialog").getByRole("button", { name: "Enter them" }).click();
    await heading(host, "Alone with three");
    await host.getByRole("button", { name: "Reveal", exact: true }).click();
    await host.getByRole("button", { name: "Open the first glass" }).click();
    await host
      .getByText(labels[0] ?? "")
      .first()
      .waitFor();
    await look(host, "reveal alone");
    await host.getByRole("button", { name: "Open all" }).click();
    await host.getByRole("link", { name: "Read the finding" }).click();
    const finding = await evening.api("getFinding", { at: { household, flight: id } });
    // Drawn in two sizes, so what a locator would call its name has a space more.
    await expect
      .poll(() => host.getByRole("heading", { level: 1 }).textContent(), POLL)
      .toBe(finding.headline);
    const [sheet] = finding.sheets;
    const law = countLuck(
      (sheet?.glasses ?? []).map(({ nameId }) => nameId),
      finding.namesOnOffer.map(({ nameId }) => nameId),
    );
    expect([sheet?.right, sheet?.luck?.fraction]).toStrictEqual([3, "1/6"]);
    expect(atLeast(law, 3)).toStrictEqual({ fraction: "1/6", p: 1 / 6 });
    await host.getByText("one in six would do as well by guessing").first().waitFor();
    await look(host, "finding alone");
    nothingWrong();
  });

  it("every other screen is reached by its links", { timeout: ACT_MS }, async () => {
    await host.getByRole("banner").getByRole("link", { name: "Parts & Proof" }).click();
    await heading(host, "What is next");
    await look(host, "front");
    await place(host, "Shelf");
    await host.getByRole("link", { name: /Full Kettle/ }).click();
    await heading(host, /Full Kettle/);
    await look(host, "bottle");
    await host.getByRole("button", { name: "Pour out" }).click();
    await host.getByRole("dialog", { name: "Pour out" }).waitFor();
    await look(host, "pour out");
    await host.keyboard.press("Escape");
    await host.getByRole("button", { name: "Top up" }).click();
    await host.getByRole("dialog", { name: "Top up" }).waitFor();
    await look(host, "top up");
    await host.keyboard.press("Escape");
    await host.getByRole("link", { name: "about the whiskey" }).click();
    await host.getByRole("button", { name: "Change the facts" }).waitFor();
    await look(host, "whiskey");
    await host.getByRole("button", { name: "Change the facts" }).click();
    await look(host, "whiskey, being changed");
    await place(host, "Shelf");
    await host.getByRole("button", { name: "Add a vessel" }).click();
    await host.getByRole("dialog", { name: "Add a vessel" }).waitFor();
    await look(host, "add a vessel");
    await host.keyboard.press("Escape");
    const more = host.getByRole("navigation", { name: "More" });
    await more.getByRole("link", { name: "Reckoner" }).click();
    await heading(host, "Quick reckoner");
    await look(host, "reckoner, mixing");
    await host.getByRole("link", { name: "Reduce", exact: true }).click();
    await host.getByLabel("Strength wanted").waitFor();
    await look(host, "reckoner, reducing");
    await more.getByRole("link", { name: "Household" }).click();
    await heading(host, "Household");
    await look(host, "household");
    await host.getByRole("link", { name: "Another household" }).click();
    await heading(host, "Whose shelf?");
    await look(host, "front door, with households");
    await more.getByRole("link", { name: "Stay well" }).click();
    await heading(host, "Stay well");
    await look(host, "stay well");
    await host.goto("/nowhere");
    await heading(host, "No such page");
    await look(host, "no such page");
    expect(await h1(host)).toBe("No such page");
    nothingWrong();
  });
});
