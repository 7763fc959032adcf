import type { Archive } from "../../protocol/index.ts";
import type { SealedSheets } from "./archive-rows.ts";
import { checksumsOf, HEAD, headSum } from "./checksums.ts";
import { sealSame } from "./seal-same.ts";
import { wrappingKey } from "./wrapping-key.ts";
import { unseal } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import type { House } from "../ports.ts";
import type { EntryRow, FlightKeyRow, FlightRow, Row, SheetRow, TableName, TaughtWordRow } from "../rows.ts";

export const exportHandlers: Handlers<"exportHousehold"> = {
  /** H1. What no route gives before a reveal is not in the file either, but under the seal of this house. */
  exportHousehold: ({ house, at }) =>
    house.store.transaction(async (records): Promise<Archive> => {
      const { name, currency, demo } = await knownHousehold(records, at.household);
      const all = async (table: TableName) => (await records.list(table, at.household)).map(bare);
      const flights = await records.list("flight", at.household);
      const sheets = await records.list("sheet", at.household);
      const entries = await records.list("entry", at.household);
      const words = await records.list("taughtWord", at.household);
      const keys = await records.list("flightKey", at.household);
      const revealed = new Set(flights.filter(({ state }) => state === "revealed").map(({ id }) => id));
      const tables = {
        taster: await all("taster"),
        whiskey: await all("whiskey"),
        recipe: await all("recipe"),
        recipeVersion: await all("recipeVersion"),
        passedFile: await all("passedFile"),
        vessel: await all("vessel"),
        batch: await all("batch"),
        trialSet: await all("trialSet"),
        rest: await all("rest"),
        oakPiece: await all("oakPiece"),
        checkTasting: await all("checkTasting"),
        flight: flights.map(bareFlight),
        flightKey: keys
          .filter(({ flightId }) => revealed.has(flightId))
          .map(({ sealed: _, ...key }) => bare(key)),
        sheet: sheets
          .filter(({ flightId }) => revealed.has(flightId))
          .map(({ tokenHash: _, ...sheet }) => bare(sheet)),
        entry: entries.filter(({ flightId }) => revealed.has(flightId)).map(bare),
        // A word taught at a table says what somebody wrote there.
        taughtWord: words.filter(({ flightId }) => flightId === null || revealed.has(flightId)).map(bare),
        transfer: await all("transfer"),
        sealedKeys: await sealedKeys(
          house,
          flights.filter(({ id }) => !revealed.has(id)),
          keys,
        ),
        sealedSheets: await sealedSheets(
          house,
          flights.filter(({ id }) => !revealed.has(id)),
          sheets,
          entries,
          words,
        ),
      };
      const head = {
        format: "partsproof-household" as const,
        formatVersion: 1 as const,
        exportedAt: house.clock.now().toISOString(),
        household: { id: at.household, name, currency, demo },
      };
      return { ...head, checksums: { [HEAD]: await headSum(head), ...(await checksumsOf(tables)) }, tables };
    }),
};

const bare = ({ householdId: _, ...row }: Row): Record<string, unknown> => row;

function bareFlight({ hostTokenHash: _, pourerTokenHash: __, holds: ___, ...row }: FlightRow) {
  return bare(row);
}

async function sealedSheets(
  house: House,
  flights: readonly FlightRow[],
  sheets: readonly SheetRow[],
  entries: readonly EntryRow[],
  words: readonly TaughtWordRow[],
) {
  const rows = [];
  for (const { id, hostTokenHash, pourerTokenHash } of flights) {
    const own = sheets.filter(({ flightId }) => flightId === id).map(bare);
    const written = entries.filter(({ flightId }) => flightId === id).map(bare);
    const plain = {
      hostTokenHash,
      pourerTokenHash,
      sheets: own,
      entries: written,
      words: words.filter(({ flightId }) => flightId === id).map(bare),
    } as unknown as SealedSheets;
    const wrapped = { random: house.random, sealKey: await wrappingKey(house.sealKey, id) };
    rows.push({ flightId: id, sealed: await sealSame(wrapped, JSON.stringify(plain), sealedFor(id)) });
  }
  return rows;
}

/** H5: what a flight under way goes on with, for whoever has its wrapping key from a recovery file. */
async function sealedKeys(house: House, flights: readonly FlightRow[], keys: readonly FlightKeyRow[]) {
  const rows = [];
  for (const { id, state, holds } of flights) {
    if (state === "called off") continue;
    const row = keys.find(({ flightId }) => flightId === id);
    const sealed = row?.sealed ?? null;
    const plain = sealed === null ? null : await unseal(house, sealed, id);
    const wrapped = { random: house.random, sealKey: await wrappingKey(house.sealKey, id) };
    const inside = JSON.stringify({ row: row === undefined ? null : bareKey(row), plain, holds });
    rows.push({ flightId: id, sealed: await sealSame(wrapped, inside, keyFor(id)) });
  }
  return rows;
}

function bareKey({ sealed: _, opened: __, ...row }: FlightKeyRow): Record<string, unknown> {
  return bare(row);
}

export const keyFor = (flightId: string): string => `key of ${flightId}`;

/** What the sealed sheets of a flight belong to; not the flight's id alone, under which its key is sealed. */
export const sealedFor = (flightId: string): string => `sheets of ${flightId}`;
