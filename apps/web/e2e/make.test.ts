import type { AnswerOf, Transfer } from "@partsproof/house/protocol";
import type { Page } from "playwright-core";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../../tools/place.ts";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const CASE_MS = 120_000;

describe("batches and what comes of them, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let at: { readonly household: string };
  let home = "";
  const bottles: AnswerOf<"addBottle">[] = [];

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("blender");
    const { id } = await evening.api("addHousehold", { body: { name: "Lamp Street" } });
    at = { household: id };
    home = `/h/${id}`;
    for (const [maker, name, value, honey] of [
      ["Bellharrow", "Full Kettle", 62.4, 7],
      ["Quernmouth", "Harbour Wall", 50, 2],
      ["Ninepenny Mill", "Sweet Sack", 58, 5],
    ] as const) {
      const whiskey = await evening.api("addWhiskey", {
        at,
        body: {
          maker,
          name,
          strength: { basis: "abv20", value },
          priceMinor: 5000,
          ageYears: 8,
          profile: { tastedAt: null, intensities: { "sweet.honey": honey, "wood.toasted": 6 - honey / 2 } },
        },
      });
      bottles.push(await evening.api("addBottle", { at, body: { whiskeyId: whiskey.id } }));
    }
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
    const name = screen.replaceAll(/[^a-z0-9]+/g, "-");
    const before = page.viewportSize();
    for (const width of [390, 1280])
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize({ width, height: 844 });
        await page.emulateMedia({ colorScheme });
        await picture(page, `make-${name}-${colorScheme}`);
      }
    await page.emulateMedia({ colorScheme: "light" });
    if (before !== null) await page.setViewportSize(before);
  };

  it("a batch: its label on paper, and the family tree it stands in", { timeout: CASE_MS }, async () => {
    const slot = (i: number, parts: number) => ({
      parts,
      of: { kind: "whiskey" as const, whiskeyId: bottles[i]?.whiskeyId ?? "" },
    });
    const body = {
      name: "Lamp blend",
      slots: [slot(0, 2), slot(1, 1)],
      oak: "one stick, medium toast, 9 days",
    };
    const recipe = await evening.api("addRecipe", { at, body });
    await evening.api("addRecipeVersion", {
      at: { ...at, recipe: recipe.id },
      body: { ...recipe.latest, version: 1, slots: [slot(0, 1), slot(1, 1), slot(2, 1)], restDays: 21 },
    });
    const pour = (i: number, ml: number) => ({
      from: { kind: "vessel" as const, vesselId: bottles[i]?.id ?? "" },
      amount: { kind: "volume" as const, ml },
    });
    const batch = await evening.api("addBatch", {
      at,
      body: {
        name: "Lamp blend, first",
        recipeId: recipe.id,
        recipeNumber: 1,
        vessel: { kind: "new", label: "Blending bottle 1", capacityMl: 500 },
        pours: [pour(0, 200), pour(1, 100)],
      },
    });
    await comeTo(page, `${home}/batches/make?recipe=${recipe.id}`);
    await page.getByText("What each whiskey allows").waitFor();
    await look("how much to make");
    // Version 2 needs three alike; 500 mL of the first bottle are left, and the vessel is the limit.
    await page.getByRole("link", { name: "Measure it out" }).click();
    const first = page.getByLabel("Really poured of Bellharrow Full Kettle");
    await first.waitFor();
    await first.fill("300");
    await page.getByRole("button", { name: "Reckon the rest again" }).click();
    await expect
      .poll(() => page.getByLabel("Really poured of Quernmouth Harbour Wall").inputValue())
      .not.toBe("230.0");
    await first.fill("");
    await comeTo(page, `${home}/batches/${batch.id}`);
    await page.getByLabel(/^Close it, turn it over/).check();
    await page.getByRole("button", { name: "Add water over days" }).click();
    await page.getByLabel("Down to").fill("46%");
    await page.getByRole("button", { name: "Plan it" }).click();
    await page.getByText(/3 steps, 2 days apart: 0 done/).waitFor();
    await page.getByRole("button", { name: "The next step is poured" }).click();
    await page.getByText(/3 steps, 2 days apart: 1 done/).waitFor();
    await look("batch at the table");
    await comeTo(page, `${home}/batches/${batch.id}/label`);
    const label = page.getByLabel("Label: Lamp blend, first").first();
    await label.waitFor();
    const text = (await label.innerText()).replaceAll("\u00a0", " ");
    // 200 mL of 62.4 % vol with 100 mL of 50: 58.3, and labels are good to 0.3 (27 CFR 5.65).
    expect(text).toMatch(/58\.3 ± 0\.3 % vol/);
    expect(text).toMatch(/Home use only, not for sale/);
    expect(text).toMatch(/Oak: one stick, medium toast, 9 days/);
    expect(await label.evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThanOrEqual(1);
    await look("label");
    const paper = await page.pdf({ format: "A4" });
    expect(paper.subarray(0, 5).toString()).toBe("%PDF-");
    // Two labels fit one sheet.
    expect(paper.toString("latin1").match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    if (process.env["PARTSPROOF_PICTURES"] === "1")
      writeFileSync(join(root, ".screens", "e2e", "label.pdf"), paper);
    await comeTo(page, `${home}/recipes/${recipe.id}/tree`);
    await page.getByRole("heading", { level: 1, name: "Family tree of Lamp blend" }).waitFor();
    await page.getByText(/Ninepenny Mill Sweet Sack comes in, with 33.%/).waitFor();
    await page.getByRole("link", { name: "Lamp blend, first" }).waitFor();
    await look("family tree");
  });

  it("a topped-up bottle: what it was over time, and what to add next", { timeout: CASE_MS }, async () => {
    const jug = await evening.api("addVessel", {
      at,
      body: { kind: "jug", label: "House jug", capacityMl: 1000 },
    });
    const vessel = (vesselId: string) => ({ kind: "vessel" as const, vesselId });
    const move = (from: Transfer["from"], to: Transfer["to"], ml: number) =>
      evening.api("addTransfer", { at, body: { from, to, amount: { kind: "volume", ml } } });
    const [first, second] = bottles.map(({ id }) => vessel(id));
    if (first === undefined || second === undefined) throw new Error("bottles requires two");
    await move(first, vessel(jug.id), 300);
    for (let i = 0; i < 4; i += 1) await move(vessel(jug.id), { kind: "outside", name: "glass" }, 40);
    await move(second, vessel(jug.id), 200);
    await move({ kind: "outside", name: "tap" }, vessel(jug.id), 20);
    await comeTo(page, `${home}/shelf/vessels/${jug.id}`);
    await page.getByRole("link", { name: "how it was kept up" }).click();
    await page.getByText(/left of the first that went in|of the first that went in is still there/).waitFor();
    await page.getByLabel("Keep it near").selectOption({ label: "Bellharrow Full Kettle" });
    await page.getByRole("button", { name: "What comes closest" }).click();
    await page.getByText(/^Now it is \d\.\d off/).waitFor();
    // 140 mL of 62.4 % vol, 200 of 50 and 20 of water are left: what the house holds is what the page shows.
    const { contents } = await evening.api("getVessel", { at: { ...at, vessel: jug.id } });
    await expect
      .poll(() => page.locator(".number-hero .number-digits").first().innerText())
      .toBe(String(Math.round(contents.volumeMl)));
    await look("kept up");
  });
});
