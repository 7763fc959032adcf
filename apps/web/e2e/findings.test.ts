import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comeTo } from "./fixtures/come-to.ts";
import { picture } from "./fixtures/picture.ts";
import { type Evening, startEvening } from "./fixtures/start-evening.ts";

const CASE_MS = 120_000;

describe("what flights say together, in a real browser", () => {
  let evening: Evening;
  let page: Page;
  let home = "";
  let ids: Readonly<Record<"flight" | "recipe" | "whiskey" | "taster", string>>;

  beforeAll(async () => {
    evening = await startEvening();
    page = await evening.phone("blender");
    const { id: household } = await evening.api("loadDemo", {});
    const at = { household };
    const named = (all: readonly { readonly id: string; readonly name: string }[], name: string): string =>
      all.find((one) => one.name.includes(name))?.id ?? "";
    const findings = (await evening.api("listFindings", { at })).items;
    home = `/h/${household}/findings`;
    ids = {
      flight: findings.find(({ name }) => name === "Beside the Lamp")?.flightId ?? "",
      recipe: named((await evening.api("listRecipes", { at })).items, "Wick and Rye"),
      whiskey: named((await evening.api("listWhiskeys", { at, query: { limit: 200 } })).items, "Lamplighter"),
      taster: named((await evening.api("listTasters", { at })).items, "Tamsel"),
    };
  }, 240_000);
  afterAll(() => evening.end(), 60_000);

  const saved = async (button: string): Promise<{ name: string; bytes: Buffer }> => {
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: button }).first().click();
    const download = await coming;
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };

  it("every page states its finding, says that it is invented, and is sound at every size", {
    timeout: CASE_MS,
  }, async () => {
    const pages: readonly (readonly [string, string, RegExp])[] = [
      ["flight", `/${ids.flight}`, /Lamplighter.* ranked first/],
      ["recipe", `/recipes/${ids.recipe}`, /Wick and Rye is .* liked less than/],
      ["whiskey", `/whiskeys/${ids.whiskey}`, /named right in 3 of 8 glasses, which could well be luck/],
      ["taster", `/tasters/${ids.taster}`, /Tamsel named 10 of 17 glasses right/],
      ["league", "/league", /is (perhaps|likely) the best liked of the 3/],
      ["write-up", `/${ids.flight}/write-up`, /Write-up: Beside the Lamp/],
    ];
    for (const [name, path, title] of pages) {
      await comeTo(page, home + path);
      await page.getByRole("heading", { level: 1, name: title }).waitFor();
      await page.locator(".drawn").first().waitFor();
      await page
        .getByText(/^Invented/)
        .first()
        .waitFor();
      // A flight's finding is looked over where the evening is played; a whiskey's is made of the parts of a recipe's.
      if (name === "taster") {
        // Blind spots stand as a figure and, a tap away, as a table.
        const gaps = page
          .getByRole("region", { name: /^Blind spots/ })
          .or(page.locator("section", { hasText: "Blind spots, and words" }));
        await gaps.getByText("As a table, and as files").first().click();
        await gaps
          .getByRole("columnheader", { name: /^Tamsel, of \d+/ })
          .first()
          .waitFor();
      }
      if (name !== "flight" && name !== "whiskey") await evening.looks.over(page, `finding of a ${name}`);
      await picture(page, `finding-${name}`);
    }
    expect(evening.looks.take()).toStrictEqual([]);
  });

  it("a figure and the write-up are saved as files that stand alone", { timeout: CASE_MS }, async () => {
    await comeTo(page, `${home}/league`);
    await page.getByText("As a table, and as files").first().click();
    await page.getByRole("columnheader", { name: "Log worth" }).waitFor();
    const svg = await saved("Save as SVG");
    expect(svg.name).toBe("league-worths.svg");
    expect(svg.bytes.toString()).toMatch(
      /^<svg xmlns[\s\S]*<title>[^<]*best liked of the 3 \([^<]*<\/title>[\s\S]*<\/svg>$/,
    );
    const png = await saved("Save as PNG");
    // The signature of PNG (ISO/IEC 15948, 5.2), and a picture as wide as it was drawn, twice over.
    expect([...png.bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect(png.bytes.readUInt32BE(16)).toBe(2 * (720 + 32));
    const csv = await saved("Save as CSV");
    expect(csv.bytes.toString().split("\r\n")).toHaveLength(5);
    await page.goto(`${home}/${ids.flight}/write-up`);
    const file = await saved("Save as one file");
    expect(file.name).toBe("beside-the-lamp.html");
    const html = file.bytes.toString();
    expect(html).not.toMatch(/<script|<link|src=|https?:\/\/(?!www\.w3\.org\/)/);
    // Opened by itself it shows the same, and asks nobody for anything.
    const alone = await evening.phone("reader");
    const asked: string[] = [];
    alone.on("request", (request) => asked.push(request.url()));
    await alone.setContent(html);
    await alone.getByRole("heading", { name: "Beside the Lamp" }).waitFor();
    await alone.getByText(/made up/).waitFor();
    expect(asked.filter((url) => !url.startsWith("data:"))).toEqual([]);
    expect(evening.troubles.take()).toStrictEqual([]);
  });

  it("numbers from elsewhere: a file is refused at its place and then shown, counts are typed in, chosen numbers weighed", {
    timeout: CASE_MS,
  }, async () => {
    await page.goto(home);
    await page.getByRole("link", { name: "Numbers from elsewhere" }).click();
    const said = page.locator(".counts-told");
    const file = page.locator("input[type=file]");
    await file.setInputFiles({
      name: "rankings.json",
      mimeType: "application/json",
      buffer: Buffer.from('{ "items": ["A", "B"],\n "rankings": [\n [["A"], ["C"]]\n ] }'),
    });
    await page.getByRole("button", { name: "Say what it shows" }).click();
    await page.getByRole("button", { name: /^Line 3: .*one of the items/ }).click();
    const box = page.getByRole("textbox", { name: "What rankings.json holds" });
    expect(
      await box.evaluate((area: HTMLTextAreaElement) =>
        area.value.slice(area.selectionStart, area.selectionEnd),
      ),
    ).toBe('"C"');
    await box.fill("{");
    await page.getByRole("button", { name: "Say what it shows" }).click();
    await page.getByText(/requires JSON/).waitFor();
    await page.getByRole("button", { name: "Show an example" }).click();
    await page.getByRole("button", { name: "Say what it shows" }).click();
    await said.getByText("The agreement is hard to put down to luck").waitFor();
    // The words and the digits are the command line's: docs/guide/command-line.md.
    await said.getByText("8.8983, 3 df, p = 0.02324 (exact)").waitFor();
    await evening.looks.over(page, "numbers: rankings");
    await picture(page, "counts-rank");
    expect(JSON.parse((await saved("Save the answer as JSON")).bytes.toString())).toMatchObject({
      rankings: 6,
    });
    for (const [tab, button, found] of [
      ["Pairs", "Say what it shows", /chosen more often than Beside the Lamp/],
      ["Mixture", "Say what it shows", /malt:rye and malt:wheat give more than the parts/],
      ["Differ", "Say what it shows", /10 of 15 right: that is very hard to put down to luck/],
      ["Match", "Say what it shows", /9 of 20 right/],
      [
        "Could show",
        "Say what it could show",
        /12 answers find a difference that 50 % can tell in 63 in 100 cases/,
      ],
    ] as const) {
      await page.getByRole("link", { name: tab, exact: true }).click();
      if (tab === "Pairs" || tab === "Mixture")
        await page.getByRole("button", { name: "Show an example" }).click();
      await page.getByRole("button", { name: button }).click();
      await said.getByText(found).first().waitFor();
      await picture(page, `counts-${tab.toLowerCase().replace(" ", "-")}`);
    }
    await evening.looks.over(page, "numbers: could show");
    await page.getByLabel("Answers there will be").fill("0");
    await page.getByRole("button", { name: "Say what it could show" }).click();
    await page
      .getByRole("alert")
      .getByText(/requires/)
      .first()
      .waitFor();
    expect(evening.looks.take()).toStrictEqual([]);
    // What was refused: a name that is no item, and no answers at all.
    expect(evening.troubles.takeAnswers(422)).toBe(2);
    expect(evening.troubles.take()).toStrictEqual([]);
  });
});
