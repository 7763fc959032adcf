import { MOST_SHEET_WORDS, type LearnedWord, type Meaning } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import { knownFlight, knownSheet, needState, needToken } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";
import type { Records } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { SheetRow, TaughtWordRow } from "../rows.ts";
import { needTeachable, tooManyWords } from "./teachable.ts";
import { nextNumber, wordsOf } from "./words-of.ts";

/** V6: words taught at the table are their sheet's own until the reveal. */
export const sheetWordHandlers: Handlers<"teachAtSheet" | "getSheetWords"> = {
  getSheetWords: ({ house, at, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      if (flight.state !== "revealed") await needToken(token, sheet.tokenHash);
      return { items: await readBy(records, sheet, await taughtOn(records, sheet)) };
    }),

  teachAtSheet: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await knownSheet(records, flight, at);
      await needToken(token, sheet.tokenHash);
      const own = await taughtOn(records, sheet);
      const { key, phrase, means } = body;
      const before = own.find((row) => row.key === key);
      if (before !== undefined) {
        if (before.phrase !== phrase || before.means !== means) keyReused(key);
        return { items: await readBy(records, sheet, own) };
      }
      if (flight.state !== "revealed") needState(flight, "teaching a word on a sheet", "tasting");
      if (sheet.state !== "open") sheetShut(sheet);
      if (means !== null) needTeachable(phrase);
      const phrases = new Set(own.map((row) => row.phrase));
      if (!phrases.has(phrase) && phrases.size >= MOST_SHEET_WORDS)
        tooManyWords(MOST_SHEET_WORDS, "a sheet", phrases.size);
      const row: TaughtWordRow = {
        ...born(house, at.household),
        number: await nextNumber(records, at.household),
        phrase,
        means,
        tasterId: sheet.tasterId,
        flightId: flight.id,
        sheetId: sheet.id,
        key,
      };
      await records.insert("taughtWord", row);
      return { items: await readBy(records, sheet, [...own, row]) };
    }),
};

async function taughtOn(records: Records, sheet: SheetRow): Promise<readonly TaughtWordRow[]> {
  const rows = await records.list("taughtWord", sheet.householdId, { where: { sheetId: sheet.id } });
  return rows.toSorted((a, b) => a.number - b.number);
}

/** The household's words, and what was taught on this sheet in their place. */
async function readBy(
  records: Records,
  sheet: SheetRow,
  own: readonly TaughtWordRow[],
): Promise<LearnedWord[]> {
  const words = new Map(
    (await wordsOf(records, sheet.householdId)).map(({ phrase, attribute }) => [phrase, attribute]),
  );
  const taught = new Map(own.map(({ phrase, means }) => [phrase, means as Meaning | null]));
  for (const [phrase, means] of taught) if (means !== null) words.set(phrase, means);
  return [...words].map(([phrase, attribute]) => ({ phrase, attribute }));
}

function sheetShut(sheet: SheetRow): never {
  refuse(409, {
    code: "sheet_locked",
    path: ["sheet"],
    limit: "an open sheet",
    received: sheet.state,
    message: `teaching a word on a sheet requires an open sheet, got one that is ${sheet.state}`,
  });
}

function keyReused(key: string): never {
  refuse(409, {
    code: "key_reused",
    path: ["key"],
    limit: "a key for each word taught",
    received: key,
    message: "teaching a word on a sheet requires a key of its own, got one that taught another",
  });
}
