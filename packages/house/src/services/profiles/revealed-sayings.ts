import { readerFor } from "../notes/index.ts";
import type { House, Reads } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { FlightRow } from "../rows.ts";
import { wordsOf } from "../words/index.ts";
import { type GlassSaying, glassSayings } from "./sheet-sayings.ts";

/** What one taster said of one glass of a revealed flight. */
export interface Saying extends GlassSaying {
  readonly flightId: string;
  readonly tasterId: string;
  readonly nameId: string;
  readonly label: string;
}

interface Read {
  readonly by: string;
  readonly sayings: readonly Saying[];
}

/** What is revealed never changes, so a flight is read once for the words of its household. */
const read = new WeakMap<House, Remembered<Read>>();

/** Y2: what locked sheets of revealed flights say, oldest flight first. A flight that is not revealed is not asked for. */
export async function revealedSayings(
  house: House,
  records: Reads,
  household: string,
): Promise<readonly Saying[]> {
  const flights = await records.list("flight", household, { where: { state: "revealed" } });
  const words = await wordsOf(records, household);
  const [reader, by] = [readerFor(words), JSON.stringify(words)];
  const known = read.get(house) ?? new Remembered<Read>();
  read.set(house, known);
  const sayings: Saying[] = [];
  for (const flight of flights.toSorted((a, b) => ((a.revealedAt ?? "") < (b.revealedAt ?? "") ? -1 : 1))) {
    const before = known.get(flight.id);
    const now = before?.by === by ? before : { by, sayings: await sayingsOf(records, flight, reader) };
    known.set(flight.id, now);
    sayings.push(...now.sayings);
  }
  return sayings;
}

async function sayingsOf(
  records: Reads,
  { id, householdId, state }: FlightRow,
  reader: Parameters<typeof glassSayings>[2],
): Promise<readonly Saying[]> {
  if (state !== "revealed") throw new Error(`sayings require a flight that is revealed, got ${id}, ${state}`);
  const where = { where: { flightId: id } };
  const [key] = await records.list("flightKey", householdId, where);
  const sheets = await records.list("sheet", householdId, where);
  const entries = Map.groupBy(await records.list("entry", householdId, where), ({ sheetId }) => sheetId);
  const { codes = [], glasses = [] } = key?.opened ?? {};
  return sheets
    .filter((sheet) => sheet.state === "locked")
    .flatMap((sheet) =>
      glassSayings(sheet, entries.get(sheet.id) ?? [], reader).flatMap((saying) => {
        const code = codes.find((one) => one.sheetId === sheet.id && one.code === saying.code);
        const glass = code === undefined ? undefined : glasses[code.glass];
        if (glass === undefined) return [];
        const { nameId, label } = glass;
        return [{ ...saying, flightId: id, tasterId: sheet.tasterId, nameId, label }];
      }),
    );
}
