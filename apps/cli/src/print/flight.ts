import { attributeName, QUESTIONS } from "@partsproof/core/sensory";
import type { Flight, PourList, Sheet } from "@partsproof/house/protocol";
import { type Column, columns } from "./columns.ts";
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
    ["Question", QUESTIONS[flight.question].title],
    ["Layout", layout(flight)],
    ["Glasses", `${flight.glassCount} of ${ml(flight.pourMl)} for each taster`],
    ["Poured by", flight.pourer ?? "the taster, alone"],
    ["Names on offer", offer(flight.namesOnOffer)],
    ["Target", flight.namesOnOffer.find(({ nameId }) => nameId === flight.targetNameId)?.label ?? null],
    ["Undersides", flight.marks.length === 0 ? null : marks(flight)],
    ["Sheets", flight.sheets.map(({ taster, state }) => `${taster}: ${state}`).join("\n")],
    ["Waiting for", waiting(flight)],
    ["At most", alcohol(flight.alcoholAtMost)],
    ["Set", instant(flight.createdAt)],
    ["Poured", flight.pouredAt === null ? null : instant(flight.pouredAt)],
    ["Revealed", flight.revealedAt === null ? null : instant(flight.revealedAt)],
    ["Id", flight.id],
  ]);

/** Method, sets, reference, repeats, control and what is late; null where every taster gets every glass once in a row. */
function layout({ design, question, namesOnOffer }: Flight): string | null {
  const { method, setsEach, asked, sides, reference, repeats, controlNameId, late } = design;
  const control = namesOnOffer.find(({ nameId }) => nameId === controlNameId)?.label;
  const said = [
    ...(method === null ? [] : [`${method}, ${setsEach} ${setsEach === 1 ? "set" : "sets"} each`]),
    ...(asked === null ? [] : [`which of the two is ${asked}, ${sides === 1 ? "one" : "two"}-sided`]),
    ...(question === "agree_with_myself" ? ["all glasses twice"] : []),
    ...(reference && method === null ? ["a glass of the target labelled R"] : []),
    ...(repeats === 0 ? [] : [`${repeats} drawn a second time`]),
    ...(control === undefined ? [] : [`${control} as a control`]),
    ...(late ? ["the strong and smoky late"] : []),
  ];
  return said.length === 0 ? null : said.join("\n");
}

const waiting = ({ waitingFor }: Flight): string | null =>
  waitingFor.length === 0
    ? null
    : waitingFor.map(({ taster, empty }) => (empty ? `${taster} (nobody sits there)` : taster)).join(", ");

const marks = (flight: Flight): string =>
  [
    ...flight.marks.flatMap(({ mark, label, set, likeR }) => {
      const where = set === null ? "" : `tray ${set}: `;
      const known = likeR ? [`${where}R on the side of the glass with ${label}`] : [];
      return [...known, `${where}${mark} under the glass with ${label}`];
    }),
    flight.undersidesEntered ? "entered after the lock" : "to enter after the lock: flight undersides",
  ].join("\n");

const setColumn: Column<PourList["tasters"][number]["glasses"][number]> = {
  head: "Set",
  cell: ({ set }) => String(set ?? ""),
  right: true,
};

export function printPourList(list: PourList): string {
  const totals = list.totals.map(({ label, ml: v }) => `${ml(v)} of ${label} in all`).join("\n");
  const tasters = list.tasters.map(({ taster, glasses }) =>
    columns(
      glasses,
      [
        ...(glasses.some(({ set }) => set !== null) ? [setColumn] : []),
        { head: taster, cell: ({ position }) => (position === 0 ? "" : String(position)), right: true },
        { head: "Code", cell: ({ code }) => code, right: true },
        { head: "Pour", cell: ({ label }) => `${ml(list.pourMl)} of ${label}` },
      ],
      "",
    ),
  );
  return [totals, ...tasters].join("\n\n");
}

const inSet = ({ sets }: Sheet, code: string): string => {
  const own = sets.find(({ glasses }) => glasses.some((glass) => glass.code === code));
  return own === undefined ? "" : `, set ${own.set}`;
};

export function printSheet(sheet: Sheet): string {
  const names = new Map(sheet.namesOnOffer.map(({ nameId, label }) => [nameId, label]));
  const head = facts([
    ["Sheet", `${sheet.taster}, ${sheet.flightName}`],
    ["State", sheet.lockedAt === null ? sheet.state : `${sheet.state} ${instant(sheet.lockedAt)}`],
    ["Flight", sheet.flightState],
    ["Typed from paper", sheet.typedBy === null ? null : `by ${sheet.typedBy}`],
    ["Task", sheet.question === "which_is_which" ? null : sheet.task],
    ["Target", sheet.target],
    ["Names on offer", sheet.asks.guesses ? offer(sheet.namesOnOffer) : null],
    ["Ranking", sheet.asks.ranking === null ? null : ranking(sheet.ranking)],
    ...sheet.sets.map((set): Fact => [`Set ${set.set}`, answered(set, sheet)]),
    ["At most", alcohol(sheet.alcoholAtMost)],
  ]);
  const glasses = sheet.glasses.map(({ position, code }) => {
    const notes = sheet.notes.find((note) => note.code === code);
    const guess = sheet.guesses.find((g) => g.code === code)?.nameId ?? null;
    return facts([
      ["Glass", `${code}, number ${position} to taste${inSet(sheet, code)}`],
      ["Guess", guess === null ? null : (names.get(guess) ?? guess)],
      ["Score", notes?.score === undefined || notes.score === null ? null : `${notes.score} of 100`],
      ...passFacts("", notes?.first),
      ...strongFacts(sheet, code, "first"),
      ...passFacts(", second pass", notes?.second),
      ...strongFacts(sheet, code, "second"),
    ]);
  });
  return [head, ...glasses].join("\n\n");
}

/** What stands in a set, and what is answered. */
function answered(
  { glasses, reference, picked, ranking: order }: Sheet["sets"][number],
  { asks }: Sheet,
): string {
  const codes = [...(reference ? ["R"] : []), ...glasses.map(({ code }) => code)].join(", ");
  const said = asks.answers === "ranking" ? order && ranking(order) : picked && picked.join(" and ");
  return `${codes}: ${said === null ? "no answer" : `answered ${said}`}`;
}

const passFacts = (
  pass: string,
  notes: { readonly nose: string; readonly palate: string; readonly finish: string } | undefined,
): readonly Fact[] => [
  [`Nose${pass}`, notes?.nose || null],
  [`Palate${pass}`, notes?.palate || null],
  [`Finish${pass}`, notes?.finish || null],
];

/** How strong, 0 to 10, section by section; sections of which nothing was said are left out. */
const strongFacts = ({ strengths }: Sheet, code: string, pass: "first" | "second"): readonly Fact[] => {
  const own = strengths.filter((said) => said.code === code && said.pass === pass);
  return [...new Set(own.map(({ section }) => section))].map((section): Fact => {
    const said = own
      .filter((one) => one.section === section)
      .map(({ attribute, strength }) => `${attributeName(attribute)} ${strength}`);
    const where = section === "whole" ? "all in all" : section;
    return [`How strong, ${where}${pass === "second" ? ", second pass" : ""}`, `${said.join(", ")} of 10`];
  });
};

/** "417 > 233 = 508", best first. */
export const ranking = (groups: readonly (readonly string[])[] | null): string =>
  groups === null ? "none" : groups.map((group) => group.join(" = ")).join(" > ");
