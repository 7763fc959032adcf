import type {
  ApartFound,
  League,
  RecipeFinding,
  TasterFinding,
  WeighedFlight,
  WhiskeyFinding,
  WorthsFound,
} from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { day, plural } from "./figures.ts";

/** Blocks under one headline; what has nothing to say is left out. */
const page = (...blocks: readonly (string | null | undefined)[]): string =>
  blocks.filter((block) => block !== null && block !== undefined && block !== "").join("\n\n");

const lines = (...said: readonly (string | null | undefined)[]): string =>
  said.filter((line) => line !== null && line !== undefined).join("\n");

export const printWeighed = (flight: WeighedFlight): string =>
  page(
    flight.headline,
    printWorths(flight.worths),
    lines(...flight.poursTogether.map(({ sentence }) => sentence)),
    flight.apart?.sentence,
    lines(flight.known?.sentence, flight.mixUps?.sentence),
    lines(flight.wordTests?.sentence, flight.map?.sentence),
  );

export const printRecipeFinding = (found: RecipeFinding): string =>
  page(
    found.headline,
    printWorths(found.worths),
    ...found.closeness.map(printWorths),
    printApart(found.apart),
    lines(found.mixUps?.sentence, found.scores?.sentence, printWords(found.words)),
    columns(
      found.batches,
      [
        { head: "Batch", cell: ({ name }) => name },
        { head: "Version", cell: ({ version }) => String(version), right: true },
        { head: "Flights", cell: ({ flights }) => String(flights), right: true },
        { head: "Sheets", cell: ({ sheets }) => String(sheets), right: true },
        { head: "Mean score", cell: ({ scores }) => scores?.mean.toFixed(1) ?? "-", right: true },
      ],
      "",
    ),
    printFlights(found.flights),
  );

export const printWhiskeyFinding = (found: WhiskeyFinding): string =>
  page(
    found.headline,
    lines(found.named?.sentence, ...(found.mixUps?.pairs.map(({ sentence }) => sentence) ?? [])),
    printWorths(found.worths),
    printApart(found.apart),
    lines(found.scores?.sentence, printWords(found.words)),
    printFlights(found.flights),
  );

export const printTasterFinding = (found: TasterFinding): string =>
  page(
    found.headline,
    found.canTell.length === 0 ? null : lines("Has shown:", ...found.canTell),
    found.cannotTell.length === 0
      ? null
      : lines("Not shown, which is not to say that they cannot:", ...found.cannotTell),
    lines(found.known?.sentence, found.drift?.sentence, found.mixUps?.sentence),
    lines(found.repeats?.sentence, found.orders?.sentence),
    printApart(found.apart),
    printWords(found.words),
    printGaps(found.wordGaps),
    found.confidence === null
      ? null
      : lines(
          found.confidence.fitSaid,
          found.confidence.surerSaid,
          found.confidence.scoreSaid,
          columns(
            found.confidence.groups,
            [
              { head: "Sure", cell: ({ sure }) => `${sure} %`, right: true },
              { head: "Right", cell: ({ right, of }) => `${right} of ${of}`, right: true },
              {
                head: "95 %",
                cell: ({ low, high }) => `${Math.round(100 * low)} % to ${Math.round(100 * high)} %`,
                right: true,
              },
            ],
            "",
          ),
        ),
    columns(
      found.guesses,
      [
        { head: "Revealed", cell: ({ revealedAt }) => day(revealedAt) },
        { head: "Flight", cell: ({ name }) => name },
        { head: "Right", cell: ({ right, guessed }) => `${right} of ${guessed}`, right: true },
        { head: "By luck", cell: ({ byLuck }) => byLuck.toFixed(1), right: true },
      ],
      "",
    ),
  );

export const printLeague = (found: League): string => page(found.headline, printWorths(found.worths));

const printApart = (apart: readonly ApartFound[]): string => lines(...apart.map(({ sentence }) => sentence));

function printWorths(worths: WorthsFound | null): string | null {
  if (worths === null) return null;
  const { flights, sheets, tasters } = worths.counted;
  return lines(
    columns(
      worths.items,
      [
        {
          head: worths.closeTo === null ? "By liking" : `By closeness to ${worths.closeTo}`,
          cell: ({ label }) => label,
        },
        { head: "Log worth", cell: ({ worth }) => worth.toFixed(2), right: true },
        { head: "95 %", cell: ({ low, high }) => `${low.toFixed(2)} to ${high.toFixed(2)}`, right: true },
        { head: "First", cell: ({ ranks }) => (ranks[0] ?? 0).toFixed(2), right: true },
        { head: "Expected place", cell: ({ expectedRank }) => expectedRank.toFixed(1), right: true },
        { head: "Rankings", cell: ({ rankings }) => String(rankings), right: true },
      ],
      "",
    ),
    worths.best.sentence,
    ...worths.pairs.map(({ sentence }) => sentence),
    worths.pairsSaid,
    worths.placesSaid,
    worths.tastersSaid,
    `${plural(sheets, "ranking")} by ${plural(tasters, "taster")} in ${plural(flights, "flight")}; ${worths.method}.`,
  );
}

const printWords = (words: RecipeFinding["words"]): string | null =>
  words === null || words.words.length === 0
    ? null
    : `Words: ${words.words.map(({ word, here, elsewhere }) => `${word} in ${here} of ${words.glasses} glasses, elsewhere in ${elsewhere} of ${words.otherGlasses}`).join("; ")}. ${words.said}`;

function printGaps(found: TasterFinding["wordGaps"]): string | null {
  if (found === null) return null;
  const { flights, glasses, otherGlasses, others } = found;
  return lines(
    `Blind spots: ${found.missedSaid}.`,
    ...found.missed.map(({ sentence }) => sentence),
    `Words of their own: ${found.aloneSaid}.`,
    ...found.alone.map(({ sentence }) => sentence),
    found.amountSaid,
    `${plural(glasses, "glass", "glasses")} beside ${otherGlasses} of ${plural(others, "other taster")} in ${plural(flights, "flight")}; ${found.method}.`,
  );
}

const printFlights = (flights: RecipeFinding["flights"]): string =>
  columns(
    flights,
    [
      { head: "Revealed", cell: ({ revealedAt }) => day(revealedAt) },
      { head: "Flight", cell: ({ name }) => name },
      { head: "Sheets", cell: ({ sheets }) => String(sheets), right: true },
      { head: "Id", cell: ({ flightId }) => flightId },
    ],
    "It stood in no revealed flight yet.",
  );
