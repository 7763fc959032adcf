import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { goToStep, lockSheet, rankingShown, saved, takeSheet } from "./fixtures/sheet-steps.ts";
import { speakFor } from "./fixtures/speak-for.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";
import { storedPages } from "./fixtures/stored-pages.ts";

const POLL = { timeout: 30_000, interval: 100 };
const ACT_MS = 120_000;
/** No answer while the network is off, which the browser writes to its console. */
const WITHOUT_NETWORK = /ERR_INTERNET_DISCONNECTED|Failed to load resource|no answer/;

interface Made {
  readonly flight: string;
  readonly hostToken: string;
  readonly pourerToken: string;
  readonly sheets: readonly { readonly sheetId: string; readonly taster: string }[];
}

describe("the phone at the table", () => {
  let evening: Evening;
  let host: Page;
  let household = "";
  const vessels: string[] = [];
  const whiskeys: string[] = [];
  const tasters: string[] = [];

  beforeAll(async () => {
    evening = await startEvening();
    host = await evening.phone("host", { keepsApp: true });
    const { api } = evening;
    household = (await api("addHousehold", { body: { name: "The harbour table" } })).id;
    const at = { household };
    for (const [i, name] of ["Tarn", "Skerry", "Ember"].entries()) {
      const strength = { basis: "abv20" as const, value: 43 + i };
      const whiskey = await api("addWhiskey", { at, body: { maker: "Saltreach", name, strength } });
      whiskeys.push(whiskey.id);
      vessels.push((await api("addBottle", { at, body: { whiskeyId: whiskey.id } })).id);
    }
    for (const name of ["Ana", "Bo", "Cy", "Di"])
      tasters.push((await api("addTaster", { at, body: { name } })).id);
  }, 240_000);
  afterAll(() => evening.end(), 60_000);

  const nothingWrong = (): void => {
    expect(evening.looks.take()).toStrictEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  };
  const look = async (page: Page, screen: string): Promise<void> => {
    await evening.looks.over(page, screen);
    await picture(page, `phone-${screen.replaceAll(" ", "-")}`);
  };
  type Draft = NonNullable<Parameters<typeof evening.api<"addFlight">>[1]>["body"];
  /** A poured flight whose host is the host's phone. */
  const pour = async (name: string, glasses: number, more: Partial<Draft>, of: number): Promise<Made> => {
    const { flight, hostToken, pourerToken } = await evening.api("addFlight", {
      at: { household },
      body: {
        name,
        pouring: "someone else",
        pourer: "Wren",
        pourMl: 5,
        glasses: vessels.slice(0, glasses).map((vesselId) => ({ vesselId })),
        tasterIds: tasters.slice(0, of),
        ...more,
      },
    });
    await evening.api("markPoured", { at: { household, flight: flight.id }, token: pourerToken ?? "" });
    if (host.url() === "about:blank") await host.goto("/about");
    await host.evaluate(([id, token]) => localStorage.setItem(`partsproof.token.host.${id}`, token), [
      flight.id,
      hostToken,
    ] as const);
    return { flight: flight.id, hostToken, pourerToken: pourerToken ?? "", sheets: flight.sheets };
  };
  const sheetOf = ({ flight, sheets }: Made, which: number): string =>
    `/h/${household}/flights/${flight}/sheets/${sheets[which]?.sheetId ?? ""}`;
  const readSheet = async (page: Page, made: Made, which: number) => {
    const sheet = made.sheets[which]?.sheetId ?? "";
    const token = await page.evaluate((id) => localStorage.getItem(`partsproof.token.sheet.${id}`), sheet);
    return evening.api("getSheet", { at: { household, flight: made.flight, sheet }, token: token ?? "" });
  };

  it("words by taps, intensities by keys, a spoken note, a rest that runs on over a reload", {
    timeout: ACT_MS,
  }, async () => {
    const made = await pour("Three by the window", 3, {}, 2);
    const ana = await evening.phone("Ana", { keepsApp: true });
    await speakFor(ana, ["wax and", "honey"]);
    await ana.goto(sheetOf(made, 0));
    await takeSheet(ana);
    await ana.getByRole("heading", { level: 2, name: /^First pass/ }).waitFor();
    await ana.getByRole("button", { name: "Words for the nose" }).click();
    const words = ana.getByRole("group", { name: "Words for the nose" });
    await words.getByRole("button", { name: "sweet" }).click();
    await words.getByRole("button", { name: "toffee", exact: true }).click();
    await words.getByRole("button", { name: "vanilla", exact: true }).click();
    expect(await ana.getByLabel("Nose", { exact: true }).inputValue()).toBe("toffee, vanilla");

    await ana.getByRole("button", { name: "Speak the palate" }).click();
    await ana.getByRole("dialog", { name: "Speak your notes?" }).getByText("send what they hear").waitFor();
    await ana.getByRole("button", { name: "Listen", exact: true }).click();
    await expect
      .poll(() => ana.getByLabel("Palate", { exact: true }).inputValue(), POLL)
      .toBe("wax and honey");
    await ana.getByRole("button", { name: /Stop listening/ }).click();
    await ana.getByRole("button", { name: "Speak the palate" }).waitFor();

    await ana.getByRole("button", { name: "How strong the palate is" }).click();
    const smoke = ana.getByRole("slider", { name: /^smoke/ });
    expect(await smoke.getAttribute("aria-valuetext")).toBe("not said");
    await smoke.press("ArrowRight");
    await ana.getByRole("button", { name: "Less: burn, palate" }).click();
    await ana
      .getByRole("group", { name: /^warm spice/ })
      .locator(".strip-rail")
      .click();
    await look(ana, "sheet, words and strips");
    await ana.getByRole("button", { name: /^Take it back.*burn/ }).click();
    await saved(ana);
    const written = await readSheet(ana, made, 0);
    expect(written.notes[0]?.first).toMatchObject({ nose: "toffee, vanilla", palate: "wax and honey" });
    expect(written.typedBy).toBeNull();
    const ofPalate = written.strengths.filter(({ section }) => section === "palate");
    // Set by hand, and read in the words: wax and honey. The burn that was taken back is not there.
    expect(ofPalate.map(({ attribute, strength }) => `${attribute} ${strength}`)).toEqual([
      "sweet.honey 5",
      "spice.warm 5",
      "smoke.smoke 6",
      "savoury.fat 5",
    ]);

    await ana.getByLabel("Rest before each glass").selectOption("2");
    await ana.getByRole("button", { name: /^Next: glass/ }).click();
    await ana.getByRole("timer").waitFor();
    await ana.reload();
    await expect.poll(() => ana.getByRole("timer").innerText(), POLL).toMatch(/^1:\d\d$/);
    await ana.getByRole("button", { name: "Go on now" }).click();
    await ana.getByRole("timer").waitFor({ state: "detached" });
    await goToStep(ana, "Second");
    await ana.locator(".taste-before", { hasText: "toffee, vanilla" }).waitFor({ state: "detached" });
    const codes = (await readSheet(ana, made, 0)).glasses.map(({ code }) => code);
    await ana
      .getByRole("list", { name: /the glasses$/ })
      .getByRole("button")
      .first()
      .click();
    await ana.locator(".taste-before", { hasText: "toffee, vanilla" }).waitFor();
    await picture(ana, "phone-second-pass");

    await goToStep(ana, "Rank");
    await ana.getByRole("button", { name: "Ask me two at a time" }).click();
    await ana.getByText("Question 1 of at most 3").waitFor();
    await look(ana, "this or that");
    // Whoever holds Skerry's place above the others: the order of the codes as they stand, the last one first.
    const best = codes.toReversed();
    const answer = async (): Promise<void> => {
      const two = await ana.locator(".pairs-one .pairs-glass").allInnerTexts();
      const pair = two.map((text) => text.replaceAll(/\D/g, ""));
      const ahead = best.find((code) => pair.includes(code)) ?? "";
      await ana.locator(".pairs-one").nth(pair.indexOf(ahead)).click();
    };
    await answer();
    await ana.getByRole("button", { name: "Leave the questions" }).click();
    await ana.reload();
    await ana.getByRole("button", { name: "Go on with the questions (1 answered)" }).click();
    await ana.getByText("Question 2 of at most 3").waitFor();
    for (let turn = 0; turn < 2 && (await ana.locator(".pairs").count()) > 0; turn += 1) await answer();
    await expect.poll(() => rankingShown(ana), POLL).toEqual(best.map((code) => [code]));
    await saved(ana);
    expect((await readSheet(ana, made, 0)).ranking).toEqual(best.map((code) => [code]));
    nothingWrong();

    // Once more without a network: the page comes from the worker, the sheet from the phone.
    await ana.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await ana.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const kept = await ana.evaluate(async () => {
      const names = await caches.keys();
      const all = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return all.flat().map((request) => new URL(request.url).pathname);
    });
    expect(kept).toContain("/index.html");
    expect(kept.filter((path) => path.startsWith("/api") || path.startsWith("/h/"))).toEqual([]);
    await ana.context().setOffline(true);
    await ana.goto(`${sheetOf(made, 0)}?at=first`);
    await ana.getByLabel("Finish", { exact: true }).fill("written without a network");
    await ana.getByText("Kept on this phone").waitFor();
    await picture(ana, "phone-opened-without-a-network");
    await ana.context().setOffline(false);
    await saved(ana);
    expect((await readSheet(ana, made, 0)).notes.map(({ first: pass }) => pass.finish)).toContain(
      "written without a network",
    );
    expect(evening.troubles.take().filter((line) => !WITHOUT_NETWORK.test(line))).toEqual([]);
  });

  it("a paper sheet is typed in by keys alone, in the order of the paper, and says who typed it", {
    timeout: ACT_MS,
  }, async () => {
    const made = await pour("On paper", 3, {}, 2);
    await host.goto(`/h/${household}/flights/${made.flight}`);
    await host.getByRole("link", { name: /^Type in paper.*Bo/ }).click();
    await host.getByLabel("Who types it").fill("Nell");
    await host.getByRole("checkbox", { name: /^Bo has said/ }).check();
    await host.getByRole("button", { name: "Type it in" }).click();
    await host.locator(".typein-rows tbody th").first().waitFor();
    const boCodes = (await host.locator(".typein-rows tbody th").allInnerTexts()).map((code) => code.trim());
    await host.getByLabel(`Nose of glass ${boCodes[0] ?? ""}`).focus();
    for (const text of ["pear", "salt", "short", "pear again"]) {
      await host.keyboard.type(text);
      await host.keyboard.press("Enter");
    }
    await host.keyboard.type("Saltreach S");
    await host.keyboard.press("Enter");
    expect(await host.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe(
      `Nose of glass ${boCodes[1] ?? ""}`,
    );
    const order = host.getByLabel("Order, best first");
    await order.fill(`${boCodes[2] ?? ""} ${boCodes[0] ?? ""}`);
    await order.blur();
    await host.getByText(`got none for ${boCodes[1] ?? ""}; it is not saved`).waitFor();
    await order.fill(`${boCodes[2] ?? ""} ${boCodes[0] ?? ""}=${boCodes[1] ?? ""}`);
    await saved(host);
    await look(host, "a paper sheet typed in");
    const bo = await readSheet(host, made, 1);
    expect(bo.notes[0]).toMatchObject({
      code: boCodes[0],
      first: { nose: "pear", palate: "salt", finish: "short" },
      second: { palate: "pear again", finish: "" },
    });
    expect(bo.typedBy).toBe("Nell");
    expect(bo.guesses.filter(({ nameId }) => nameId !== null)).toEqual([
      { code: boCodes[0], nameId: `whiskey:${whiskeys[1] ?? ""}` },
    ]);
    expect(bo.ranking).toEqual([[boCodes[2]], [boCodes[0], boCodes[1]]]);
    nothingWrong();
  });

  it("a triangle by four tasters, answered by keys: told in plain words with the exact odds", {
    timeout: ACT_MS,
  }, async () => {
    const made = await pour("Kettle or wall", 2, { question: "tell_apart", method: "triangle", sets: 2 }, 4);
    const list = await evening.api("getPourList", {
      at: { household, flight: made.flight },
      token: made.pourerToken,
    });
    // One phone goes round the table; the sheets, their codes and their orders are each taster's own.
    const phone = await evening.phone("round the table");
    for (const [i, { taster }] of made.sheets.entries()) {
      await comeTo(phone, sheetOf(made, i));
      await takeSheet(phone);
      for (const set of [1, 2]) {
        await phone.getByText(`Set ${set} of 2`).waitFor();
        const poured = list.tasters
          .find((one) => one.taster === taster)
          ?.glasses.filter((one) => one.set === set);
        const odd = poured?.find(
          ({ vesselId }) => poured.filter((one) => one.vesselId === vesselId).length === 1,
        );
        const codes = poured?.map(({ code }) => code) ?? [];
        // Three know it in both sets, Di in none; by arrow keys from the first glass.
        const at = codes.indexOf(odd?.code ?? "");
        const wanted = i === 3 ? (at + 1) % 3 : at;
        await phone.getByRole("radio", { name: `Glass ${codes[0] ?? ""}` }).check();
        for (let step = 0; step < wanted; step += 1) await phone.keyboard.press("ArrowRight");
        expect(await phone.getByRole("radio", { name: `Glass ${codes[wanted] ?? ""}` }).isChecked()).toBe(
          true,
        );
        if (i === 0 && set === 1) await look(phone, "a set of three");
        await phone.getByRole("button", { name: set === 1 ? "Next: set 2" : "Go to the lock" }).click();
      }
      await saved(phone);
      await lockSheet(phone);
    }
    await host.goto(`/h/${household}/flights/${made.flight}`);
    await host.getByRole("button", { name: "Reveal", exact: true }).waitFor();
    const before = await storedPages(host);
    expect(before).toContain(made.flight);
    for (const { glasses } of list.tasters)
      for (const { code } of glasses) expect(before).not.toMatch(new RegExp(`"${code}"`));
    await host.getByRole("button", { name: "Reveal", exact: true }).click();
    await host.getByRole("button", { name: "Open the first set" }).click();
    await host.getByText("3 of 4 right", { exact: true }).waitFor();
    await picture(host, "phone-reveal-of-sets");
    await host.getByRole("button", { name: "Open all" }).click();
    await host.getByRole("link", { name: "Read the finding" }).click();
    await host.getByRole("heading", { name: "Could they be told apart" }).waitFor();
    const { sets } = await evening.api("getFinding", { at: { household, flight: made.flight } });
    // ISO 4120, one-sided: P(X ≥ 6) for 8 sets at 1/3 is (28·4 + 8·2 + 1) / 3⁸ = 129/6561 = 43/2187, by hand.
    expect(sets).toMatchObject({
      answered: 8,
      right: 6,
      chance: "1/3",
      sides: 1,
      luck: { fraction: "43/2187" },
    });
    await host.locator(".luck summary").first().click();
    await host.getByText("(43 / 2187)").waitFor();
    await look(host, "finding of a triangle");
    // Whoever asks for less motion waits for none: neither how long nor how late (the reveal opens in turns).
    await host.emulateMedia({ reducedMotion: "reduce" });
    const late = await host.evaluate(() => {
      const one = document.createElement("p");
      one.style.animation = "opened-lift 0.6s 0.15s backwards";
      document.body.append(one);
      const { animationDelay, animationDuration } = getComputedStyle(one);
      one.remove();
      return [animationDelay, Number.parseFloat(animationDuration) < 0.001];
    });
    expect(late).toEqual(["0s", true]);
    nothingWrong();

    // What was opened opens again without a network; before the reveal nothing of the key was among it.
    await host.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await host.context().setOffline(true);
    await host.goto(`/h/${household}/findings/${made.flight}`);
    await host.getByText("This is how it last stood on this device").waitFor();
    await host.getByRole("heading", { name: "Could they be told apart" }).waitFor();
    await host.goto(`/h/${household}/flights/${made.flight}`);
    await host.getByText("This is how it last stood on this device").waitFor();
    await host.getByRole("heading", { level: 1, name: "Kettle or wall" }).waitFor();
    await picture(host, "phone-flight-without-a-network");
    await host.context().setOffline(false);
    expect(evening.troubles.take().filter((line) => !WITHOUT_NETWORK.test(line))).toEqual([]);
  });

  it("alone: mat and marks to scale on paper, a photo that nothing shows before the reveal", {
    timeout: ACT_MS,
  }, async () => {
    const at = { household };
    const { flight, hostToken } = await evening.api("addFlight", {
      at,
      body: {
        name: "By myself",
        pouring: "alone",
        pourMl: 5,
        glasses: vessels.map((vesselId) => ({ vesselId })),
        tasterIds: tasters.slice(0, 1),
      },
    });
    const phone = await evening.phone("Ana");
    await phone.goto(`/h/${household}/flights/${flight.id}/alone`);
    await takeSheet(phone);
    await phone.getByRole("heading", { name: "Mark the undersides" }).waitFor();
    for (const tick of await phone.getByRole("checkbox").all()) await tick.check();
    await phone.getByLabel(/^A photo of the mat/).setInputFiles("apps/web/public/icons/icon-512.png");
    await phone.getByText("1 photo kept, sealed until the reveal.").waitFor();
    expect(await phone.locator("main img").count()).toBe(0);
    await look(phone, "alone with a photo");
    // 96 CSS pixels are 25.4 mm (CSS Values and Units 4, 6.2).
    const mm = async (part: string): Promise<number> => {
      const box = await phone.locator(part).first().boundingBox();
      return ((box?.width ?? 0) * 25.4) / 96;
    };
    await phone.evaluate(() => {
      globalThis.print = () => undefined;
    });
    await phone.emulateMedia({ media: "print" });
    // A4 less the margins of 14 mm; US Letter is wider.
    await phone.setViewportSize({ width: Math.floor(((210 - 28) * 96) / 25.4), height: 1000 });
    expect(await mm(".papermat-ring")).toBeCloseTo(50, 1);
    expect(await mm(".check-ruler-line")).toBeCloseTo(50, 1);
    await picture(phone, "phone-mat-on-paper");
    await phone.emulateMedia({ media: "screen" });
    await phone.getByRole("button", { name: "Print the marks" }).click();
    await phone.emulateMedia({ media: "print" });
    expect(await mm(".stickers li")).toBeCloseTo(30, 1);
    expect(await phone.locator(".sticker-mark").allInnerTexts()).toEqual(["A", "B", "C"]);
    await picture(phone, "phone-marks-on-paper");
    await phone.emulateMedia({ media: "screen" });
    await phone.setViewportSize({ width: 390, height: 844 });

    await phone.getByRole("button", { name: "They stand at their places" }).click();
    await phone.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    await lockSheet(phone);
    const token = await phone.evaluate(
      (id) => localStorage.getItem(`partsproof.token.sheet.${id}`),
      flight.sheets[0]?.sheetId ?? "",
    );
    const marks = ["B", "A", "C"].map((mark, place) => ({ place: place + 1, mark }));
    await evening.api("enterUndersides", {
      at: { household, flight: flight.id },
      token: token ?? "",
      body: { marks },
    });
    await phone.goto(`/h/${household}/flights/${flight.id}`);
    await phone.getByRole("heading", { name: "The sheet", exact: true }).waitFor();
    expect(await phone.locator("main img").count()).toBe(0);
    await evening.api("revealFlight", { at: { household, flight: flight.id }, token: hostToken, body: {} });
    await phone.goto(`/h/${household}/findings/${flight.id}`);
    await phone.getByRole("img", { name: /^The glasses at their places/ }).waitFor();
    const said = await phone.locator("main").innerText();
    // Of 3! orders 4 leave a glass or more in its place and 3 leave all in it or next to it, by hand; three glasses tell little.
    expect(said).toContain("How often a fair shuffle leaves as many or more: about 67 in 100.");
    expect(said).toMatch(/exposes little/);
    expect(said).not.toMatch(/\b(?:real|fake|sham|cheat)/i);
    await picture(phone, "phone-finding-beside-the-photo");
    nothingWrong();
  });

  it("sets poured alone: trays mixed up, places for numbers, undersides by set, the exact odds", {
    timeout: ACT_MS,
  }, async () => {
    const { flight } = await evening.api("addFlight", {
      at: { household },
      body: {
        name: "Two apart, by myself",
        question: "tell_apart",
        method: "duo_trio",
        sets: 2,
        pouring: "alone",
        pourMl: 5,
        glasses: vessels.slice(0, 2).map((vesselId) => ({ vesselId })),
        tasterIds: tasters.slice(0, 1),
      },
    });
    const phone = await evening.phone("Ana");
    const at = `/h/${household}/flights/${flight.id}`;
    await phone.goto(`${at}/alone`);
    await takeSheet(phone);
    await phone.getByText("2 more glasses with R on the side").waitFor();
    for (const tray of [1, 2])
      expect(
        await phone
          .getByRole("list", { name: `Tray ${tray}` })
          .getByRole("checkbox")
          .count(),
      ).toBe(3);
    for (const tick of await phone.getByRole("checkbox").all()) await tick.check();
    await look(phone, "alone with trays");
    await phone.getByRole("button", { name: "They stand at their places" }).click();
    // The trays changed places and their glasses did not: place 1 has the first mark of tray 2, which is like its R.
    for (const set of [1, 2]) {
      await phone.getByText(`Set ${set} of 2`).waitFor();
      await phone.getByRole("radio", { name: `Glass ${set * 2 - 1}` }).check();
      await phone.getByRole("button", { name: set === 1 ? "Next: set 2" : "Go to the lock" }).click();
    }
    await saved(phone);
    await lockSheet(phone);
    await phone.getByRole("link", { name: "Look under the glasses" }).click();
    for (const [i, mark] of ["C", "A", "B", "D"].entries())
      await phone
        .getByRole("group", { name: new RegExp(`Place ${i + 1}$`) })
        .getByRole("radio", { name: new RegExp(`^${mark}`) })
        .check();
    await look(phone, "undersides of trays");
    await phone.getByRole("button", { name: "Enter the letters" }).click();
    await phone.getByRole("button", { name: "Enter them" }).click();
    await phone.getByText("the marks of one set, such as C, D").waitFor();
    expect(evening.troubles.takeAnswers(422)).toBe(1);
    for (const [i, mark] of ["C", "D", "A", "B"].entries())
      await phone
        .getByRole("group", { name: new RegExp(`Place ${i + 1}$`) })
        .getByRole("radio", { name: new RegExp(`^${mark}`) })
        .check();
    await phone.getByRole("button", { name: "Enter the letters" }).click();
    await phone.getByRole("button", { name: "Enter them" }).click();
    await phone.getByRole("button", { name: "Reveal", exact: true }).click();
    await phone.getByRole("button", { name: "Open all" }).click();
    await picture(phone, "phone-reveal-of-trays");
    await phone.getByRole("link", { name: "Read the finding" }).click();
    await phone.getByRole("heading", { name: "Could they be told apart" }).waitFor();
    const { sets } = await evening.api("getFinding", { at: { household, flight: flight.id } });
    // ISO 10399, one-sided: both of two at 1/2 each.
    expect(sets).toMatchObject({ answered: 2, right: 2, luck: { fraction: "1/4" } });
    await picture(phone, "phone-finding-of-trays");
    nothingWrong();
  });

  it("duo-trio, paired and tetrad sets, closeness and two rounds take their answers", {
    timeout: ACT_MS,
  }, async () => {
    const bo = await evening.phone("Bo");
    const tetrad = await pour("Two and two", 2, { question: "changed", method: "tetrad" }, 1);
    await bo.goto(sheetOf(tetrad, 0));
    await takeSheet(bo);
    await bo.locator(".picks-one").first().waitFor();
    const four = await bo.locator(".picks-one").allInnerTexts();
    const codes = four.map((text) => /\d{3}/.exec(text)?.[0] ?? "");
    await bo.getByRole("button", { name: `Glass ${codes[0] ?? ""}` }).focus();
    await bo.keyboard.press("Enter");
    await bo.getByText(`And which is like ${codes[0] ?? ""}?`).waitFor();
    await bo.getByRole("button", { name: `Glass ${codes[2] ?? ""}` }).click();
    await bo.getByText(`${codes[1] ?? ""} and ${codes[3] ?? ""} alike`).waitFor();
    await saved(bo);
    const { sets } = await readSheet(bo, tetrad, 0);
    expect(new Set(sets[0]?.picked)).toEqual(new Set([codes[0], codes[2]]));
    await look(bo, "four glasses two and two");

    const duo = await pour("Like the first", 2, { question: "tell_apart", method: "duo_trio" }, 1);
    await comeTo(bo, sheetOf(duo, 0));
    await takeSheet(bo);
    await bo.locator(".picks-known", { hasText: "R" }).waitFor();
    await bo.getByRole("radio").nth(1).check();
    await saved(bo);
    await picture(bo, "phone-duo-trio");

    const close = await pour(
      "How near",
      3,
      { question: "how_close", targetNameId: `whiskey:${whiskeys[0] ?? ""}`, reference: true },
      1,
    );
    await comeTo(bo, sheetOf(close, 0));
    await takeSheet(bo);
    await goToStep(bo, "Rank");
    await bo.getByText("Closest to the target first").waitFor();
    await bo.getByText("known in the glass labelled R and").waitFor();
    for (let place = 0; place < 3; place += 1) await bo.locator(".rank-pick").first().click();
    await saved(bo);
    await lockSheet(bo);
    const rounds = await pour("Again", 3, { question: "agree_with_myself" }, 1);
    await comeTo(bo, sheetOf(rounds, 0));
    await takeSheet(bo);
    for (const round of [1, 2]) {
      await bo.getByText(`Round ${round} of 2`).waitFor();
      for (let place = 0; place < 3; place += 1) await bo.locator(".rank-pick").first().click();
      await bo.getByRole("button", { name: round === 1 ? "Next: round 2" : "Go to the lock" }).click();
    }
    await saved(bo);
    await lockSheet(bo);
    for (const made of [close, rounds]) {
      const at = { household, flight: made.flight };
      await evening.api("revealFlight", { at, token: made.hostToken, body: {} });
    }
    await comeTo(bo, `/h/${household}/findings/${close.flight}`);
    await bo.getByRole("heading", { name: "How close to the target" }).waitFor();
    await look(bo, "finding of closeness");
    await comeTo(bo, `/h/${household}/findings/${rounds.flight}`);
    await bo.getByRole("heading", { name: "Do they agree with themselves" }).waitFor();
    await picture(bo, "phone-finding-of-agreement");
    nothingWrong();
  });
});
