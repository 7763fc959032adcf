import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const POLL = { timeout: 45_000, interval: 150 };
const CASE_MS = 300_000;
const PHONE = { width: 390, height: 844 };
const LAPTOP = { width: 1280, height: 800 };
const TARGET = "Lamplighter's Rest";

describe("what comes closest, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let home = "";
  let target = "";

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("blender");
    const { id } = await evening.api("loadDemo", {});
    home = `/h/${id}`;
    const { items } = await evening.api("listWhiskeys", { at: { household: id }, query: { q: TARGET } });
    target = items[0]?.id ?? "";
  }, 240_000);
  afterAll(() => evening.end(), 60_000);
  const nothingWrong = (): void => {
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  };
  afterEach(nothingWrong);

  const look = async (screen: string): Promise<void> => {
    await evening.looks.over(page, screen);
    for (const size of [PHONE, LAPTOP]) {
      await page.setViewportSize(size);
      await picture(page, screen.replaceAll(/[^a-z0-9]+/g, "-"));
    }
    await page.setViewportSize(PHONE);
  };
  const best = () => page.locator(".closest-best .found-first");
  const distance = async (): Promise<number> =>
    Number(await best().locator(".number-hero .number-digits").innerText());
  const proven = async (): Promise<void> => {
    await page.locator('.closest-best[aria-busy="false"][data-state="done"]').waitFor();
  };
  /** The rules, by a part of their sentence. */
  const rule = (name: string | RegExp) => page.locator(".rules").getByRole("checkbox", { name });

  it("a gone release is sought: the closest, proven, without the release itself", {
    timeout: CASE_MS,
  }, async () => {
    await page.goto(`${home}/recipes`);
    await page.getByRole("link", { name: "What comes closest" }).click();
    await page.getByText("Say what you are after, and what comes closest shows here.").first().waitFor();
    await look("closest, nothing asked");
    await page.getByLabel("Something like").selectOption(target);
    await proven();
    await page.locator(".closest-words", { hasText: "Proven: nothing closer keeps your rules." }).waitFor();
    expect(await best().innerText()).not.toContain(TARGET);
    expect(await distance()).toBeGreaterThan(0);
    await page.getByRole("heading", { name: "The next closest" }).waitFor();
    // What is shown is what the house's own search, on the server, says of the same question.
    const answer = await evening.api("searchShelf", {
      at: { household: home.slice(3) },
      body: { like: target, rules: { maxBottles: 4, maxParts: 12 } },
    });
    expect(answer.provenOptimal).toBe(true);
    expect(answer.recipes[0]?.distance.toFixed(2)).toBe((await distance()).toFixed(2));
    await look("closest, a gone release");
  });

  it("without its rule the release itself is the closest, and nothing off", {
    timeout: CASE_MS,
  }, async () => {
    await rule(/^Not from/).uncheck();
    await expect.poll(distance, POLL).toBe(0);
    await rule(/^Not from/).check();
    await expect.poll(distance, POLL).toBeGreaterThan(0);
  });

  it("rules stand and fall as sentences; each that stands can only cost", { timeout: CASE_MS }, async () => {
    await proven();
    const free = await distance();
    await rule("Only American oak").check();
    await rule(/^At least 10 years/).check();
    await page.getByLabel("Youngest", { exact: true }).fill("7");
    await rule(/^At least 7 years/).waitFor();
    await proven();
    expect(await distance()).toBeGreaterThanOrEqual(free);
    await page.getByLabel("Youngest", { exact: true }).fill("old");
    await page.locator(".closest-words", { hasText: "Waiting for a rule that can be read." }).waitFor();
    await page.getByText('youngest age requires 0 to 120 years, got "old"').waitFor();
    await page.getByLabel("Youngest", { exact: true }).fill("7");
    await proven();
    await page.getByRole("button", { name: "What does each rule cost?" }).click();
    await page.locator(".wonder-answer h3").waitFor();
    await look("closest, the price of rules");
    // The question stands: it is asked again of a search that changes under it.
    await page.getByLabel("Youngest", { exact: true }).fill("8");
    await page.locator(".wonder-answer", { hasText: "at least 8 years" }).waitFor();
    await page.getByLabel("Youngest", { exact: true }).fill("7");
    await page.locator(".wonder-answer", { hasText: "at least 7 years" }).waitFor();
    await page.getByRole("button", { name: "With fewer bottles" }).click();
    await page.locator(".wonder-answer .traded li").first().waitFor();
    await page.getByRole("button", { name: "What to buy, what is never needed" }).click();
    await page.locator(".wonder-answer h3", { hasText: /closer|would help/ }).waitFor();
    await look("closest, what to buy");
  });

  it("impossible: says which rule, and the nearest that breaks least", { timeout: CASE_MS }, async () => {
    await page.getByLabel("Youngest", { exact: true }).fill("60");
    await page.locator(".closest-words", { hasText: "No recipe keeps all your rules: proven." }).waitFor();
    await page.getByRole("heading", { name: "One rule can’t be kept" }).waitFor();
    await page.getByText(/^The nearest that breaks least/).waitFor();
    expect(await page.locator(".impossible-rules").innerText()).toContain("at least 60 years");
    await look("closest, impossible");
    await page.getByRole("button", { name: "Drop this rule: at least 60 years" }).click();
    await proven();
    await rule("Only American oak").uncheck();
    await proven();
  });

  it("less of this and more of that, by taps, by keys and by typing; a weight moves the answer", {
    timeout: CASE_MS,
  }, async () => {
    const before = await distance();
    await page.getByText("Like it, but less of this and more of that").click();
    for (let tap = 0; tap < 4; tap++) await page.getByRole("button", { name: "More: honey" }).click();
    await page.getByRole("slider", { name: "sharp spice, 0 to 10" }).press("ArrowLeft");
    await page.getByRole("textbox", { name: "smoke", exact: true }).fill("2,5");
    await expect
      .poll(() => page.getByRole("textbox", { name: "smoke", exact: true }).inputValue(), POLL)
      .toBe("2,5");
    await page.getByRole("textbox", { name: "smoke", exact: true }).fill("25");
    await page.getByText('smoke requires a number from 0 to 10, got "25"').waitFor();
    await page.getByRole("textbox", { name: "smoke", exact: true }).fill("2.5");
    await expect.poll(distance, POLL).not.toBe(before);
    await look("closest, like it but");
    await page.getByRole("button", { name: "Back to how it is known" }).click();
    await expect.poll(distance, POLL).toBe(before);
    // The dots are where the numbers are.
    const honey = page.getByRole("group", { name: "honey", exact: true });
    expect(await honey.getByRole("slider").inputValue()).toBe(await honey.getByRole("textbox").inputValue());
    await page.getByText("How much each counts").click();
    const weight = page.getByRole("slider", { name: "Weight of weight, 0 to 3" });
    await weight.focus();
    for (let press = 0; press < 15; press++) await weight.press("ArrowRight");
    await proven();
    await expect.poll(distance, POLL).not.toBe(before);
    await look("closest, weights");
  });

  it("two compared, then opened as a recipe with its parts and target filled in", {
    timeout: CASE_MS,
  }, async () => {
    await page.getByRole("button", { name: /^Compare: number 2/ }).click();
    await page.locator(".plot-key", { hasText: "the one beside it" }).waitFor();
    await page.getByText("The same as a table").click();
    await look("closest, two compared");
    const amounts = await best().locator(".column-amount").allInnerTexts();
    await best().getByRole("link", { name: "Open as a recipe" }).click();
    await page.getByRole("heading", { level: 1, name: "New recipe" }).waitFor();
    const parts = page.getByRole("spinbutton", { name: /^Parts/ });
    await expect.poll(() => parts.count(), POLL).toBe(amounts.length);
    const filled = await Promise.all((await parts.all()).map((one) => one.inputValue()));
    expect(filled).toEqual(amounts);
    await page.getByRole("button", { name: "Save the recipe" }).click();
    await page.getByRole("heading", { level: 1, name: `Towards ${TARGET}` }).waitFor();
  });

  it("a profile: what nobody has said is not zero; a tick says zero, the dot says more", {
    timeout: CASE_MS,
  }, async () => {
    await comeTo(page, `${home}/shelf/whiskeys/${target}`);
    await page.getByRole("heading", { name: "What it tastes of", exact: true }).waitFor();
    await look("whiskey, its profile");
    await page.getByRole("button", { name: "Change what it tastes of" }).click();
    await page.locator(".taste-family > summary", { hasText: "earth" }).click();
    await page.getByRole("checkbox", { name: "No earth at all" }).check();
    await page.getByRole("slider", { name: "leather and leaf, 0 to 10" }).press("ArrowRight");
    await look("whiskey, its profile changed");
    await page.getByRole("button", { name: "Save what it tastes of" }).click();
    await page.getByRole("button", { name: "Change what it tastes of" }).waitFor();
    const kept = await evening.api("getWhiskey", { at: { household: home.slice(3), whiskey: target } });
    expect(kept.profile?.intensities["earth.earth"]).toBe(0);
    expect(kept.profile?.intensities["earth.leather-and-leaf"]).toBe(5.5);
    expect(kept.profile?.intensities["savoury.stale"]).toBeUndefined();
    expect(kept.profile?.tastedAt).toEqual({ basis: "abv20", value: 40 });
  });
});
