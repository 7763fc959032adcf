import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { picture } from "./fixtures/picture.ts";
import { goToStep, guess, lockSheet, saved, writeNotes } from "./fixtures/sheet-steps.ts";
import { PASSPHRASE, startTable, type Table } from "./fixtures/start-table.ts";

const ACT_MS = 420_000;
const POLL = { timeout: 45_000, interval: 150 };
const NAMES = ["Tarn", "Skerry"] as const;
/** Headers that a browser only heeds over HTTPS, and says so; nothing is wrong with the page. */
const PLAIN_HTTP = /Cross-Origin-Opener-Policy header has been ignored|Origin-Agent-Cluster header/;
/** What the browser says about a network that is not there. */
const WITHOUT_NETWORK = /net::ERR_|no answer/;
/** As long as the issue asks of `npm test`. */
const WITHOUT_NETWORK_MS = 20_000;

describe("a table of phones at a plain-HTTP address of the network", () => {
  let table: Table;
  let host: Page;
  let watcher: Page;
  const phones: Page[] = [];
  let link = "";
  let code = "";
  let household = "";
  let flight = "";
  let broken = false;

  beforeAll(async () => {
    table = await startTable();
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
    expect(table.troubles.take().filter((line) => !PLAIN_HTTP.test(line))).toStrictEqual([]);
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

  it("a triangle is set by its question, with seats for four guests", { timeout: ACT_MS }, async () => {
    await host.goto(`/h/${household}/flights/new`);
    await heading(host, "Set a flight");
    await host.getByRole("radio", { name: /Can anyone tell these two apart/ }).check();
    await host.getByText("Pour one of the two twice and the other once").waitFor();
    for (const name of NAMES) {
      await host.getByRole("button", { name: new RegExp(`Pour a glass of .*${name}`) }).click();
    }
    await host.getByRole("button", { name: /^More: Glasses of .*Tarn/ }).click();
    await host.getByLabel("The pourer’s name").fill("Pell");
    for (let seat = 0; seat < 4; seat += 1) {
      await host.getByRole("button", { name: "More: Seats for guests" }).click();
    }
    await host.getByText("It takes 16 sheets").waitFor();
    await host.getByText("got 4 (4 tasters, 1 sitting)").first().waitFor();
    await look(host, "set a flight by its question");
    await host.getByRole("button", { name: "Set the flight" }).click();
    await expect.poll(() => new URL(host.url()).pathname, POLL).toMatch(/flights\/[0-9a-hjkmnp-tv-z]{26}$/);
    flight = new URL(host.url()).pathname.split("/").at(-1) ?? "";
    nothingWrong();
  });

  it("four guests join by the link, a fifth watches by a typed code", { timeout: ACT_MS }, async () => {
    await host.getByRole("button", { name: "Let tasters in" }).click();
    const dialog = host.getByRole("dialog");
    link = await dialog.getByLabel(/^Link to/).inputValue();
    expect(link).toMatch(new RegExp(`^${table.address}/join#[0-9a-f]{64}$`));
    await look(host, "a way in for tasters");
    await host.keyboard.press("Escape");
    for (const [i, name] of ["Ana", "Bo", "Cy", "Di"].entries()) {
      const phone = await table.device(name);
      phones.push(phone);
      await phone.goto(link);
      await phone.getByLabel("What they call you").fill(name);
      expect(new URL(phone.url()).hash).toBe("");
      if (i === 0) {
        await phone.getByRole("button", { name: "Take my seat" }).click();
        await phone.getByRole("alert").getByText("legal drinking age").waitFor();
        await look(phone, "join as a taster");
      }
      await phone.getByRole("checkbox", { name: "I am of legal drinking age" }).check();
      await phone.getByRole("button", { name: "Take my seat" }).click();
      await heading(phone, new RegExp(`^${name}’s sheet`));
    }
    await host.getByText("Di, taster").waitFor();
    await host.getByRole("button", { name: "Let watchers in" }).click();
    code = await host.locator(".joining-code").innerText();
    await host.keyboard.press("Escape");
    await look(host, "flight with guests");
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
    await watcher.getByText("0 of 4 sheets locked").waitFor();
    nothingWrong();
  });

  it("a phone that loses its network for 20 s while writing loses nothing, and nothing arrives twice", {
    timeout: ACT_MS,
  }, async () => {
    const { items } = await table.api("listFlights", { at: { household } });
    const pourerToken = await host.evaluate(
      (id) => localStorage.getItem(`partsproof.token.pourer.${id}`),
      flight,
    );
    await table.api("markPoured", {
      at: { household, flight },
      token: pourerToken ?? "",
    });
    expect(items[0]?.state).toBe("pouring");
    const [ana] = phones;
    if (ana === undefined) throw new Error("a phone is needed");
    await ana.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    const codes = await codesOf(ana);
    await writeNotes(ana, codes[0] ?? "", { nose: "pear" });
    await saved(ana);
    await ana.context().setOffline(true);
    const since = Date.now();
    await writeNotes(ana, codes[1] ?? "", { nose: "written without a network", palate: "salt" });
    await ana.getByText("on this phone").first().waitFor();
    await look(ana, "sheet without a network");
    await goToStep(ana, "Second");
    await writeNotes(ana, codes[0] ?? "", { nose: "still pear" });
    await new Promise((done) => setTimeout(done, Math.max(0, WITHOUT_NETWORK_MS - (Date.now() - since))));
    await ana.context().setOffline(false);
    await saved(ana);
    const { sheet, entries } = await readBack(ana);
    expect(sheet.notes.find((one) => one.code === codes[1])?.first).toMatchObject({
      nose: "written without a network",
      palate: "salt",
    });
    expect(sheet.notes.find((one) => one.code === codes[0])?.second.nose).toBe("still pear");
    expect(new Set(entries.map((one) => one.key)).size).toBe(entries.length);
    expect(entries.filter((one) => JSON.stringify(one).includes("still pear"))).toHaveLength(1);
    const told = table.troubles.take();
    expect(told.filter((line) => !PLAIN_HTTP.test(line) && !WITHOUT_NETWORK.test(line))).toEqual([]);
    nothingWrong();
  });

  it("a sheet open twice: both are shown, nothing is merged before the choice", {
    timeout: ACT_MS,
  }, async () => {
    const bo = phones[1];
    if (bo === undefined) throw new Error("a phone is needed");
    const again = await bo.context().newPage();
    await again.goto(bo.url());
    await again.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    const [first = ""] = await codesOf(bo);
    await writeNotes(bo, first, { nose: "honey" });
    await saved(bo);
    await writeNotes(again, first, { nose: "wax" });
    await again.getByRole("heading", { name: "also written on another device" }).waitFor();
    expect(table.troubles.takeAnswers(409)).toBe(1);
    expect((await readBack(bo)).sheet.notes[0]?.first.nose).toBe("honey");
    await look(again, "a sheet open twice");
    await again.getByRole("button", { name: "Keep both texts" }).click();
    await saved(again);
    expect((await readBack(bo)).sheet.notes[0]?.first.nose).toBe("honey\nwax");
    await again.close();
    await bo.reload();
    nothingWrong();
  });

  it("a page closed without a network: what was written arrives when it is opened again", {
    timeout: ACT_MS,
  }, async () => {
    const cy = phones[2];
    if (cy === undefined) throw new Error("a phone is needed");
    const url = cy.url();
    const [first = ""] = await codesOf(cy);
    await cy.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    await cy.context().setOffline(true);
    await writeNotes(cy, first, { nose: "in the dark" });
    await cy.getByText("Kept on this phone").waitFor();
    const context = cy.context();
    await cy.close();
    await context.setOffline(false);
    const opened = await context.newPage();
    phones[2] = opened;
    await opened.goto(url);
    await opened.getByText("is back, and being sent").waitFor();
    await saved(opened);
    const { sheet, entries } = await readBack(opened);
    expect(sheet.notes[0]?.first.nose).toBe("in the dark");
    expect(entries).toHaveLength(1);
    await opened.getByRole("button", { name: "Understood" }).click();
    const told = table.troubles.take();
    expect(told.filter((line) => !PLAIN_HTTP.test(line) && !WITHOUT_NETWORK.test(line))).toEqual([]);
    nothingWrong();
  });

  it("the server is ended and started again three times while a phone writes", {
    timeout: ACT_MS,
  }, async () => {
    const di = phones[3];
    if (di === undefined) throw new Error("a phone is needed");
    await di.getByRole("navigation", { name: "Steps of the sheet" }).waitFor();
    const codes = await codesOf(di);
    for (const [i, code] of codes.entries()) {
      const closed = table.restart(1500);
      await writeNotes(di, code, { nose: `restart ${i + 1}`, palate: `still ${i + 1}` });
      await closed;
      await saved(di);
    }
    const { sheet, entries } = await readBack(di);
    expect(sheet.notes.map(({ first }) => `${first.nose}, ${first.palate}`).toSorted()).toEqual([
      "restart 1, still 1",
      "restart 2, still 2",
      "restart 3, still 3",
    ]);
    expect(new Set(entries.map((one) => one.key)).size).toBe(entries.length);
    const told = table.troubles.take();
    expect(told.filter((line) => !PLAIN_HTTP.test(line) && !WITHOUT_NETWORK.test(line))).toEqual([]);
    nothingWrong();
  });

  it("all lock, the watcher sees who and nothing else, the host reveals on all phones", {
    timeout: ACT_MS,
  }, async () => {
    for (const [i, phone] of phones.entries()) {
      const codes = await codesOf(phone);
      await goToStep(phone, "Names");
      await guess(phone, codes[i % 3] ?? "", "Saltreach Skerry");
      for (const other of codes.filter((one) => one !== codes[i % 3])) {
        await guess(phone, other, "Saltreach Tarn");
      }
      await saved(phone);
      await lockSheet(phone);
      await watcher.getByText(`${i + 1} of 4 sheets locked`).waitFor();
    }
    await look(watcher, "watcher");
    expect(await watcher.locator("main").innerText()).not.toMatch(/Skerry|Tarn|pear/);
    await host.getByRole("button", { name: "Send away Wren" }).click();
    await host.getByRole("alertdialog").getByRole("button", { name: "Send away" }).click();
    await watcher.getByRole("heading", { name: "The host closed this way in" }).waitFor();
    await look(watcher, "watcher, sent away");
    expect(table.troubles.takeAnswers(401) + table.troubles.takeAnswers(403)).toBeGreaterThan(0);
    await watcher.close();
    await host.getByRole("button", { name: "Reveal", exact: true }).click();
    for (const phone of phones) await phone.getByRole("link", { name: "Open the glasses" }).click();
    await host.getByText("You open them on all phones.").waitFor();
    for (const phone of phones) await phone.getByText("They open here when the host opens them").waitFor();
    await host.getByRole("button", { name: "Open the first glass" }).click();
    for (const phone of phones) await expect.poll(() => phone.locator(".opened-open").count(), POLL).toBe(1);
    await look(phones[1] ?? host, "reveal on a guest's phone");
    await host.getByRole("button", { name: "Open all" }).click();
    for (const phone of phones) await phone.getByText("Every glass is open.").waitFor();
    const finding = await table.api("getFinding", { at: { household, flight } });
    expect(finding.sheets.map(({ guessed }) => guessed)).toEqual([3, 3, 3, 3]);
    nothingWrong();
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

  async function codesOf(page: Page): Promise<readonly string[]> {
    return (await readBack(page)).sheet.glasses.map((glass) => glass.code);
  }

  /** Where the phone's own sheet is, and the token it holds. */
  async function own(page: Page | undefined) {
    if (page === undefined) throw new Error("a phone is needed");
    const [sheet, token] = await page.evaluate(() => {
      const name = Object.keys(localStorage).find((key) => key.startsWith("partsproof.token.sheet."));
      return [name?.split(".").at(-1) ?? "", localStorage.getItem(name ?? "") ?? ""];
    });
    return { at: { household, flight, sheet }, token };
  }

  /** The phone's own sheet as the house has it, asked with the phone's own token. */
  async function readBack(page: Page) {
    const asked = await own(page);
    return {
      sheet: await table.api("getSheet", asked),
      entries: (await table.api("listEntries", asked)).items,
    };
  }
});
