import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Client, createClient, readRecipeLink } from "@partsproof/house/protocol";
import { type SpawnedServer, spawnServer } from "@partsproof/testkit";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { Looks } from "./fixtures/looks.ts";
import { openBrowser, openDevice, PHONE } from "./fixtures/own-browser.ts";
import { picture } from "./fixtures/picture.ts";
import { Troubles } from "./fixtures/troubles.ts";

const CASE_MS = 240_000;
const POLL = { timeout: 45_000, interval: 100 };
const oak = { casks: [{ species: "American oak" as const, held: "nothing" }] };
const rye = { kind: "rye" as const, grains: [{ grain: "rye", percent: 100 }] };

/** One house: its own data folder, its own port. */
class Kitchen {
  readonly folder = mkdtempSync(join(tmpdir(), "partsproof-pass-on-"));
  server: SpawnedServer | null = null;
  household = "";

  async open(): Promise<void> {
    this.server = await spawnServer({ PARTSPROOF_DATA: this.folder });
  }
  async stop(): Promise<void> {
    await this.server?.end("SIGTERM");
    this.server = null;
  }
  get address(): string {
    return this.server?.address ?? "";
  }
  get api(): Client {
    return createClient(fetch, this.address);
  }
  get at(): { readonly household: string } {
    return { household: this.household };
  }
  /** A whiskey with what it tastes of and a full bottle; its id. */
  async bottle(name: string, value: number, honey: number, more: object = {}): Promise<string> {
    const profile = { tastedAt: null, intensities: { "sweet.honey": honey, "spice.sharp": 10 - honey } };
    const strength = { basis: "abv20" as const, value };
    const body = { maker: "Saltreach", name, strength, profile, ...more };
    const { id } = await this.api("addWhiskey", { at: this.at, body });
    await this.api("addBottle", { at: this.at, body: { whiskeyId: id } });
    return id;
  }
}

describe("a recipe passed on from kitchen to kitchen, in a real browser", () => {
  const [first, second] = [new Kitchen(), new Kitchen()];
  const [looks, troubles] = [new Looks(), new Troubles()];
  let browser: Browser;
  let page: Page;
  let recipe = "";
  let link = "";
  let result = "";

  const look = async (screen: string): Promise<void> => {
    await looks.over(page, screen);
    const name = screen.replaceAll(/[^a-z0-9]+/g, "-");
    await picture(page, name);
    if (process.env["PARTSPROOF_PICTURES"] !== "1") return;
    await page.emulateMedia({ colorScheme: "dark" });
    await page.setViewportSize({ width: 1280, height: 800 });
    await picture(page, `${name}-dark`);
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize(PHONE);
  };
  const heading = (name: string | RegExp) => page.getByRole("heading", { level: 1, name }).waitFor();
  const at = async (kitchen: Kitchen, who: string): Promise<void> => {
    await page?.context().close();
    page = await openDevice(browser, kitchen.address, { who, viewport: PHONE, troubles });
  };

  beforeAll(async () => {
    browser = await openBrowser();
    await first.open();
    first.household = (await first.api("addHousehold", { body: { name: "Lamp Street" } })).id;
    const [lamp, wick] = [
      await first.bottle("Lamp", 58, 7, oak),
      await first.bottle("Wick", 54, 2, { ...rye, maker: "Ninepenny Mill" }),
    ];
    await first.bottle("Dim", 43, 1, oak);
    const slots = [
      { parts: 2, of: { kind: "whiskey" as const, whiskeyId: lamp } },
      { parts: 1, of: { kind: "whiskey" as const, whiskeyId: wick } },
    ];
    const body = { name: "Towards the Lamp", slots, restDays: 21 };
    recipe = (await first.api("addRecipe", { at: first.at, body })).id;
  }, 240_000);
  afterAll(async () => {
    await browser.close();
    for (const kitchen of [first, second]) {
      await kitchen.stop();
      rmSync(kitchen.folder, { recursive: true, force: true });
    }
  }, 60_000);

  it("rules are said by tapping, and the loosest is found", { timeout: CASE_MS }, async () => {
    await at(first, "Lamp Street");
    await comeTo(page, `/h/${first.household}/recipes/${recipe}`);
    await page.getByRole("link", { name: "Give it rules" }).click();
    await heading("Rules of Towards the Lamp");
    const say = (line: number) => page.getByRole("group", { name: `Say something more of line ${line}` });
    await say(1).getByRole("button", { name: "Strength" }).click();
    await page.getByRole("button", { name: "Add it" }).click();
    await say(1).getByRole("button", { name: "Wood of its casks" }).click();
    await page.getByText("only American oak").waitFor();
    await page.getByRole("button", { name: "Add it" }).click();
    await say(2).getByRole("button", { name: "Grain" }).click();
    await page.getByLabel("Which grain").fill("rye");
    await page.getByRole("spinbutton", { name: "% of the mash" }).fill("51");
    await page.getByRole("button", { name: "Add it" }).click();
    await page.getByLabel("Why it stands here").first().fill("the weight of it");
    await page.getByLabel("Within").selectOption("1");
    await page.getByRole("button", { name: "Find the loosest rules" }).click();
    await page.getByRole("list", { name: "The loosest rules" }).waitFor();
    await look("rules of a recipe");
    await page.getByRole("button", { name: "Save as the next version" }).click();
    await heading("Towards the Lamp");
    await page.getByText("or: 55 % or stronger, only American oak").waitFor();
    await page.getByText("or: rye >= 51 %").waitFor();
    const file = await first.api("exportRecipe", {
      at: { ...first.at, recipe },
      body: { credits: ["Wren"] },
    });
    // The link names an address that nobody has.
    const shared = await first.api("shareRecipe", {
      body: { recipe: file, as: "link", address: "https://elsewhere.example" },
    });
    link = shared.link;
    expect(link).toMatch(/^https:\/\/elsewhere\.example\//);
  });

  it("a second house takes it in while the first is stopped, fills it from its own shelf and makes it", {
    timeout: CASE_MS,
  }, async () => {
    await first.stop();
    await second.open();
    second.household = (await second.api("addHousehold", { body: { name: "Harbour Street" } })).id;
    await second.bottle("Beam", 57, 6, oak);
    await second.bottle("Weak", 40, 6, oak);
    await second.bottle("Unsaid", 60, 6);
    await second.bottle("Furrow", 50, 3, { ...rye, maker: "Dunnage Row" });
    await at(second, "Harbour Street");
    // Opened at its own house, the recipe goes from the link to the page that looks at it, and out of the address.
    await page.goto(link.replace("https://elsewhere.example", ""));
    await page.getByText("This adds one recipe.").waitFor();
    expect(page.url()).not.toContain("#");
    await comeTo(page, `/h/${second.household}/recipes`);
    await page.getByRole("link", { name: "Take in" }).first().click();
    await heading("Take in");
    await page.getByLabel("What you were sent").fill(`Try this: ${link} !`);
    await page.getByRole("button", { name: "Look at it" }).click();
    await page.getByText("This adds one recipe.").waitFor();
    await look("a recipe before it is taken in");
    expect((await second.api("listRecipes", { at: second.at })).items).toEqual([]);
    await page.getByRole("button", { name: "Take in the recipe" }).click();
    await heading("Towards the Lamp");
    await page.getByRole("link", { name: "Fill it from your shelf" }).click();
    await heading("Fill Towards the Lamp from your shelf");
    await page.getByText("Proven: nothing on this shelf comes closer.").waitFor();
    await page.getByText(/nobody has written down its casks/).waitFor();
    await page.getByText("Why 2 others cannot").first().click();
    await page.getByText("55 % or stronger (it is 40)").waitFor();
    await look("a recipe filled from the shelf");
    await page.getByRole("button", { name: "Make a batch of it" }).click();
    await heading("Make a batch");
    await page.getByLabel("Volume at the end").fill("300 mL");
    const poured = page.getByLabel(/^Really poured of/).first();
    await expect.poll(async () => Math.round(Number(await poured.inputValue())), POLL).toBe(200);
    await page.getByLabel("Name of the batch").fill("Harbour's own");
    await page.getByLabel("Its label").fill("Green flask");
    await page.getByLabel("It holds").fill("350 mL");
    await page.getByRole("button", { name: "Record the batch" }).click();
    await page.getByRole("heading", { level: 1, name: "Harbour's own" }).waitFor();
  });

  it("tasters there put it in order, and what came of it is written to be sent back", {
    timeout: CASE_MS,
  }, async () => {
    const [batch] = (await second.api("listBatches", { at: second.at })).items;
    const vessels = (await second.api("listVessels", { at: second.at })).items;
    const others = vessels.filter(({ kind, batchId }) => kind === "bottle" && batchId === null).slice(0, 2);
    const tasters: string[] = [];
    for (const name of ["Ash", "Fern"])
      tasters.push((await second.api("addTaster", { at: second.at, body: { name } })).id);
    const { flight, hostToken, pourerToken } = await second.api("addFlight", {
      at: second.at,
      body: {
        name: "Thursday",
        question: "like_best",
        pouring: "someone else",
        pourer: "Pat",
        pourMl: 10,
        tasterIds: tasters,
        glasses: [{ vesselId: batch?.vesselId ?? "" }, ...others.map(({ id }) => ({ vesselId: id }))],
      },
    });
    const here = { ...second.at, flight: flight.id };
    await second.api("markPoured", { at: here, token: pourerToken ?? "" });
    const { sheets } = await second.api("getFlight", { at: here });
    for (const { sheetId } of sheets) {
      const own = { ...here, sheet: sheetId };
      const { sheet, token } = await second.api("takeSheet", { at: own, body: { ofLegalAge: true } });
      const ranking = sheet.glasses.map(({ code }) => [code]);
      await second.api("editSheet", { at: own, token, body: { version: sheet.version, ranking } });
      const { version } = await second.api("getSheet", { at: own, token });
      await second.api("lockSheet", { at: own, token, body: { version } });
    }
    await second.api("revealFlight", { at: here, token: hostToken, body: {} });

    const filled = (await second.api("listRecipes", { at: second.at })).items.find(({ name }) =>
      name.endsWith("from this shelf"),
    );
    await comeTo(page, `/h/${second.household}/recipes/${filled?.id ?? ""}/results`);
    await page.getByLabel(/What your kitchen is to be called/).fill("Harbour Street");
    await page.getByLabel(/What you say of it/).fill("Rounder than we thought.");
    await page.getByRole("button", { name: "Write the result" }).click();
    await page.getByText("It holds 2 rankings of one flight.").waitFor();
    await look("a result to be sent back");
    result = await page.getByLabel("The result, to be sent").inputValue();
    // A link, all of it behind the #. Nobody who tasted is named in it, nor who lives there.
    const read = await readRecipeLink(result);
    expect(read.ok && read.text).toContain("Rounder than we thought.");
    expect(read.ok && read.text).not.toMatch(/Ash|Fern|Pat|Thursday/);
  });

  it("the first house sees it pooled", { timeout: CASE_MS }, async () => {
    await second.stop();
    await first.open();
    await at(first, "Lamp Street");
    await comeTo(page, `/h/${first.household}/take-in`);
    await page.getByLabel("What you were sent").fill(`What we made of it: ${result} (Harbour Street)`);
    await page.getByRole("button", { name: "Look at it" }).click();
    await page.getByText("Rounder than we thought.").waitFor();
    await look("a result before it is taken in");
    await page.getByRole("button", { name: "Take in the result of Towards the Lamp" }).click();
    await heading("Towards the Lamp in other kitchens");
    await page.getByRole("heading", { level: 2, name: "Harbour Street" }).waitFor();
    await page.getByText(/^In one kitchen: \d of 2 sheets liked it best; luck alone gives 0\.7/).waitFor();
    await look("what kitchens found");
    const pooled = await first.api("getRecipeResults", { at: { ...first.at, recipe } });
    expect(pooled.liked).toMatchObject({ sheets: 2, tasters: 2, flights: 1 });
    expect(pooled.kitchens[0]?.slots.map(({ label }) => label)).toEqual([
      "Saltreach Beam",
      "Dunnage Row Furrow",
    ]);
    expect(looks.take()).toStrictEqual([]);
    expect(troubles.take()).toStrictEqual([]);
  });
});
