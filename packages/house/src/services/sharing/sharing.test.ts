import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import jsQR from "jsqr";
import { describe, expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient, RecipeFile, readRecipeLink, type SharedAs } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://house.test");
const example = new URL("../../../../../docs/saltreach-recipe.json", import.meta.url);
const recipe = RecipeFile.parse(JSON.parse(readFileSync(example, "utf8")));
const share = (as: SharedAs, more: object = {}) => client("shareRecipe", { body: { recipe, as, ...more } });
const { canonical } = await client("checkRecipe", { body: recipe });

/** The hostile among the texts that people type. */
const HOSTILE = `</script><img src=x onerror=alert(1)> "quoted" | pipe & 'one' \`tick\` [a](javascript:1)`;

describe("a link", () => {
  test("holds the canonical recipe behind #, compressed as RFC 1950 has it, whatever host stands before it", async () => {
    const { text, link } = await share("link", { address: "https://somewhere.example" });
    expect(text).toBe(link);
    const url = new URL(link);
    expect([url.origin, url.pathname, url.search]).toEqual(["https://somewhere.example", "/passed-on", ""]);
    // Node's own inflate and base64url read it: neither is ours.
    const packed = Buffer.from(url.hash.slice("#1.".length), "base64url");
    expect(inflateSync(packed).toString("utf8")).toBe(canonical);
    for (const pasted of [
      link,
      `see: <${link}>.`,
      link.replace("https://somewhere.example", "http://other.invalid:1"),
      url.hash.slice(1),
      `${link.slice(0, 90)}\r\n ${link.slice(90)}`,
    ])
      expect((await client("openRecipe", { body: { text: pasted } })).check.canonical).toBe(canonical);
  });

  test("cut short or changed anywhere it is refused, never read as another recipe", async () => {
    const { link } = await share("link");
    const from = link.indexOf("#1.") + 3;
    const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    for (let i = from; i < link.length - 1; i += 1) {
      const other = letters[(letters.indexOf(link[i] ?? "A") + 17) % 64] ?? "A";
      const changed = await readRecipeLink(`${link.slice(0, i)}${other}${link.slice(i + 1)}`);
      expect(changed.ok && changed.text !== canonical, `changed at ${i}`).toBe(false);
      expect((await readRecipeLink(link.slice(0, i))).ok, `cut at ${i}`).toBe(false);
    }
  });

  test("one that would unfold to gigabytes is given up at the limit; one with no recipe says what is missing", async () => {
    const { deflateSync } = await import("node:zlib");
    const bomb = deflateSync(Buffer.alloc(40_000_000)).toString("base64url");
    expect(await readRecipeLink(`#1.${bomb.slice(0, 60_000)}`)).toMatchObject({
      ok: false,
      code: "link_too_long",
    });
    for (const [text, code] of [
      ["https://house.example/passed-on", "link_not_found"],
      ["#1.AAAA", "link_damaged"],
      ["{", "json_unreadable"],
      [`{"format":"parts-and-proof/recipe"}`, "recipe_wrong"],
    ] as const) {
      const { status, issues } = await refusalOf(client("openRecipe", { body: { text } }));
      expect([status, issues[0]?.code, issues[0]?.path[0]]).toEqual([422, code, "text"]);
    }
  });
});

describe("a square code", () => {
  test("is read back by jsQR, which shares no code with what draws it", async () => {
    const { text, link, square } = await share("square");
    expect(square).toEqual({ fits: true, characters: link.length, most: 1273 });
    expect(readSquare(text)).toBe(link);
    expect(readSquare((await share("card")).text.replace(/.*<g transform="translate\(748[^>]*>/su, ""))).toBe(
      link,
    );
  });

  test("where the link is too long none is drawn, and that is said", async () => {
    const note = Array.from({ length: 900 }, (_, n) => ((n * 7919) % 1291).toString(36)).join(" ");
    const long = { ...recipe, note };
    const { issues } = await refusalOf(client("shareRecipe", { body: { recipe: long, as: "square" } }));
    expect(issues[0]?.code).toBe("square_too_small");
    const page = await client("shareRecipe", { body: { recipe: long, as: "html" } });
    expect(page.square.fits).toBe(false);
    expect(page.text).toContain("too long for a square code");
  });
});

describe("amounts", () => {
  test("for 700 mL at 46 % vol are the ones the reckoner fills such a bottle with", async () => {
    const parts = recipe.slots.map(({ parts: own, whiskey }) => ({
      parts: own,
      strength: { basis: "abv20" as const, value: whiskey?.abv ?? 0 },
    }));
    const filled = await client("reckonReduce", {
      body: { parts, to: { basis: "abv20", value: 46 }, fillMl: 700 },
    });
    const page = await share("html");
    const litres = [...page.text.matchAll(/data-litre="([^"]+)" data-unit="(mL|g)"/gu)].map(
      (found) => 0.7 * Number(found[1]),
    );
    const reckoned = [...(filled.parts ?? []), { ml: filled.waterMl, g: filled.waterG }];
    const { text } = await share("text");
    for (const [n, { ml, g }] of reckoned.entries()) {
      expect(litres[2 * n]).toBeCloseTo(ml, 6);
      expect(litres[2 * n + 1]).toBeCloseTo(g, 6);
      expect(text).toContain(`${ml.toFixed(0)} mL`);
    }
    expect(text).toMatch(/^Water: 1\d\d mL$/mu);
  });

  test("without a strength are parts alone, and nothing is said to be known", async () => {
    const bare = {
      ...recipe,
      slots: [
        { parts: 2, rule: "wheat >= 16 %" },
        { parts: 1, rule: "rye >= 51 %" },
      ],
    };
    const { text } = await client("shareRecipe", { body: { recipe: bare, as: "text", bottleMl: 90 } });
    expect(text).toContain("2 parts: Any whiskey that keeps the rule, 60 mL");
    expect(text).toContain("The strength of slot 1 is not known");
    expect(text).not.toMatch(/Water: \d/u);
    const weak = { ...recipe, waterTo: 80 };
    expect((await client("shareRecipe", { body: { recipe: weak, as: "text" } })).text).toMatch(
      /Water cannot take it to 80 % vol: it is 56\.\d % vol/u,
    );
  });
});

describe("a page", () => {
  test("fetches nothing, runs only what its policy names, and is read again as the recipe", async () => {
    const { text, name, type } = await share("html");
    expect([name, type]).toEqual(["lamplighter-s-rest-come-close-to.html", "text/html;charset=utf-8"]);
    expect(text).toContain("default-src 'none'");
    expect(text).not.toMatch(/unsafe|<link|<img|@import|url\(|fetch\(|XMLHttp/u);
    const { createHash } = await import("node:crypto");
    const hash = (part: string): string => `'sha256-${createHash("sha256").update(part).digest("base64")}'`;
    const inside = (of: RegExp): string => of.exec(text)?.[1] ?? "";
    expect(text).toContain(`script-src ${hash(inside(/<script>([^]*?)<\/script>/u))}`);
    expect(text).toContain(`style-src ${hash(inside(/<style>([^]*?)<\/style>/u))}`);
    expect(text.length).toBeLessThan(32_000);
    expect((await client("openRecipe", { body: { text } })).check.canonical).toBe(canonical);
  });

  test("texts of a recipe stay texts in every form: no mark-up, no script, nothing lost", async () => {
    const credits = [HOSTILE.slice(0, 100)];
    const hostile = { ...recipe, name: HOSTILE.slice(0, 110), note: HOSTILE, credits };
    const as = async (kind: SharedAs) =>
      (await client("shareRecipe", { body: { recipe: hostile, as: kind } })).text;
    const page = await as("html");
    expect(page.match(/<img/gu)).toBeNull();
    expect(page.match(/<script/gu)).toHaveLength(2);
    expect((await client("openRecipe", { body: { text: page } })).recipe).toEqual(hostile);
    expect(await as("card")).not.toMatch(/<img|<script/u);
    expect(await as("markdown")).not.toMatch(/(?<!\\)<img|(?<!\\)\]\(javascript/u);
    expect((await client("openRecipe", { body: { text: await as("text") } })).recipe).toEqual(hostile);
  });
});

test("a card is SVG of 1080 by 1350 with every slot on it, of up to twelve", async () => {
  const { text, type } = await share("card");
  expect(type).toBe("image/svg+xml");
  expect(text).toContain('viewBox="0 0 1080 1350"');
  for (const { whiskey } of recipe.slots) expect(text).toContain(`${whiskey?.maker} ${whiskey?.name}`);
  const twelve = {
    ...recipe,
    slots: Array.from({ length: 12 }, (_, n) => ({ parts: n + 1, whiskey: { name: `Whiskey ${n}` } })),
  };
  const many = await client("shareRecipe", { body: { recipe: twelve, as: "card" } });
  expect(many.text.match(/Whiskey \d/gu)).toHaveLength(12);
});

/** A drawn code as pixels, four a module, and what jsQR reads of it. */
function readSquare(svg: string): string | undefined {
  const size = Number(/viewBox="0 0 (\d+)|<rect width="(\d+)"/u.exec(svg)?.slice(1).find(Boolean));
  const side = 4 * size;
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  const path = /<path d="(M\d+ \d+\.5[^"]*)" stroke/u.exec(svg)?.[1] ?? "";
  let [x, y] = [0, 0];
  for (const [, how, one = "", two = ""] of path.matchAll(/([Mmh])(\d+)(?: ([\d.]+))?/gu)) {
    if (how === "M") [x, y] = [Number(one), Math.floor(Number(two))];
    else if (how === "m") x += Number(one);
    else
      for (const to = x + Number(one); x < to; x += 1)
        for (let pixel = 0; pixel < 16; pixel += 1) {
          const at = (4 * y + (pixel >> 2)) * side + 4 * x + (pixel & 3);
          data.fill(0, 4 * at, 4 * at + 3);
        }
  }
  return jsQR.default(data, side, side)?.data;
}
