import {
  discriminationFound,
  DISCRIMINATION,
  estimateDPrime,
  plainChance,
  shownP,
} from "@partsproof/core/sensory";
import { holm } from "@partsproof/core/statistics";
import type { ApartFound } from "../../protocol/index.ts";
import { shortFraction } from "../findings/index.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence, SetsEvidence } from "./flight-evidence.ts";

interface Comparison {
  readonly sets: SetsEvidence;
  readonly flightId: string;
  /** Keys of the two, by glass number. */
  readonly keys: readonly string[];
}

const LEVEL = 0.95;

function foundOf(
  group: readonly Comparison[],
  labels: ReadonlyMap<string, string>,
): Omit<ApartFound, "pTogether"> | null {
  const [first] = group;
  if (first === undefined) return null;
  const { method, sides } = first.sets;
  const [one = "", other = ""] = first.keys.toSorted();
  const sheets = group.flatMap(({ sets, keys }) => sets.sheets.map((sheet) => ({ ...sheet, keys })));
  const answered = sheets.reduce((sum, sheet) => sum + sheet.answered, 0);
  if (answered === 0) return null;
  const pickedOf = (key: string): number =>
    sheets.reduce((sum, { picked, keys }) => sum + (picked[keys.indexOf(key)] ?? 0), 0);
  const right =
    sides === 2
      ? Math.max(pickedOf(one), pickedOf(other))
      : sheets.reduce((sum, sheet) => sum + sheet.right, 0);
  const found = discriminationFound({ method, sides, answered, right });
  const { test, standard } = DISCRIMINATION[method];
  const apart = sides === 2 ? null : estimateDPrime({ test, right, of: answered }, { level: LEVEL });
  const end = (x: number): number | null => (Number.isFinite(x) ? x : null);
  const label = (key: string): string => labels.get(key) ?? "";
  return {
    flights: new Set(group.map(({ flightId }) => flightId)).size,
    tasters: new Set(sheets.map(({ tasterId }) => tasterId)).size,
    method,
    standard,
    one: label(one),
    other: label(other),
    right,
    answered,
    luck: {
      p: found.p,
      fraction: shortFraction(found.fraction),
      words: plainChance(found.p),
      method: found.method,
    },
    dPrime: apart && end(apart.dPrime),
    low: apart?.exactInterval.low ?? 0,
    high: apart && end(apart.exactInterval.high),
    level: LEVEL,
    sentence: `${label(one)} and ${label(other)}: ${right} of ${plural(answered, "set")} ${sides === 2 ? "picked the same one" : "right"}. ${found.sentence}${apart === null ? "" : ` ${distance(apart)}`}`,
  };
}

const distance = ({ dPrime, exactInterval: { low, high } }: ReturnType<typeof estimateDPrime>): string => {
  const most = Number.isFinite(dPrime) ? dPrime.toFixed(1) : "without end";
  const ends = Number.isFinite(high)
    ? `${low.toFixed(1)} to ${high.toFixed(1)}`
    : `${low.toFixed(1)} or more`;
  return `How far apart they taste (d′): ${most}, ${ends} (95 %, Clopper and Pearson's interval carried over).`;
};

/** W5: sets of the same two by the same method, pooled; each p made good for all comparisons of the page. */
export function apartFound(
  flights: readonly FlightEvidence[],
  labels: ReadonlyMap<string, string>,
  {
    rename = (nameId: string) => nameId,
    about,
    taster,
  }: {
    readonly rename?: (nameId: string) => string;
    readonly about?: string;
    readonly taster?: string;
  } = {},
): ApartFound[] {
  const comparisons = flights.flatMap((flight): Comparison[] => {
    if (flight.sets === null) return [];
    const keys = flight.glasses.map(({ nameId }) => rename(nameId));
    if (about !== undefined && !keys.includes(about)) return [];
    const sheets = flight.sets.sheets.filter(({ tasterId }) => taster === undefined || tasterId === taster);
    return [{ sets: { ...flight.sets, sheets }, flightId: flight.flightId, keys }];
  });
  const groups = Map.groupBy(comparisons, ({ sets: { method, sides }, keys }) =>
    [method, sides, ...keys.toSorted()].join(" "),
  );
  const found = [...groups.values()].flatMap((group) => foundOf(group, labels) ?? []);
  const together = holm(found.map(({ luck }) => luck.p));
  return found
    .map((one, i) => {
      const pTogether = together[i] ?? 1;
      const paid =
        found.length === 1
          ? ""
          : ` Allowing for all ${found.length} comparisons looked at, ${shownP(pTogether)} (Holm).`;
      return { ...one, pTogether, sentence: `${one.sentence}${paid}` };
    })
    .toSorted((a, b) => a.pTogether - b.pTogether || a.luck.p - b.luck.p);
}
