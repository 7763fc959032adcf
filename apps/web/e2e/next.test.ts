import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const CASE_MS = 90_000;

describe("what to try next, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let home = "";
  let recipe = "";

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("blender");
    const { id: household } = await evening.api("loadDemo", {});
    home = `/h/${household}`;
    const recipes = (await evening.api("listRecipes", { at: { household } })).items;
    recipe = recipes.find(({ name }) => name.includes("Wick and Rye"))?.id ?? "";
  }, 240_000);
  afterAll(() => evening.end(), 60_000);
  /** A screen in the light on a phone and in the dark on a laptop, and the phone again. */
  const lookTwice = async (screen: string, name: string): Promise<void> => {
    for (const [scheme, width] of [
      ["light", 390],
      ["dark", 1280],
    ] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      await page.setViewportSize({ width, height: 844 });
      await evening.looks.over(page, screen);
      await picture(page, `${name}-${scheme}`);
    }
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 390, height: 844 });
  };

  it("proposes glasses with reasons, maps three whiskeys, answers what if, is overruled and plans a flight", {
    timeout: CASE_MS,
  }, async () => {
    await page.goto(`${home}/recipes/${recipe}/next`);
    await page.getByText("Anything on the shelf").click();
    const glasses = page.locator(".next-list > li");
    await glasses.first().waitFor();
    await page.getByText(/^From before, to hold the others against/).waitFor();
    await page
      .getByText(/^To find out whether/)
      .first()
      .waitFor();
    await page
      .getByText(/nother flight is/)
      .first()
      .waitFor();
    await page.getByText(/^This rests on [1-9]\d* rankings and \d+ marks?\.$/).waitFor();

    const map = page.getByRole("application", { name: /^Map of mixes/ });
    const before = await map.getAttribute("aria-label");
    await map.focus();
    await page.keyboard.press("ArrowDown");
    await page.getByText(/At one tasting it would be put first/).waitFor();
    expect(await map.getAttribute("aria-label")).not.toBe(before);
    await page.getByText("The map as a table").click();
    await page.getByRole("columnheader", { name: "Better, of 100" }).waitFor();
    await page.getByText("The map as a table").click();
    await page.getByText(/^How it would be proved wrong/).waitFor();
    await evening.looks.over(page, "what to try next");
    for (const [scheme, width] of [
      ["light", 390],
      ["dark", 390],
      ["light", 1280],
      ["dark", 1280],
    ] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      await page.setViewportSize({ width, height: 844 });
      await picture(page, `next-${scheme}`);
    }
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 390, height: 844 });

    const last = await glasses.count();
    await page.getByRole("button", { name: `Change the parts of glass ${last}` }).click();
    const edit = page.getByRole("group", { name: `Parts of glass ${last}` });
    await edit.getByRole("button", { name: /^More/ }).first().click();
    await page.getByText(/^Yours: better than the glass from before with a chance of/).waitFor();
    await page.getByRole("button", { name: "Leave glass 2 out" }).click();
    await page.getByRole("button", { name: "Pour glass 2 after all" }).waitFor();

    await page.getByRole("button", { name: "Plan this flight" }).click();
    await page.getByRole("heading", { level: 2, name: "The flight they are for" }).waitFor();
    const planned = page.locator(".for-flight > li");
    expect(await planned.count()).toBe(last - 1);
    await page.getByText("Your own.", { exact: true }).waitFor();
    await page
      .getByText(/^From before, to hold the others against/)
      .first()
      .waitFor();
    await lookTwice("mixes planned for a flight", "next-planned");
    await page.getByRole("button", { name: "They are poured" }).click();
    await page.getByRole("link", { name: "Set this flight" }).click();
    await page.getByRole("heading", { level: 1, name: "Set a flight" }).waitFor();
    await page
      .getByText(/^Choose at least two glasses|glasses for each taster/)
      .first()
      .waitFor();
    expect(evening.looks.take()).toStrictEqual([]);
  });

  it("asks for no more than is left, and says of what too little is", { timeout: CASE_MS }, async () => {
    const household = home.slice("/h/".length);
    const history = await evening.api("getTried", { at: { household, recipe } });
    for (const { id, vesselId, freeMl } of history.vessels.filter((one) => one.id.startsWith("whiskey:")))
      if (history.asked.mixes?.includes(id.slice("whiskey:".length)) === true)
        await evening.api("addTransfer", {
          at: { household },
          body: {
            from: { kind: "vessel", vesselId },
            to: { kind: "outside", name: "drain" },
            amount: { kind: "volume", ml: freeMl - 25 },
          },
        });
    await comeTo(page, `${home}/recipes/${recipe}/next`);
    await page.getByText(/^Too little is left of .+ for some mixes: none of them stands in/).waitFor();
    await page
      .getByText(/may be mixed, 25 mL left$/)
      .first()
      .waitFor({ state: "attached" });
    await evening.looks.over(page, "what to try next, little left");
    await picture(page, "next-little-left");

    // A glass of one's own that asks for more than is left is kept as it is, and it is said of what and how much.
    const lacking = page.locator(".next-lack");
    expect(await lacking.innerText()).toBe("");
    const last = await page.locator(".next-list > li").count();
    await page.getByRole("button", { name: `Change the parts of glass ${last}` }).click();
    const edit = page.getByRole("group", { name: `Parts of glass ${last}` });
    const more = edit.getByRole("button", { name: /^More/ }).first();
    for (let n = 0; n < 12; n += 1) await more.click();
    await page
      .getByText(/^With it the flight asks for more than is left: [\d.]+ mL of .+ lacking\.$/)
      .waitFor();
    await lacking
      .getByText(
        /^Too little is left of .+: they ask for [\d.]+ mL, 25\.0 mL are left, [\d.]+ mL are lacking\.$/,
      )
      .waitFor();
    await lookTwice("what to try next, own glass beyond the shelf", "next-lacking");
    await page.getByRole("button", { name: "Plan this flight" }).click();
    await page.getByRole("heading", { level: 2, name: "The flight they are for" }).waitFor();
    await page
      .getByText(/^The shelf is [\d.]+ mL short of it\.$/)
      .first()
      .waitFor();
    expect(await page.getByRole("button", { name: "They are poured" }).isEnabled()).toBe(false);
    await evening.looks.over(page, "mixes that the shelf is short of");
    await picture(page, "next-planned-short");
    expect(evening.looks.take()).toStrictEqual([]);
  });

  it("two bottles of one whiskey: what a glass takes stays in its own, and a bottle with too little gives way", {
    timeout: CASE_MS,
  }, async () => {
    const at = { household: home.slice("/h/".length) };
    const made = await evening.api("addWhiskey", {
      at,
      body: {
        maker: "Saltreach",
        name: "Twin Casks",
        strength: { basis: "abv20", value: 46 },
        bottleMl: 700,
      },
    });
    const [first, second] = [
      await evening.api("addBottle", { at, body: { whiskeyId: made.id, label: "Twin Casks, first" } }),
      await evening.api("addBottle", { at, body: { whiskeyId: made.id, label: "Twin Casks, second" } }),
    ];
    const drain = (vesselId: string, ml: number) =>
      evening.api("addTransfer", {
        at,
        body: {
          from: { kind: "vessel", vesselId },
          to: { kind: "outside", name: "drain" },
          amount: { kind: "volume", ml },
        },
      });
    await drain(first.id, 650);
    await drain(second.id, 655);
    const set = await evening.api("addTrialSet", {
      at,
      body: {
        name: "Twins",
        plan: "own",
        parts: [{ of: { kind: "whiskey", whiskeyId: made.id } }],
        mixes: [[1]],
        volumeMl: 60,
        flight: {
          question: "like_best",
          glasses: [
            { of: { vesselId: first.id }, kind: "anchor", why: "" },
            { of: { trial: 1 }, kind: "new", why: "" },
          ],
        },
      },
    });
    await comeTo(page, `${home}/trials/${set.id}`);
    await page.getByText("35 mL out of Twin Casks, first; 25 mL out of Twin Casks, second").waitFor();
    await page.getByText("15 mL more stay in a bottle for a glass of the flight").waitFor();
    await page.getByText("15 mL of it stay in its bottle while the mixes are poured.").waitFor();
    await evening.looks.over(page, "mixes of two bottles");
    await picture(page, "next-two-bottles");
    await page.setViewportSize({ width: 1280, height: 844 });
    await picture(page, "next-two-bottles");
    await page.setViewportSize({ width: 390, height: 844 });
    await drain(first.id, 46);
    await page.reload();
    await page.getByText("In the place of Twin Casks, first, which holds too little by now.").waitFor();
    await page.getByText("The shelf is 26 mL short of it.").waitFor();
    await evening.looks.over(page, "a bottle that gave way");
    await picture(page, "next-gave-way");
    expect(evening.looks.take()).toStrictEqual([]);
  });

  it("says what a whiskey tastes of to you, learned, and what to taste next", {
    timeout: CASE_MS,
  }, async () => {
    await comeTo(page, `${home}/shelf/next-note`);
    await page.getByRole("heading", { level: 2, name: /^To learn most, taste / }).waitFor();
    expect(await page.locator(".next-notes > li").count()).toBe(5);
    await page.getByRole("link", { name: "Set up a flight of these 5" }).waitFor();
    const whiskeys = (await evening.api("listWhiskeys", { at: { household: home.slice(3) } })).items;
    const hearths = whiskeys.find(({ name }) => name === "Three Hearths")?.id ?? "";
    for (const [scheme, width] of [
      ["light", 390],
      ["dark", 390],
      ["light", 1280],
      ["dark", 1280],
    ] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      await page.setViewportSize({ width, height: 844 });
      await picture(page, `next-note-${scheme}`);
    }
    await evening.looks.over(page, "what to taste next");
    await comeTo(page, `${home}/findings/whiskeys/${hearths}`);
    await page
      .getByText(/^Bellharrow Three Hearths tastes to you most of/)
      .first()
      .waitFor();
    await evening.looks.over(page, "a whiskey as it was learned");
    for (const [scheme, width] of [
      ["dark", 1280],
      ["light", 390],
    ] as const) {
      await page.emulateMedia({ colorScheme: scheme });
      await page.setViewportSize({ width, height: 844 });
      await picture(page, `learned-${scheme}`);
    }
    expect(evening.looks.take()).toStrictEqual([]);
  });
});
