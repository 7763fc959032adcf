import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { picture } from "./fixtures/picture.ts";
import { goToStep, lockSheet, saved, takeSheet } from "./fixtures/sheet-steps.ts";
import { speakFor } from "./fixtures/speak-for.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const POLL = { timeout: 30_000, interval: 50 };

describe("a note read as it is spoken", () => {
  let evening: Evening;
  let page: Page;
  let at = { household: "", flight: "", sheet: "" };

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("Ana");
    const { api } = evening;
    const household = (await api("addHousehold", { body: { name: "The reading table" } })).id;
    const vessels: string[] = [];
    for (const [i, name] of ["Tarn", "Skerry"].entries()) {
      const strength = { basis: "abv20" as const, value: 43 + i };
      const body = { maker: "Saltreach", name, strength };
      const whiskey = await api("addWhiskey", { at: { household }, body });
      vessels.push((await api("addBottle", { at: { household }, body: { whiskeyId: whiskey.id } })).id);
    }
    const taster = (await api("addTaster", { at: { household }, body: { name: "Ana" } })).id;
    const { flight, pourerToken } = await api("addFlight", {
      at: { household },
      body: {
        name: "Two by the window",
        pouring: "someone else",
        pourer: "Wren",
        pourMl: 5,
        glasses: vessels.map((vesselId) => ({ vesselId })),
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

  it("what was put right is forgotten by the phone once the sheet is locked", {
    timeout: 60_000,
  }, async () => {
    const noted = () => page.evaluate((id) => localStorage.getItem(`partsproof.noting.${id}`), at.sheet);
    expect(await noted()).not.toBeNull();
    await goToStep(page, "Names");
    await lockSheet(page);
    await expect.poll(noted, POLL).toBeNull();
    expect(evening.troubles.take()).toStrictEqual([]);
  });
});
