import type { BodyOf, Flight } from "../../protocol/index.ts";
import type { FlightScript, GlassScript, SheetScript, Words } from "./flight-script.ts";
import { idOf, type Play } from "./play.ts";

/** Of a key that a device would draw, characters. */
const DEVICE_KEY = 22;

type Edit = Omit<BodyOf<"editSheet">, "version">;
type Notes = NonNullable<Edit["notes"]>[number];

/** A glass as a sheet's script names it, to its code, for each taster. */
export type Codes = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** A taster at the table, with the sheet and its token. */
export interface Seat {
  readonly script: SheetScript;
  readonly codes: ReadonlyMap<string, string>;
  readonly at: Readonly<Record<string, string>>;
  readonly token: string;
}

/** Takes every sheet but the free ones. */
export async function openSheets(
  play: Play,
  { sheets }: FlightScript,
  flight: Flight,
  codes: Codes,
): Promise<Seat[]> {
  const seats: Seat[] = [];
  for (const script of sheets) {
    if (script.until === "free") continue;
    const sheet = flight.sheets.find(({ taster }) => taster === script.taster)?.sheetId ?? "";
    const at = { household: play.known.household, flight: flight.id, sheet };
    const { token } = await play.ask("takeSheet", { at, body: { ofLegalAge: true } });
    seats.push({ script, codes: codes.get(script.taster) ?? new Map(), at, token });
  }
  return seats;
}

/** All noses and mouths once round the table, then all again. */
export async function writeSheets(play: Play, seats: readonly Seat[]): Promise<void> {
  play.clock.moveOn(20 * 60);
  for (const seat of seats) await edit(play, seat, firstPass(seat));
  play.clock.moveOn(25 * 60);
  for (const seat of seats) {
    if (seat.script.ranking !== undefined)
      await edit(play, seat, secondPass(play, seat, seat.script.ranking));
    for (const [n, word] of (seat.script.taught ?? []).entries()) await teach(play, seat, n, word);
  }
}

/** Put right by a tap on a chip, as at any table: the sheet's own until the reveal, the household's after it. */
async function teach(
  play: Play,
  { at, token, script }: Seat,
  n: number,
  [phrase, means]: NonNullable<SheetScript["taught"]>[number],
): Promise<void> {
  const key = `${script.taster}-word-${n}`.padEnd(DEVICE_KEY, "0");
  await play.ask("teachAtSheet", { at, token, body: { key, phrase, means } });
}

export async function lockSheets(play: Play, seats: readonly Seat[]): Promise<void> {
  for (const { script, at, token } of seats) {
    if (script.until !== "locked") continue;
    play.clock.moveOn(2 * 60);
    const { version } = await play.ask("getSheet", { at, token });
    await play.ask("lockSheet", { at, token, body: { version } });
  }
}

async function edit(play: Play, { at, token }: Seat, written: Edit): Promise<void> {
  const { version } = await play.ask("getSheet", { at, token });
  await play.ask("editSheet", { at, token, body: { version, ...written } });
}

const firstPass = (seat: Seat): Edit => ({
  notes: seat.script.glasses.map((glass) => ({ ...notesOf(seat, glass), second: passOf(), score: null })),
});

const secondPass = (play: Play, seat: Seat, ranking: NonNullable<SheetScript["ranking"]>): Edit => ({
  notes: seat.script.glasses.map((glass) => notesOf(seat, glass)),
  guesses: seat.script.glasses.map(({ glass, guess, sure }) => ({
    code: codeOf(seat, glass),
    nameId: guess === undefined ? null : idOf(play, "names", guess),
    ...(sure === undefined ? {} : { sure }),
  })),
  ranking: ranking.map((tie) => tie.map((glass) => codeOf(seat, glass))),
});

function notesOf(seat: Seat, { glass, first, second, score }: GlassScript): Notes {
  return { code: codeOf(seat, glass), first: passOf(first), second: passOf(second), score: score ?? null };
}

const passOf = ([nose, palate, finish]: Words = ["", "", ""]) => ({ nose, palate, finish });

function codeOf({ codes, script }: Seat, glass: string): string {
  const code = codes.get(glass);
  if (code === undefined) throw new Error(`${script.taster}'s sheet requires a glass poured, got ${glass}`);
  return code;
}
