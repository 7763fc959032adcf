import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { goToStep, lockSheet, saved, takeSheet } from "./fixtures/sheet-steps.ts";
import { speakFor } from "./fixtures/speak-for.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

/** What a browser says of requests while there is no network. */
const WITHOUT_NETWORK = /ERR_INTERNET_DISCONNECTED/;
const POLL = { timeout: 30_000, interval: 50 };

describe("a note read as it is spoken", () => {
  let evening: Evening;
  let page: Page;
  let at = { household: "", flight: "", sheet: "" };
  let recipe = "";

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("Ana");
    const { api } = evening;
    const household = (await api("addHousehold", { body: { name: "The reading table" } })).id;
    const [vessels, whiskeys]: [string[], string[]] = [[], []];
    for (const [i, name] of ["Tarn", "Skerry"].entries()) {
      const strength = { basis: "abv20" as const, value: 43 + i };
      const intensities = { "smoke.smoke": 2 + 5 * i, "savoury.stale": i, "sweet.honey": 6 - i };
      const body = { maker: "Saltreach", name, strength, profile: { tastedAt: null, intensities } };
      const whiskey = await api("addWhiskey", { at: { household }, body });
      whiskeys.push(whiskey.id);
      vessels.push((await api("addBottle", { at: { household }, body: { whiskeyId: whiskey.id } })).id);
    }
    const slots = whiskeys.map((whiskeyId) => ({ parts: 1, of: { kind: "whiskey" as const, whiskeyId } }));
    recipe = (await api("addRecipe", { at: { household }, body: { name: "Half and half", slots } })).id;
    const batch = await api("addBatch", {
      at: { household },
      body: {
        name: "First half",
        recipeId: recipe,
        vessel: { kind: "new", label: "Flask", capacityMl: 500 },
        pours: vessels.map((vesselId) => ({
          from: { kind: "vessel" as const, vesselId },
          amount: { kind: "volume" as const, ml: 100 },
        })),
      },
    });
    const taster = (await api("addTaster", { at: { household }, body: { name: "Ana" } })).id;
    const { flight, pourerToken } = await api("addFlight", {
      at: { household },
      body: {
        name: "Two by the window",
        pouring: "someone else",
        pourer: "Wren",
        pourMl: 5,
        glasses: [vessels[0] ?? "", batch.vesselId].map((vesselId) => ({ vesselId })),
        tasterIds: [taster],
      },
    });
    await api("markPoured", { at: { household, flight: flight.id }, token: pourerToken ?? "" });
    at = { household, flight: flight.id, sheet: flight.sheets[0]?.sheetId ?? "" };
  }, 240_000);
  afterAll(() => evening.end(), 60_000);

  const chip = (name: RegExp) => page.getByRole("button", { name });
  const strengths = async (): Promise<readonly string[]> => {
    const token = await page.evaluate((id) => localStorage.getItem(`partsproof.token.sheet.${id}`), at.sheet);
    const sheet = await evening.api("getSheet", { at, token: token ?? "" });
    const first = sheet.glasses[0]?.code;
    return sheet.strengths
      .filter(({ code }) => code === first)
      .map(({ pass, section, attribute, strength }) => `${pass} ${section} ${attribute} ${strength}`);
  };
  const look = async (screen: string): Promise<void> => {
    await evening.looks.over(page, screen);
    for (const [width, height] of [
      [390, 844],
      [1280, 800],
    ] as const) {
      await page.setViewportSize({ width, height });
      for (const colorScheme of ["dark", "light"] as const) {
        await page.emulateMedia({ colorScheme });
        await picture(page, `notes-${screen.replaceAll(" ", "-")}-${colorScheme}`);
      }
    }
    await page.setViewportSize({ width: 390, height: 844 });
  };

  it("chips, each with its words; one put right, one removed; all kept over a reload, and on the sheet", {
    timeout: 120_000,
  }, async () => {
    await speakFor(page, ["a hint of bonfire and", "orange peel, maybe plum.", "On the finish an attic"]);
    await page.goto(`/h/${at.household}/flights/${at.flight}/sheets/${at.sheet}`);
    await takeSheet(page);
    await page.getByLabel("Nose", { exact: true }).fill("no iodine, brown butter, sweet");
    await chip(/^no medicinal 0 of 10, nose, not there: “.*iodine”$/).waitFor();
    await chip(/^basic taste, words only, nose, there: “sweet”$/).waitFor();

    await page.getByRole("button", { name: "Speak the palate" }).click();
    await page.getByRole("button", { name: "Listen", exact: true }).click();
    const bonfire = chip(/^smoke 2 of 10, palate, there: “.*bonfire”$/);
    await bonfire.waitFor();
    await chip(/^stone fruit perhaps \d of 10, palate, perhaps there: “plum”$/).waitFor();
    const attic = chip(/finish, there: “.*attic”$/);
    await attic.waitFor();
    await chip(/^citrus 2 of 10, palate, there: “orange peel”$/).focus();
    expect(await page.locator(".marked-words mark").innerText()).toBe("orange peel");

    await bonfire.click();
    await page.getByRole("group", { name: /^Put right: “.*bonfire”$/ }).waitFor();
    await page.getByRole("textbox", { name: "smoke, how strong", exact: true }).fill("7");
    await chip(/^smoke 7 of 10, palate/).waitFor();
    await look("a chip put right");
    await page.getByRole("button", { name: "Done" }).click();

    await attic.click();
    await page.getByLabel("What it is", { exact: true }).selectOption("savoury.stale");
    await page.getByLabel("Where", { exact: true }).selectOption("palate");
    await page.keyboard.press("Escape");
    const stale = chip(/^stale \d of 10, palate, there: “.*attic”$/);
    await stale.waitFor();
    await chip(/: “plum”$/).click();
    await page.getByRole("button", { name: "Remove stone fruit" }).click();
    await chip(/: “plum”$/).waitFor({ state: "detached" });

    await saved(page);
    const written = await strengths();
    expect(written).toContain("first nose smoke.medicinal 0");
    expect(written).toContain("first palate smoke.smoke 7");
    expect(written).toContain("first palate fruit.citrus 2");
    expect(written.join()).toMatch(/first palate savoury\.stale/);
    expect(written.join()).not.toMatch(/fruit\.stone|finish (wood|earth|savoury)|taste\.basic/);

    await page.reload();
    await chip(/^smoke 7 of 10, palate/).waitFor();
    await stale.waitFor();
    expect(await chip(/: “plum”$/).count()).toBe(0);
    // A correction holds while the text goes on, and ends with its words.
    const palate = page.getByLabel("Palate", { exact: true });
    await palate.press("Control+End");
    await palate.pressSequentially(", honey");
    await chip(/^honey finish 5 of 10/).waitFor();
    await chip(/^smoke 7 of 10, palate/).waitFor();
    await palate.fill("honey");
    await expect.poll(strengths, POLL).not.toContain("first palate smoke.smoke 7");
    await look("chips after a change");
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  });

  it("a chip put right teaches a word: the next glass is read by it, and nobody else before the reveal", {
    timeout: 120_000,
  }, async () => {
    await page.getByLabel("Palate", { exact: true }).fill("honey, an attic");
    await chip(/palate, there: “.*attic”$/).click();
    await page.getByLabel("What it is", { exact: true }).selectOption("savoury.stale");
    await page.getByRole("textbox", { name: "stale, how strong", exact: true }).fill("8");
    await look("a chip that can teach");
    await page.getByRole("button", { name: /^By “.*attic” I always mean stale$/ }).click();
    await chip(/^stale 8 of 10, palate, there: “.*attic”$/).waitFor();
    await page.getByRole("button", { name: /^Next: glass/ }).click();
    await page.getByLabel("Nose", { exact: true }).fill("loads of attic, bonfire, the jetty");
    await chip(/^stale [789] of 10, nose, there: “.*attic”$/).waitFor();
    await page.getByRole("button", { name: "Teach a word of your own" }).click();
    await page.getByLabel("By", { exact: true }).fill("the jetty");
    await page.getByLabel("I mean", { exact: true }).selectOption("smoke.medicinal");
    await look("a word of ones own");
    // Taught without a network it counts at once, and the house hears of it later.
    await page.context().setOffline(true);
    await page.getByRole("button", { name: "Teach it" }).click();
    await chip(/^medicinal 5 of 10, nose, there: “the jetty”$/).waitFor();
    await page.context().setOffline(false);
    // What the note itself explains is offered, and learned at a tap.
    await page.getByLabel("Palate", { exact: true }).fill("by pantry I mean nutmeg, loads of pantry");
    const learn = page.getByRole("button", { name: "Learn it: by “pantry” I mean warm spice", exact: true });
    await learn.waitFor();
    await look("a word that the note explains");
    await learn.click();
    await learn.waitFor({ state: "detached" });
    await chip(/^warm spice [789] of 10, palate, there: “.*pantry”$/).waitFor();
    await saved(page);
    const learned = [
      { phrase: "attic", attribute: "savoury.stale" },
      { phrase: "the jetty", attribute: "smoke.medicinal" },
      { phrase: "pantry", attribute: "spice.warm" },
    ];
    const token = await page.evaluate((id) => localStorage.getItem(`partsproof.token.sheet.${id}`), at.sheet);
    const words = async () => (await evening.api("getSheetWords", { at, token: token ?? "" })).items;
    await expect.poll(words, POLL).toEqual(learned);
    expect((await evening.api("listWords", { at })).items).toEqual([]);
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take().filter((line) => !WITHOUT_NETWORK.test(line))).toEqual([]);
  });

  it("what was put right is forgotten by the phone once the sheet is locked", {
    timeout: 60_000,
  }, async () => {
    const noted = () => page.evaluate((id) => localStorage.getItem(`partsproof.noting.${id}`), at.sheet);
    expect(await noted()).not.toBeNull();
    await goToStep(page, "Names");
    await lockSheet(page);
    await expect.poll(noted, POLL).toBeNull();
    expect(await page.evaluate((id) => localStorage.getItem(`partsproof.words.${id}`), at.sheet)).toBeNull();
    expect(evening.troubles.take()).toStrictEqual([]);
  });

  it("after the reveal the words are the household’s, and what was noted stands against what was predicted", {
    timeout: 120_000,
  }, async () => {
    await evening.api("revealFlight", { at, body: {} });
    await comeTo(page, `/h/${at.household}/household/words`);
    await page.getByText("“attic” stale").waitFor();
    await page.getByLabel("By", { exact: true }).fill("the jetty");
    await page.getByRole("button", { name: "Teach it" }).click();
    await page
      .getByRole("alert")
      .getByText(/means nothing else here/)
      .waitFor();
    expect(evening.troubles.takeAnswers(409)).toBe(1);
    await look("the words of the household");
    await page.getByRole("button", { name: "Forget “the jetty”" }).click();
    await page.getByText("“the jetty” forgotten").first().waitFor();
    await page.getByRole("button", { name: "Change “attic”" }).click();
    await page.getByLabel("By “attic” we mean").selectOption("wood.old");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.getByText("“attic” old wood").waitFor();

    await comeTo(page, `/h/${at.household}/recipes/${recipe}`);
    const plot = page.getByRole("figure").filter({ hasText: /^First half (has|is not told apart)/ });
    await plot.waitFor();
    await plot.getByText("As a table, and as files").click();
    const cells = await plot.getByRole("row").filter({ hasText: "smoke" }).first().innerText();
    expect(cells).toMatch(/4\.5 \(3\.1 to 5\.9\)/);
    await look("predicted and observed");
    await comeTo(page, `/h/${at.household}/findings/${at.flight}`);
    await page.getByRole("heading", { name: "What the glasses tasted of" }).waitFor();
    await look("what the glasses tasted of");
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  });
});
