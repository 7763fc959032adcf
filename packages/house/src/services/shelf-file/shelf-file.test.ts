import { readdirSync, readFileSync } from "node:fs";
import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { decodeText, type ShelfListDraft, type ShelfListPreview } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const folder = new URL("fixtures/lists/", import.meta.url);
const listed = (start: string): string => {
  const file = readdirSync(folder).find((name) => name.startsWith(start)) ?? start;
  return decodeText(readFileSync(new URL(file, folder))).text;
};

/** A file as people have it: strengths by line, what is wrong by line, and how else a row came out. Lists are of invented whiskeys. */
interface Case {
  readonly file: string;
  readonly strengths: readonly (string | null)[];
  readonly wrong?: readonly string[];
  readonly rows?: readonly object[];
  readonly how?: Partial<ShelfListDraft>;
}
const cases: readonly Case[] = [
  {
    file: "01",
    strengths: ["58.9%", "59.03%", "46%"],
    rows: [
      { whiskey: { kind: "pot still", ageYears: 9, priceMinor: 7400 } },
      { whiskey: { release: "6 years", priceMinor: 6150 } },
    ],
  },
  {
    file: "02",
    strengths: ["58.9%", "59.03%", "46%"],
    rows: [
      { capacityMl: 700, whiskey: { priceMinor: 7400 } },
      { whiskey: { priceMinor: 106_150 } },
      { capacityMl: 350 },
    ],
  },
  {
    file: "03",
    strengths: ["58.9%", "46%"],
    rows: [{ capacityMl: 700, whiskey: { note: "Kettle, always full" } }],
  },
  {
    file: "04",
    strengths: ["117.8p", "92p"],
    rows: [{ whiskey: { maker: "Bellharrow", name: "Full Kettle" } }],
  },
  {
    file: "05",
    strengths: ["51.2%", "46%"],
    rows: [{ whiskey: { maker: "Grænvik Stillære", name: "Første Lys", priceMinor: 8800 } }],
  },
  {
    file: "06",
    strengths: ["46.5%", "61.2%"],
    rows: [{ whiskey: { maker: "Mühlfuß", name: "Süßes Säckchen" } }, { capacityMl: 500 }],
  },
  { file: "07", strengths: ["117.8p", "59.03%", "92p", "46%", null, "105p"], wrong: ["6 strength_either"] },
  {
    file: "08",
    strengths: ["58.9%", "46%", "46%", null],
    wrong: ["5 date_unreadable"],
    rows: [
      { openedOn: "2024-03-31", levelMl: 420 },
      { openedOn: "2023-12-31", levelMl: 350 },
      { openedOn: null, levelMl: 700 },
    ],
  },
  { file: "09", strengths: ["58.9%", "46%"], rows: [{ line: 3 }, { line: 5 }] },
  {
    file: "10",
    strengths: ["58.9%", "59.03%", null],
    wrong: ["7 strength_missing"],
    rows: [
      {
        line: 2,
        whiskey: { name: 'Full "Copper" Kettle', note: 'Nose: pear,\r\nthen wax.\r\n\r\nPalate: "big"' },
      },
      { whiskey: { maker: "Dunnage Row, Ltd" } },
    ],
  },
  {
    file: "11",
    strengths: ["80p", "92p"],
    rows: [
      { capacityMl: 700, levelMl: 350 },
      { capacityMl: 750, levelMl: 750, whiskey: { ageYears: null } },
    ],
  },
  { file: "12", strengths: ["58.9%", "46%"], rows: [{ levelMl: 350 }], wrong: [] },
  {
    file: "13",
    strengths: ["117.8p", "118.06p", "92p", "90p"],
    rows: [{ capacityMl: 751.168 }, { capacityMl: 1750 }, { capacityMl: 375 }, { capacityMl: 1750 }],
  },
  {
    file: "14",
    strengths: ["58.9%", "59%", "46%", "46%", null, null],
    wrong: ["6 left_either", "7 left_over_bottle"],
    rows: [
      { levelMl: 700, openedOn: null },
      { levelMl: 350, openedOn: "not known" },
      { levelMl: 233.333 },
      { levelMl: 0 },
    ],
  },
  {
    file: "15",
    strengths: ["58.9%", "59%", null, "46%"],
    wrong: ["4 date_none"],
    rows: [{ openedOn: "2023-12-31" }, { openedOn: "2024-04-03" }, {}, { openedOn: "2024-03-05" }],
  },
  {
    file: "16",
    strengths: [null, "59%", "46%"],
    wrong: ["2 date_either"],
    rows: [{}, { openedOn: "2024-05-05" }, { openedOn: "not known" }],
  },
  {
    file: "16",
    how: { dates: "mdy" },
    strengths: ["58.9%", "59%", "46%"],
    rows: [{ openedOn: "2024-03-04" }],
  },
  {
    file: "17",
    strengths: ["58.9%", "59%", null, "46%", null],
    wrong: ["4 currency_other", "6 price_unreadable"],
    rows: [
      { whiskey: { priceMinor: 7400 } },
      { whiskey: { priceMinor: 6150 } },
      {},
      { whiskey: { priceMinor: 123_450 } },
    ],
  },
  {
    file: "18",
    strengths: ["58.9%", "59%", null],
    wrong: ["4 strength_unreadable"],
    rows: [{ whiskey: { name: '=HYPERLINK("http://a.invalid","Full Kettle")', note: "+1 on this" } }],
  },
  {
    file: "19",
    strengths: ["58.9%", null, null, null, null, null],
    wrong: [
      "3 cells_many",
      "4 name_missing",
      "5 strength_missing",
      "6 strength_unreadable",
      "6 volume_unreadable",
      "6 age_unreadable",
      "7 strength_out_of_range",
    ],
  },
  {
    file: "20",
    strengths: ["58.9%", "58.9%", "46%", null],
    wrong: ["6 count_unreadable"],
    rows: [
      { line: 3, bottles: 2, levelMl: 420, same: null },
      { same: { whiskeyId: null, line: 3 } },
      { bottles: 3 },
    ],
  },
  {
    file: "21",
    strengths: ["58.9%", "59%", null],
    wrong: ["4 grains_not_100"],
    rows: [
      {
        whiskey: {
          availability: "gone",
          place: "Saltreach Island, the north",
          casks: [
            { species: "not known", held: "bourbon" },
            { species: "European oak", held: "sherry" },
          ],
          grains: [
            { grain: "barley", percent: 60 },
            { grain: "malt", percent: 40 },
          ],
        },
      },
      { whiskey: { place: null, casks: [{ species: "not known", held: "nothing" }] } },
    ],
  },
];

const said = ({ rows }: ShelfListPreview): (string | null)[] =>
  rows.map(({ whiskey }) =>
    whiskey === null ? null : `${whiskey.strength.value}${whiskey.strength.basis === "abv20" ? "%" : "p"}`,
  );

const place = async (house: TemporaryHouse): Promise<{ household: string }> => ({
  household: (await house.client("addHousehold", { body: { name: "Invented", currency: "EUR" } })).id,
});

describe("I1: a list as people have it, looked at", async () => {
  test.each(cases)("$file $how", async ({ file, strengths, wrong = [], rows = [], how = {} }) => {
    await using house = await temporaryHouse("sqlite");
    const at = await place(house);
    const preview = await house.client("previewShelfList", { at, body: { text: listed(file), ...how } });
    expect(preview.issues).toEqual([]);
    expect(said(preview)).toEqual(strengths);
    const found = preview.rows.flatMap(({ issues }) => issues.map(({ path, code }) => `${path[1]} ${code}`));
    expect(found).toHaveLength(wrong.length);
    for (const [n, one] of wrong.entries()) expect(found[n]).toBe(one);
    for (const [n, row] of rows.entries()) expect(preview.rows[n]).toMatchObject(row);
    // Looking writes nothing.
    expect((await house.client("listWhiskeys", { at, query: {} })).items).toEqual([]);
  });

  test("a quote that is never closed, no names, no strengths: refused as a whole with their place", async () => {
    await using house = await temporaryHouse("sqlite");
    const at = await place(house);
    const codes = async (text: string) =>
      (await house.client("previewShelfList", { at, body: { text } })).issues.map(({ code, received }) => [
        code,
        received,
      ]);
    expect(await codes(listed("22"))).toEqual([["quote_open", "an open one from line 3"]]);
    expect(await codes("a,b\n1,2\n")).toEqual([
      ["column_missing", "a, b"],
      ["column_missing", "a, b"],
    ]);
    expect(await codes("Name,ABV\n")).toEqual([["rows_none", 1]]);
    const many = `Name,ABV\n${"S,40\n".repeat(5001)}`;
    expect(await codes(many)).toEqual([["rows_many", 5001]]);
  });
});

eachDatabase((database) => {
  describe(`I2: a list taken in (${database})`, () => {
    test("what was seen is written, in one go: whiskeys once, bottles each, with what is left in them", async () => {
      await using house = await temporaryHouse(database);
      const at = await place(house);
      const body = { text: listed("20") };
      const { sha256 } = await house.client("previewShelfList", { at, body });
      const taken = await house.client("acceptShelfList", { at, body: { ...body, sha256 } });
      expect(taken).toEqual({ whiskeys: 2, bottles: 6, left: [6] });
      const vessels = (await house.client("listVessels", { at, query: {} })).items;
      const volumes = vessels.map(({ contents }) => Math.round(contents.volumeMl)).toSorted((a, b) => a - b);
      expect(volumes).toEqual([350, 420, 700, 700, 700, 700]);
      // Once more: the whiskeys are there, only bottles are added.
      const again = await house.client("previewShelfList", { at, body });
      expect(again.newWhiskeys).toBe(0);
      expect(again.rows[0]?.same?.whiskeyId).toMatch(/^[0-9a-z]{26}$/u);
    });

    test("another list than the one that was seen, or a wrong row asked for, writes nothing", async () => {
      await using house = await temporaryHouse(database);
      const at = await place(house);
      const body = { text: listed("07") };
      const { sha256 } = await house.client("previewShelfList", { at, body });
      const other = await refusalOf(
        house.client("acceptShelfList", { at, body: { text: listed("01"), sha256 } }),
      );
      expect([other.status, other.issues[0]?.code]).toEqual([409, "preview_changed"]);
      const wrong = await refusalOf(
        house.client("acceptShelfList", { at, body: { ...body, sha256, lines: [2, 6] } }),
      );
      expect([wrong.status, wrong.issues[0]?.code, wrong.issues[0]?.path]).toEqual([
        422,
        "strength_either",
        ["line", 6, "strength"],
      ]);
      expect((await house.client("listWhiskeys", { at, query: {} })).items).toEqual([]);
    });

    test("I6: the shelf goes out as a list that a spreadsheet runs nothing of, and comes in as it was", async () => {
      await using house = await temporaryHouse(database);
      const at = await place(house);
      for (const file of ["18", "21", "10", "14"]) {
        const body = { text: listed(file) };
        const { sha256 } = await house.client("previewShelfList", { at, body });
        await house.client("acceptShelfList", { at, body: { ...body, sha256 } });
      }
      const { text } = await house.client("exportShelf", { at, query: {} });
      expect(text.startsWith("\uFEFF")).toBe(true);
      for (const cell of text.split(/[,\n]/u)) expect(cell).not.toMatch(/^"?[=+@]/u);
      const json = await house.client("exportShelf", { at, query: { as: "json" } });
      const second = {
        household: (await house.client("addHousehold", { body: { name: "Second", currency: "EUR" } })).id,
      };
      const { sha256, wrong } = await house.client("previewShelfList", { at: second, body: { text } });
      expect(wrong).toBe(0);
      await house.client("acceptShelfList", { at: second, body: { text, sha256 } });
      const back = await house.client("exportShelf", { at: second, query: { as: "json" } });
      const bare = (shelf: string) =>
        JSON.parse(shelf, (key, value) =>
          key === "openedAt" && value !== null ? String(value).slice(0, 10) : value,
        );
      expect(bare(back.text)).toEqual(bare(json.text));
    });
  });
});
