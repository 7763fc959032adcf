import type { AnswerOf } from "../../protocol/index.ts";
import type { EntryThat } from "./entry.ts";
import type { FlightScript } from "./flight-script.ts";
import { idOf, type Play } from "./play.ts";
import { type Codes, lockSheets, openSheets, type Seat, writeSheets } from "./play-sheets.ts";

type Made = AnswerOf<"addFlight">;

/** One evening, from the drawing of codes to the reveal, or as far as its sheets got. */
export async function playFlight(play: Play, { flight: script }: EntryThat<"taste">): Promise<void> {
  const alone = script.pourer === null;
  const made = await setFlight(play, script);
  const at = { household: play.known.household, flight: made.flight.id };
  const codes = alone ? codesOfPlaces(script) : await codesOfPourList(play, script, made);
  const seats = await openSheets(play, script, made.flight, codes);
  const token = alone ? (seats[0]?.token ?? null) : made.pourerToken;
  play.clock.moveOn(15 * 60);
  await play.ask("markPoured", { at, token });
  await writeSheets(play, seats);
  await lockSheets(play, seats);
  if (alone) await turnGlasses(play, script, made, seats);
  play.clock.moveOn(5 * 60);
  if (script.sheets.every(({ until }) => until === "locked"))
    await play.ask("revealFlight", { at, body: {} });
}

async function setFlight(play: Play, script: FlightScript): Promise<Made> {
  const { name, pourer, glasses, distractors = [], target, pourMl, sheets } = script;
  return play.ask("addFlight", {
    at: { household: play.known.household },
    body: {
      name,
      pouring: pourer === null ? "alone" : "someone else",
      pourer,
      glasses: glasses.map((key) => ({ vesselId: idOf(play, "vessels", key) })),
      distractors: distractors.map((key) => idOf(play, "names", key)),
      targetNameId: target === undefined ? null : idOf(play, "names", target),
      pourMl,
      tasterIds: sheets.map(({ taster }) => idOf(play, "tasters", taster)),
    },
  });
}

/** Read off the pourer's page, as a pourer does: the script knows vessels, the house has drawn the codes. */
async function codesOfPourList(play: Play, { glasses }: FlightScript, made: Made): Promise<Codes> {
  const at = { household: play.known.household, flight: made.flight.id };
  const list = await play.ask("getPourList", { at, token: made.pourerToken });
  const keys = new Map(glasses.map((key) => [idOf(play, "vessels", key), key]));
  return new Map(
    list.tasters.map(({ taster, glasses: poured }) => {
      const codes = new Map<string, string>();
      for (const { vesselId, code } of poured) {
        const key = keys.get(vesselId) ?? "";
        codes.set(codes.has(key) ? `${key} again` : key, code);
      }
      return [taster, codes];
    }),
  );
}

/** Alone the code is the place, and the script says what stood where. */
function codesOfPlaces({ glasses, sheets }: FlightScript): Codes {
  const places = new Map(glasses.map((key, i) => [key, String(i + 1)]));
  return new Map(sheets.map(({ taster }) => [taster, places]));
}

/** Alone, after the lock: the marks found under the glasses. */
async function turnGlasses(
  play: Play,
  { glasses }: FlightScript,
  { flight }: Made,
  [seat]: readonly Seat[],
): Promise<void> {
  const markOf = new Map(flight.marks.map(({ vesselId, mark }) => [vesselId, mark]));
  const marks = glasses.map((key, i) => ({
    place: i + 1,
    mark: markOf.get(idOf(play, "vessels", key)) ?? "",
  }));
  const at = { household: play.known.household, flight: flight.id };
  await play.ask("enterUndersides", { at, token: seat?.token ?? null, body: { marks } });
}
