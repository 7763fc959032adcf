import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { picture } from "./fixtures/picture.ts";
import { readSquare } from "./fixtures/read-square.ts";
import { goToStep, guess, lockSheet, type Notes, saved, writeNotes } from "./fixtures/sheet-steps.ts";
import { PASSPHRASE, startTable, type Table } from "./fixtures/start-table.ts";
import { notWrittenOnce } from "./fixtures/written-once.ts";

const ACT_MS = 420_000;
const POLL = { timeout: 45_000, interval: 150 };
const NAMES = ["Tarn", "Skerry"] as const;
const GUESTS = ["Ana", "Bo", "Cy", "Di", "Eli", "Flo", "Gus", "Hal"] as const;
/** What the browser says about a network or a server that is not there. */
const NOT_THERE = /net::ERR_|no answer/;
const LONG = process.env["PARTSPROOF_LONG"] === "1";
/** As long as the issue asks of `npm test`, and of `npm run long`. */
const WITHOUT_NETWORK_MS = LONG ? 300_000 : 20_000;
const RESTARTS = 3;
/** Eight sheets over plain HTTP always; over HTTPS, where the same is written once more, three in `npm test` and eight in `npm run long`. */
const OVER_HTTPS = LONG ? GUESTS : GUESTS.slice(0, 3);

/** A guest's sheet of one of the two flights, on the guest's phone. */
interface Seated {
  readonly who: string;
  readonly page: Page;
  readonly flight: string;
  readonly words: Map<string, Notes>;
}

/**
 * One house, two flights, eight guests: each has a sheet of the one at a plain-HTTP address, and eight, or three in the
 * short run, a sheet of the other over HTTPS.
 */
describe("a table of eight phones on a network of its own", () => {
  let table: Table;
  let host: Page;
  let watcher: Page;
  const phones: Page[] = [];
  const secure: Page[] = [];
  const seated: Seated[] = [];
  let link = "";
  let code = "";
  let household = "";
  let flight = "";
  let secureFlight = "";
  let secureTokens = { host: "", pourer: "" };
  let broken = false;

  beforeAll(async () => {
    table = await startTable();
    console.log(
      `LONG table | ${GUESTS.length} phones, ${OVER_HTTPS.length} of them over HTTPS too | ${table.says}`,
    );
    host = await table.device("host", { width: 1280, height: 800 });
  }, 240_000);
  afterAll(async () => {
    console.log(`LONG screens looked at | ${table.looks.screens.length} | ${table.looks.screens.join("; ")}`);
    await table.end();
  }, 60_000);
  beforeEach(() => {
    if (broken) throw new Error("an act before this one failed");
  });
  afterEach(({ task }) => {
    if (task.result?.state === "fail") broken = true;
  });
  const nothingWrong = (): void => {
    expect(table.looks.take()).toStrictEqual([]);
    expect(table.troubles.take()).toStrictEqual([]);
  };
  const look = async (page: Page, screen: string): Promise<void> => {
    await table.looks.over(page, screen);
    const name = `table-${screen.replaceAll(/\W+/g, "-")}`;
    await picture(page, name);
    await page.emulateMedia({ colorScheme: "dark" });
    await picture(page, `${name}-dark`);
    await page.emulateMedia({ colorScheme: "light" });
  };
  const heading = (page: Page, name: string | RegExp): Promise<void> =>
    page.getByRole("heading", { level: 1, name }).waitFor();

  it("the owner signs in at the door and reads the trail", { timeout: ACT_MS }, async () => {
    const { id } = await table.api("addHousehold", { body: { name: "The long table" } });
    household = id;
    for (const [i, name] of NAMES.entries()) {
      const whiskey = await table.api("addWhiskey", {
        at: { household },
        body: { maker: "Saltreach", name, strength: { basis: "abv20", value: 43 + i } },
      });
      await table.api("addBottle", { at: { household }, body: { whiskeyId: whiskey.id } });
    }
    await host.goto(`/h/${household}/flights`);
    expect(await host.evaluate(() => globalThis.isSecureContext)).toBe(false);
    await host.getByRole("link", { name: "Sign in as the owner" }).click();
    await heading(host, "Sign in");
    expect(table.troubles.takeAnswers(401)).toBeGreaterThan(0);
    await look(host, "sign in");
    await host.getByLabel("Passphrase").fill("not the right one at all");
    await host.getByRole("button", { name: "Sign in" }).click();
    await host.getByRole("alert").waitFor();
    expect(table.troubles.takeAnswers(401) + table.troubles.takeAnswers(403)).toBeGreaterThan(0);
    await host.getByLabel("Passphrase").fill(PASSPHRASE);
    await host.getByRole("button", { name: "Sign in" }).click();
    await heading(host, "Flights");
    await host.goto("/door");
    await heading(host, "The door");
    await host.locator(".trail li").first().waitFor();
    await look(host, "door and trail");
    nothingWrong();
  });

  it("a flight is set by its question, with seats for eight guests", { timeout: ACT_MS }, async () => {
    await host.goto(`/h/${household}/flights/new`);
    await heading(host, "Set a flight");
    await host.getByRole("radio", { name: /Which glass is which/ }).check();
    for (const name of NAMES) {
      await host.getByRole("button", { name: new RegExp(`Pour a glass of .*${name}`) }).click();
    }
    await host.getByRole("button", { name: /^More: Glasses of .*Tarn/ }).click();
    await host.getByLabel("The pourer’s name").fill("Pell");
    for (const _ of GUESTS) await host.getByRole("button", { name: "More: Seats for guests" }).click();
    await host.getByText("8 tasters on 1 evening").waitFor();
    await look(host, "set a flight by its question");
    await host.getByRole("button", { name: "Set the flight" }).click();
    await expect.poll(() => new URL(host.url()).pathname, POLL).toMatch(/flights\/[0-9a-hjkmnp-tv-z]{26}$/);
    flight = new URL(host.url()).pathname.split("/").at(-1) ?? "";
    nothingWrong();
  });

  it("eight guests join by the link at a plain-HTTP address, a ninth watches by a typed code", {
    timeout: ACT_MS,
  }, async () => {
    await host.getByRole("button", { name: "Let tasters in" }).click();
    const dialog = host.getByRole("dialog");
    link = await dialog.getByLabel(/^Link to/).inputValue();
    expect(link).toMatch(new RegExp(`^${table.plain}/join#[0-9a-f]{64}$`));
    await dialog.getByRole("button", { name: "Show for a camera" }).click();
    expect(await readSquare(host.getByRole("img", { name: /^Square code of the link/ }))).toBe(link);
    await host.keyboard.press("Escape");
    const anaJoins = async (): Promise<Page> => {
      const ana = await table.deviceApart("Ana");
      await ana.goto(link);
      await ana.getByLabel("What they call you").fill("Ana");
      expect(new URL(ana.url()).hash).toBe("");
      await ana.getByRole("button", { name: "Take my seat" }).click();
      await ana.getByRole("alert").getByText("legal drinking age").waitFor();
      await look(ana, "join as a taster");
      await ana.getByRole("checkbox", { name: "I am of legal drinking age" }).check();
      await ana.getByRole("button", { name: "Take my seat" }).click();
      await heading(ana, /^Ana’s sheet/);
      return ana;
    };
    const others = GUESTS.slice(1).map(async (name) => join(await table.device(name), name, link));
    // At once, as at a table; the host's screen is looked at meanwhile.
    const lookedAt = look(host, "a way in for tasters");
    phones.push(...(await Promise.all([anaJoins(), ...others])));
    await lookedAt;
    await host.keyboard.press("Escape");
    for (const phone of phones) expect(await phone.evaluate(() => globalThis.isSecureContext)).toBe(false);
    await host.getByText("Hal, taster").waitFor();
    await host.getByRole("button", { name: "Let watchers in" }).click();
    code = await host.locator(".joining-code").innerText();
    await host.keyboard.press("Escape");
    const hostLookedAt = look(host, "flight with guests");
    watcher = await table.device("watcher");
    await watcher.goto("/join");
    await watcher.getByLabel("Code").fill("ZZZZZZZZ");
    await watcher.getByRole("button", { name: "Look" }).click();
    await watcher.getByRole("alert").waitFor();
    expect(table.troubles.takeAnswers(404)).toBe(1);
    await look(watcher, "join by a code");
    await watcher.getByLabel("Code").fill(code.toLowerCase());
    await watcher.getByRole("button", { name: "Look" }).click();
    await watcher.getByLabel("What they call you").fill("Wren");
    await watcher.getByRole("checkbox", { name: "I am of legal drinking age" }).check();
    await watcher.getByRole("button", { name: "Watch", exact: true }).click();
    await watcher.getByText("0 of 8 sheets locked").waitFor();
    await hostLookedAt;
    nothingWrong();
  });

  it(`${OVER_HTTPS.length} of the eight join a second flight over HTTPS, in a secure context`, {
    timeout: ACT_MS,
  }, async () => {
    const at = { household };
    const vessels = (await table.api("listVessels", { at })).items;
    const set = await table.api("addFlight", {
      at,
      body: {
        name: "The second flight",
        question: "tell_apart",
        method: "triangle",
        glasses: vessels.map(({ id }) => ({ vesselId: id })),
        pouring: "someone else",
        pourer: "Pell",
        pourMl: 10,
        tasterIds: [],
        seats: OVER_HTTPS.length,
      },
    });
    secureFlight = set.flight.id;
    secureTokens = { host: set.hostToken ?? "", pourer: set.pourerToken ?? "" };
    const owner = await host.context().newPage();
    await owner.goto(`${table.secure}/h/${household}/flights/${secureFlight}`);
    expect(await owner.evaluate(() => globalThis.isSecureContext)).toBe(true);
    await owner.getByRole("link", { name: "Sign in as the owner" }).click();
    await owner.getByLabel("Passphrase").fill(PASSPHRASE);
    await owner.getByRole("button", { name: "Sign in" }).click();
    await heading(owner, "The second flight");
    expect(table.troubles.takeAnswers(401)).toBeGreaterThan(0);
    const cookies = await host.context().cookies(table.secure);
    expect(cookies.filter(({ name }) => name.startsWith("__Host-"))).toMatchObject([
      { name: "__Host-partsproof", secure: true, httpOnly: true, sameSite: "Strict", path: "/" },
    ]);
    await owner.close();
    const opened = await table.api("openJoining", {
      at: { household, flight: secureFlight },
      token: secureTokens.host,
      body: { role: "taster" },
    });
    const way = `${table.secure}/join#${opened.link}`;
    const joined = OVER_HTTPS.map(async (name, i) => {
      const phone = phones[i];
      if (phone === undefined) throw new Error(`a phone of ${name} is needed`);
      return join(await phone.context().newPage(), name, way);
    });
    secure.push(...(await Promise.all(joined)));
    for (const phone of secure) expect(await phone.evaluate(() => globalThis.isSecureContext)).toBe(true);
    await look(secure[1] ?? host, "a guest’s sheet over HTTPS");
    nothingWrong();
  });

  it(`one phone loses its network for ${WITHOUT_NETWORK_MS / 1000} s and the servers are killed ${RESTARTS} times while all write`, {
    timeout: ACT_MS + WITHOUT_NETWORK_MS,
  }, async () => {
    const pourer = await host.evaluate((id) => localStorage.getItem(`partsproof.token.pourer.${id}`), flight);
    const poured = [
      [flight, pourer ?? ""],
      [secureFlight, secureTokens.pourer],
    ] as const;
    for (const [id, token] of poured) await table.api("markPoured", { at: { household, flight: id }, token });
    for (const [i, who] of GUESTS.entries()) {
      const [plain, other] = [phones[i], secure[i]];
      if (plain === undefined) throw new Error("a sheet a guest is needed");
      seated.push({ who, page: plain, flight, words: new Map() });
      if (other !== undefined) seated.push({ who, page: other, flight: secureFlight, words: new Map() });
    }
    const codes = new Map<Seated, readonly string[]>();
    for (const one of seated) {
      await one.page.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
      // A triangle begins with its sets; notes are a step of their own.
      if (one.flight === secureFlight) await goToStep(one.page, "Notes");
      codes.set(
        one,
        (await readBack(one)).sheet.glasses.map((glass) => glass.code),
      );
    }
    const write = async (one: Seated, round: number): Promise<void> => {
      const glass = codes.get(one)?.[round] ?? "";
      const where = `${one.who} ${one.flight === flight ? "plain" : "secure"} ${round + 1}`;
      const notes = { nose: `nose of ${where}`, palate: `palate of ${where}` };
      one.words.set(glass, notes);
      await writeNotes(one.page, glass, notes);
    };
    await table.network("down");
    const since = Date.now();
    const ana = seatedOn("Ana").page;
    const here = seated.filter(({ who }) => who !== "Ana");
    for (let round = 0; round < RESTARTS; round += 1) {
      const sending = Promise.any(
        here.map(({ page }) => page.waitForRequest((request) => request.url().endsWith("/entries"))),
      );
      const all = Promise.all(seated.map((one) => write(one, round)));
      await sending;
      await table.kill(1000);
      await all;
    }
    const savedAll = Promise.all(here.map(({ page }) => saved(page)));
    await ana.getByText("on this phone").first().waitFor();
    await look(ana, "sheet without a network");
    await savedAll;
    const unsent = seated.filter(({ who }) => who === "Ana");
    for (const one of unsent) expect((await readBack(one)).entries).toEqual([]);
    await new Promise((done) => setTimeout(done, Math.max(0, WITHOUT_NETWORK_MS - (Date.now() - since))));
    await table.network("up");
    await Promise.all(unsent.map(({ page }) => saved(page)));
    for (const one of seated) {
      const { sheet } = await readBack(one);
      for (const [glass, notes] of one.words)
        expect(sheet.notes.find((note) => note.code === glass)?.first).toMatchObject(notes);
    }
    expect(table.troubles.take().filter((line) => !NOT_THERE.test(line))).toEqual([]);
    nothingWrong();
  });

  it("a sheet open twice: both are shown, nothing is merged before the choice", {
    timeout: ACT_MS,
  }, async () => {
    const seat = seatedOn("Bo");
    const bo = seat.page;
    const again = await bo.context().newPage();
    await again.goto(bo.url());
    await again.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    const [first = ""] = await codesOf(seat);
    const palate = seat.words.get(first)?.palate ?? "";
    await writeNotes(bo, first, { nose: "honey" });
    await saved(bo);
    await writeNotes(again, first, { nose: "wax" });
    await again.getByRole("heading", { name: "also written on another device" }).waitFor();
    expect(table.troubles.takeAnswers(409)).toBe(1);
    expect((await readBack(seat)).sheet.notes[0]?.first.nose).toBe("honey");
    await look(again, "a sheet open twice");
    await again.getByRole("button", { name: "Keep both texts" }).click();
    await saved(again);
    expect((await readBack(seat)).sheet.notes[0]?.first.nose).toBe("honey\nwax");
    seat.words.set(first, { nose: "honey\nwax", palate });
    await again.close();
    await bo.reload();
    nothingWrong();
  });

  it("a page closed without a network: what was written arrives when it is opened again", {
    timeout: ACT_MS,
  }, async () => {
    const seat = seatedOn("Cy");
    const cy = seat.page;
    const url = cy.url();
    const [first = ""] = await codesOf(seat);
    const before = (await readBack(seat)).entries.length;
    await cy.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    await cy.context().setOffline(true);
    await writeNotes(cy, first, { nose: "in the dark" });
    await cy.getByText("Kept on this phone").waitFor();
    const context = cy.context();
    await cy.close();
    await context.setOffline(false);
    const opened = await context.newPage();
    phones[2] = opened;
    seated[seated.indexOf(seat)] = { ...seat, page: opened };
    await opened.goto(url);
    await opened.getByText("is back, and being sent").waitFor();
    await saved(opened);
    const { sheet, entries } = await readBack(seatedOn("Cy"));
    expect(sheet.notes[0]?.first.nose).toBe("in the dark");
    expect(entries).toHaveLength(before + 1);
    seat.words.set(first, { nose: "in the dark", palate: seat.words.get(first)?.palate ?? "" });
    await opened.getByRole("button", { name: "Understood" }).click();
    expect(table.troubles.take().filter((line) => !NOT_THERE.test(line))).toEqual([]);
    nothingWrong();
  });

  it("all lock, the watcher sees who and nothing else, the host reveals on all phones", {
    timeout: ACT_MS,
  }, async () => {
    const guessAndLock = async (who: string, i: number): Promise<void> => {
      const seat = seatedOn(who);
      const codes = await codesOf(seat);
      await goToStep(seat.page, "Names");
      await guess(seat.page, codes[i % 3] ?? "", "Saltreach Skerry");
      for (const other of codes.filter((one) => one !== codes[i % 3])) {
        await guess(seat.page, other, "Saltreach Tarn");
      }
      await saved(seat.page);
      await lockSheet(seat.page);
    };
    const [first, ...others] = GUESTS;
    await guessAndLock(first, 0);
    await watcher.getByText("1 of 8 sheets locked").waitFor();
    await Promise.all(others.map((who, i) => guessAndLock(who, i + 1)));
    await watcher.getByText("8 of 8 sheets locked").waitFor();
    await look(watcher, "watcher");
    expect(await watcher.locator("main").innerText()).not.toMatch(/Skerry|Tarn|nose of|palate of/);
    await host.getByRole("button", { name: "Send away Wren" }).click();
    await host.getByRole("alertdialog").getByRole("button", { name: "Send away" }).click();
    await watcher.getByRole("heading", { name: "The host closed this way in" }).waitFor();
    const sentAway = look(watcher, "watcher, sent away");
    const onAll = (act: (phone: Page) => Promise<unknown>): Promise<unknown> => Promise.all(phones.map(act));
    await host.getByRole("button", { name: "Reveal", exact: true }).click();
    await onAll(async (phone) => {
      await phone.getByRole("link", { name: "Open the glasses" }).click();
      await phone.getByText("They open here when the host opens them").waitFor();
    });
    await host.getByText("You open them on all phones.").waitFor();
    await sentAway;
    expect(table.troubles.takeAnswers(401) + table.troubles.takeAnswers(403)).toBeGreaterThan(0);
    await watcher.close();
    await host.getByRole("button", { name: "Open the first glass" }).click();
    await onAll((phone) => expect.poll(() => phone.locator(".opened-open").count(), POLL).toBe(1));
    await look(phones[1] ?? host, "reveal on a guest's phone");
    await host.getByRole("button", { name: "Open all" }).click();
    await onAll((phone) => phone.getByText("Every glass is open.").waitFor());
    const finding = await table.api("getFinding", { at: { household, flight } });
    expect(finding.sheets.map(({ guessed }) => guessed)).toEqual(GUESTS.map(() => 3));
    nothingWrong();
  });

  it("after the reveal every word of every sheet is there, and was written once", {
    timeout: ACT_MS,
  }, async () => {
    const at = { household, flight: secureFlight };
    await table.api("revealFlight", { at, token: secureTokens.host, body: { closeOpenSheets: true } });
    let entries = 0;
    for (const one of seated) {
      const kept = (await readBack(one)).entries;
      entries += kept.length;
      const words = [...one.words.values()].flatMap(({ nose, palate = "" }) => [nose, palate]);
      expect([one.who, notWrittenOnce(kept, words)]).toEqual([one.who, []]);
    }
    console.log(
      `LONG table | ${seated.length} sheets, ${RESTARTS} kills | ${entries} entries, each word once`,
    );
  });

  it("the phone checks the promise, and finds a changed key, a changed guess and a late one", {
    timeout: ACT_MS,
  }, async () => {
    const [ana] = phones;
    if (ana === undefined) throw new Error("a phone is needed");
    await ana.getByRole("link", { name: "Was anything changed?" }).click();
    await ana.getByRole("heading", { name: "Nothing was changed" }).waitFor();
    expect(await ana.locator(".check p").count()).toBe(0);
    await look(ana, "check, nothing changed");
    const { record } = await table.api("getRecord", { at: { household, flight } });
    if (record === null) throw new Error("a revealed flight requires a record, got none");
    const planted = async (change: (copy: NonNullable<typeof record>) => void): Promise<string> => {
      const copy = structuredClone(record);
      change(copy);
      await ana.getByLabel("Record").setInputFiles({
        name: "record.json",
        mimeType: "application/json",
        buffer: Buffer.from(JSON.stringify(copy)),
      });
      await ana.locator(".check-bad").waitFor();
      return ana.locator(".check-bad").innerText();
    };
    const swap = (text: string): string => text.replaceAll(/.$/g, (last) => (last === "0" ? "1" : "0"));
    expect(await planted((copy) => void (copy.nonce = swap(copy.nonce)))).toContain("The key was changed");
    await look(ana, "check, the key was changed");
    const changed = await planted((copy) => {
      const entry = copy.sheets[0]?.entries.find(({ kind }) => kind === "guess");
      if (entry === undefined) throw new Error("a sheet with guesses is needed");
      entry.body = entry.body.replace(/[0-9a-z]{26}/, "0".repeat(26));
    });
    expect(changed).toContain("A sheet is not as it was locked");
    const late = await planted((copy) => {
      const sheet = copy.sheets[0];
      const lock = sheet?.entries.at(-1);
      if (sheet === undefined || lock === undefined) throw new Error("a sheet with entries is needed");
      sheet.entries.push({ ...lock, kind: "guess", at: copy.closing.closedAt + 60_000, body: "{}" });
    });
    expect(late).toContain("written after the close");
    nothingWrong();
  });

  it("signing out everywhere ends the owner’s session", {
    timeout: ACT_MS,
  }, async () => {
    await host.goto("/door");
    await host.getByRole("button", { name: "Sign out everywhere" }).click();
    await heading(host, "Sign in");
    await host.goto(`/h/${household}/shelf`);
    await host.getByRole("link", { name: "Sign in as the owner" }).waitFor();
    expect(table.troubles.takeAnswers(401)).toBeGreaterThan(0);
    nothingWrong();
  });

  /** Takes a seat by the link, as the phone's camera opens it. */
  async function join(phone: Page, name: string, way: string): Promise<Page> {
    await phone.goto(way);
    await phone.getByLabel("What they call you").fill(name);
    await phone.getByRole("checkbox", { name: "I am of legal drinking age" }).check();
    await phone.getByRole("button", { name: "Take my seat" }).click();
    await heading(phone, new RegExp(`^${name}’s sheet`));
    return phone;
  }

  /** A guest's sheet of the flight at the plain-HTTP address. */
  function seatedOn(who: string): Seated {
    const found = seated.find((one) => one.who === who && one.flight === flight);
    if (found === undefined) throw new Error(`a sheet of ${who} is needed`);
    return found;
  }

  async function codesOf(one: Seated): Promise<readonly string[]> {
    return (await readBack(one)).sheet.glasses.map((glass) => glass.code);
  }

  /** The sheet as the house has it, asked with the token that the phone holds. */
  async function readBack({ page, flight: of }: Seated) {
    const [sheet, token] = await page.evaluate(() => {
      const name = Object.keys(localStorage).find((key) => key.startsWith("partsproof.token.sheet."));
      return [name?.split(".").at(-1) ?? "", localStorage.getItem(name ?? "") ?? ""];
    });
    const asked = { at: { household, flight: of, sheet }, token };
    return {
      sheet: await table.api("getSheet", asked),
      entries: (await table.api("listEntries", asked)).items,
    };
  }
});
