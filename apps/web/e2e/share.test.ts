import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { readSquare } from "./fixtures/read-square.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const POLL = { timeout: 30_000, interval: 50 };

describe("a recipe passed on, and a shelf's list taken in", () => {
  let evening: Evening;
  let page: Page;
  let folder = "";
  let household = "";
  let recipe = "";
  let link = "";

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "partsproof-share-"));
    evening = await startEvening();
    const { api } = evening;
    household = (await api("addHousehold", { body: { name: "The sharing table", currency: "EUR" } })).id;
    const whiskeys = [];
    for (const [name, value] of [
      ["Tarn", 58.9],
      ["Skerry", 46],
    ] as const) {
      const body = { maker: "Saltreach", name, strength: { basis: "abv20" as const, value } };
      whiskeys.push(await api("addWhiskey", { at: { household }, body }));
    }
    const slots = whiskeys.map(({ id }, n) => ({
      parts: 2 - n,
      of: { kind: "whiskey" as const, whiskeyId: id },
    }));
    const waterTo = { basis: "abv20" as const, value: 46 };
    const body = { name: "Two and one", slots, waterTo, restDays: 21 };
    recipe = (await api("addRecipe", { at: { household }, body })).id;
    page = await evening.phone("Ana");
  }, 240_000);
  afterAll(async () => {
    await evening.end();
    rmSync(folder, { recursive: true, force: true });
  });

  it("is a link, a square code that a camera reads, a card, and one page", async () => {
    await comeTo(page, `/h/${household}/recipes/${recipe}/share`);
    const square = page.getByRole("img", { name: "Square code of the link to Two and one" });
    await square.waitFor();
    link = await page.getByLabel("Link with the whole recipe in it").inputValue();
    expect(await readSquare(square)).toBe(link);
    await evening.looks.over(page, "a recipe to be passed on");
    await picture(page, "share");
    const saved = page.waitForEvent("download");
    await page.getByRole("button", { name: "One page" }).click();
    await (await saved).saveAs(join(folder, "two-and-one.html"));
  });

  it("the page works from a disk with no network: it asks nothing of anyone and reckons any bottle", async () => {
    const browser = page.context().browser();
    if (browser === null) throw new Error("a page requires its browser, got none");
    const context = await browser.newContext({ offline: true, viewport: { width: 390, height: 844 } });
    const alone = await context.newPage();
    const asked: string[] = [];
    const said: string[] = [];
    alone.on("request", (request) => asked.push(request.url()));
    alone.on("console", (message) => said.push(message.text()));
    const file = pathToFileURL(join(folder, "two-and-one.html")).href;
    await alone.goto(file);
    const amounts = async (): Promise<number[]> => {
      const texts = await alone.locator(".amount > span:first-child").allTextContents();
      return texts.map((text) => Number.parseFloat(text));
    };
    const of700 = await amounts();
    await alone.getByLabel("Bottle, mL").fill("70");
    const of70 = await amounts();
    expect(of70).toHaveLength(3);
    for (const [n, ml] of of70.entries()) expect(ml * 10).toBeCloseTo(of700[n] ?? 0, -1);
    // 2 of 58.9 and 1 of 46 % vol with water to 46: what the house itself makes of 70 mL.
    const reckoned = await evening.api("reckonReduce", {
      body: {
        parts: [
          { parts: 2, strength: { basis: "abv20", value: 58.9 } },
          { parts: 1, strength: { basis: "abv20", value: 46 } },
        ],
        to: { basis: "abv20", value: 46 },
        fillMl: 70,
      },
    });
    const ml = [...(reckoned.parts ?? []).map((part) => part.ml), reckoned.waterMl];
    for (const [n, value] of of70.entries()) expect(Math.abs(value - (ml[n] ?? 0))).toBeLessThanOrEqual(0.5);
    await alone.getByLabel("Bottle, mL").fill("none");
    expect(await alone.getByRole("alert").textContent()).toBe("A bottle requires 1 to 100000 mL.");
    await alone.getByRole("button", { name: "1000" }).click();
    await evening.looks.over(alone, "the page from a disk");
    await picture(alone, "share-page");
    expect(asked.filter((url) => url !== file)).toEqual([]);
    expect(said).toEqual([]);
    await context.close();
  });

  it("a list is looked at row by row and written only when it is accepted", async () => {
    const list = join(folder, "bottles.csv");
    const rows = [
      "Maker;Name;Strength;Size;Left",
      "Saltreach;Tarn;58,9;0,7;60 %",
      "Saltreach;Holm;90;70;full",
      "Saltreach;Voe;92 proof;70;1/2",
    ];
    writeFileSync(list, `\uFEFF${rows.join("\r\n")}\r\n`);
    await comeTo(page, `/h/${household}/shelf/list`);
    await page.locator('input[type="file"]').setInputFiles(list);
    const found = (text: string) => page.locator(".list-found", { hasText: text });
    await found("2 good rows").waitFor();
    await page.getByText("Strength on line 3 requires", { exact: false }).waitFor();
    await evening.looks.over(page, "a list of a shelf");
    await picture(page, "shelf-list");
    const count = async (): Promise<number> =>
      (await evening.api("listVessels", { at: { household }, query: {} })).items.length;
    expect(await count()).toBe(0);
    await page.getByText("What each column is").click();
    await page.getByLabel("Strengths without a unit").selectOption("proof60F");
    await found("3 good rows").waitFor();
    await page.getByLabel("Strengths without a unit").selectOption("");
    await found("2 good rows").waitFor();
    await page.getByRole("button", { name: "Take in the 2 good rows" }).click();
    await expect.poll(count, POLL).toBe(2);
    // The page goes to the shelf by itself once it has been answered; it must not do so from the next page.
    await page.waitForURL(`**/h/${household}/shelf`);
    const saved = page.waitForEvent("download");
    await comeTo(page, `/h/${household}/shelf/list`);
    await page.getByRole("button", { name: "For a spreadsheet (CSV)" }).click();
    await (await saved).saveAs(join(folder, "out.csv"));
    expect(readFileSync(join(folder, "out.csv"), "utf8")).toMatch(/Saltreach,Tarn,,other,58\.9 %,,700,420,/u);
  });

  it("the card prints on its own size of paper, fonts inside", async () => {
    await comeTo(page, `/h/${household}/recipes/${recipe}/card`);
    await page.getByRole("article", { name: "Card: Two and one" }).waitFor();
    await evening.looks.over(page, "a recipe card");
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    // A6 in points: 105 by 148 mm is 297.6 by 419.5, rounded to whole pixels by the browser. One page, its letters inside.
    const sizes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/gu)].map(([, x, y]) => [
      Math.round(Number(x)),
      Math.round(Number(y)),
    ]);
    expect(sizes).toEqual([[298, 420]]);
    // Letters of variable faces are drawings in the file (Type 3): no face is asked of whoever opens it.
    const faces = [...pdf.matchAll(/\/Subtype \/(Type1|TrueType|Type0|Type3)\b/gu)].map(([, kind]) => kind);
    expect(new Set(faces)).toEqual(new Set(["Type3"]));
  });

  /** Whether all that stands on these papers of a fixed size is on them. */
  const whole = (of: string): Promise<boolean> =>
    page
      .locator(of)
      .evaluateAll(
        (papers) =>
          papers.length > 0 &&
          papers.every(
            (one) =>
              one.scrollHeight <= one.clientHeight &&
              one.scrollWidth <= one.clientWidth &&
              one.textContent !== "",
          ),
      );

  it("labels of three sizes, front and back, lose nothing of a long name; a camera reads the code on them", async () => {
    const { api } = evening;
    const at = { household };
    const { items } = await api("listVessels", { at, query: {} });
    const pours = items.slice(0, 2).map(({ id }) => ({
      from: { kind: "vessel" as const, vesselId: id },
      amount: { kind: "volume" as const, ml: 100 },
    }));
    const vessel = { kind: "new" as const, label: "Jar", capacityMl: 500 };
    const made = async (name: string): Promise<string> =>
      (await api("addBatch", { at, body: { name, recipeId: recipe, vessel, pours } })).id;
    const [short, long] = [await made("Two and one"), await made("Long evening ".repeat(9).trim())];
    for (const batch of [long, short]) {
      await comeTo(page, `/h/${household}/batches/${batch}/label`);
      for (const size of ["60 × 40 mm", "90 × 120 mm", "90 × 60 mm"]) {
        await page.getByRole("radio", { name: size }).check();
        await expect.poll(() => whole(".print-label"), POLL).toBe(true);
        await picture(page, `label-${batch === long ? "long" : "short"}-${size.replaceAll(/\D+/gu, "-")}`);
      }
    }
    await evening.looks.over(page, "a label");
    expect(await readSquare(page.getByRole("img", { name: "Square code: the whole recipe" }).first())).toBe(
      link,
    );
    // Four labels of 90 mm, two beside each other, on one sheet of A4, and of US Letter.
    for (const format of ["A4", "Letter"]) {
      const pdf = (await page.pdf({ format })).toString("latin1");
      expect([...pdf.matchAll(/\/MediaBox/gu)]).toHaveLength(1);
    }
  });

  it("a card of twelve lines with long rules is whole in both sizes", async () => {
    const rule =
      "55 % or stronger, only American oak or European oak, wheat >= 16 %, at least 5 of 10 stone fruit, not kind rye";
    const slots = Array.from({ length: 12 }, (_, n) => ({
      parts: n + 1,
      of: {
        kind: "open" as const,
        named: { maker: "Saltreach", name: `Skerry, the ${n + 1}th release`, abv: 50 },
      },
      rule,
    }));
    const many = await evening.api("addRecipe", { at: { household }, body: { name: "Twelve", slots } });
    await comeTo(page, `/h/${household}/recipes/${many.id}/card`);
    for (const size of ["3 × 5 in", "A6"]) {
      await page.getByRole("radio", { name: size }).check();
      await expect.poll(() => whole(".recipe-card"), POLL).toBe(true);
      await picture(page, `card-twelve-${size.slice(0, 1)}`);
    }
  });

  it("nothing was found wrong on these screens", () => {
    expect(evening.looks.take()).toEqual([]);
    expect(evening.troubles.take()).toEqual([]);
  });
});
