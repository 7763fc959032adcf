import type { Flight, PourList, Sheet } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { type Fact, facts } from "./facts.ts";
import { day, instant, ml } from "./figures.ts";

type Alcohol = Flight["alcoholAtMost"];

/** What an evening's glasses hold, in the units laws and health services use. */
export const alcohol = ({ grams, usStandardDrinks, ukUnits }: Alcohol): string =>
  `${grams.toFixed(1)} g of alcohol each if swallowed (${usStandardDrinks.toFixed(1)} US standard drinks, ${ukUnits.toFixed(1)} UK units)`;

/** What is said whenever glasses are set or handed out. */
export const careful =
  "Spit, drink water between the glasses, and do not drive afterwards. Of legal age only; not in pregnancy.";

export const printFlights = (flights: readonly Flight[]): string =>
  columns(
    flights,
    [
      { head: "Flight", cell: ({ name }) => name },
      { head: "State", cell: ({ state }) => state },
      { head: "Glasses", cell: ({ glassCount }) => String(glassCount), right: true },
      { head: "Tasters", cell: ({ sheets }) => sheets.map(({ taster }) => taster).join(", ") },
      { head: "Poured by", cell: ({ pourer, pouring }) => pourer ?? pouring },
      { head: "Set", cell: ({ createdAt }) => day(createdAt) },
      { head: "Id", cell: ({ id }) => id },
    ],
    "No flight yet: flight add",
  );

const offer = (names: Flight["namesOnOffer"]): string =>
  names.map(({ label, count }) => (count > 1 ? `${label} (${count} times)` : label)).join("\n");

export const printFlight = (flight: Flight): string =>
  facts([
    ["Flight", flight.name],
    ["State", flight.state],
    ["Glasses", `${flight.glassCount} of ${ml(flight.pourMl)} for each taster`],
    ["Poured by", flight.pourer ?? "the taster, alone"],
    ["Names on offer", offer(flight.namesOnOffer)],
    ["Target", flight.namesOnOffer.find(({ nameId }) => nameId === flight.targetNameId)?.label ?? null],
    ["Undersides", flight.marks.length === 0 ? null : marks(flight)],
    ["Sheets", flight.sheets.map(({ taster, state }) => `${taster}: ${state}`).join("\n")],
    ["At most", alcohol(flight.alcoholAtMost)],
    ["Set", instant(flight.createdAt)],
    ["Poured", flight.pouredAt === null ? null : instant(flight.pouredAt)],
    ["Revealed", flight.revealedAt === null ? null : instant(flight.revealedAt)],
    ["Id", flight.id],
  ]);

const marks = (flight: Flight): string =>
  [
    ...flight.marks.map(({ mark, label }) => `${mark} under the glass with ${label}`),
    flight.undersidesEntered ? "entered after the lock" : "to enter after the lock: flight undersides",
  ].join("\n");

export function printPourList(list: PourList): string {
  const totals = list.totals.map(({ label, ml: v }) => `${ml(v)} of ${label} in all`).join("\n");
  const tasters = list.tasters.map(({ taster, glasses }) =>
    columns(
      glasses,
      [
        { head: taster, cell: ({ position }) => String(position), right: true },
        { head: "Code", cell: ({ code }) => code, right: true },
        { head: "Pour", cell: ({ label }) => `${ml(list.pourMl)} of ${label}` },
      ],
      "",
    ),
  );
  return [totals, ...tasters].join("\n\n");
}

export function printSheet(sheet: Sheet): string {
  const names = new Map(sheet.namesOnOffer.map(({ nameId, label }) => [nameId, label]));
  const head = facts([
    ["Sheet", `${sheet.taster}, ${sheet.flightName}`],
    ["State", sheet.lockedAt === null ? sheet.state : `${sheet.state} ${instant(sheet.lockedAt)}`],
    ["Flight", sheet.flightState],
    ["Names on offer", offer(sheet.namesOnOffer)],
    ["Ranking", ranking(sheet.ranking)],
    ["At most", alcohol(sheet.alcoholAtMost)],
  ]);
  const glasses = sheet.glasses.map(({ position, code }) => {
    const notes = sheet.notes.find((note) => note.code === code);
    const guess = sheet.guesses.find((g) => g.code === code)?.nameId ?? null;
    return facts([
      ["Glass", `${code}, number ${position} to taste`],
      ["Guess", guess === null ? null : (names.get(guess) ?? guess)],
      ["Score", notes?.score === undefined || notes.score === null ? null : `${notes.score} of 100`],
      ...passFacts("", notes?.first),
      ...passFacts(", second pass", notes?.second),
    ]);
  });
  return [head, ...glasses].join("\n\n");
}

const passFacts = (
  pass: string,
  notes: { readonly nose: string; readonly palate: string; readonly finish: string } | undefined,
): readonly Fact[] => [
  [`Nose${pass}`, notes?.nose || null],
  [`Palate${pass}`, notes?.palate || null],
  [`Finish${pass}`, notes?.finish || null],
];

/** "417 > 233 = 508", best first. */
export const ranking = (groups: readonly (readonly string[])[] | null): string =>
  groups === null ? "none" : groups.map((group) => group.join(" = ")).join(" > ");
