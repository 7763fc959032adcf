/** Wood of one kind. */
export interface Wood {
  /** Contact area a litre, against a 200 L cask (oak: `oakDose`). */
  readonly caskRatio: number;
  /** Face to face, cm. */
  readonly thicknessCm: number;
  /** 1 for new wood, 2 for its second use. */
  readonly use: number;
}

/** The wood and where it lies. */
export interface Conditions extends Wood {
  readonly abv20: number;
  readonly celsius: number;
}

/** Wood with days of its own, since the first of it went in. */
export interface WoodIn extends Wood {
  readonly inDay: number;
  /** Null while it is in. */
  readonly outDay: number | null;
}

/** So many pieces with days of their own are reckoned: each takes its time. */
export const MOST_PIECES = 12;
/** The least wood of a whole rest; a piece among others may be less. */
export const LEAST_RATIO = 0.01;

/** How an attribute goes: up to a plateau, or up and then down as tannin does. */
export type Course = "rises" | "rises-and-falls";

/** The form of the rise: a quick and a slow stage, or Peleg's curve. */
export type Form = "two-stage" | "peleg";

/** What one taster gave on one day since the oak went in; 0 to 10. Day 0 is before it went in. */
export interface CheckTasting {
  readonly day: number;
  readonly level: number;
}

export interface RestSettings {
  readonly conditions: Conditions;
  /** Wood that did not all go in on day 0 and stay: counts instead of the wood in `conditions`. */
  readonly pieces?: readonly WoodIn[];
  readonly course: Course;
  readonly form: Form;
  /** The rule: the oak comes out when the attribute reaches this. */
  readonly pullAt: number;
  /** The level from which the oak leads. */
  readonly leadsAt: number;
}

/** @throws RangeError naming what is outside */
export function checkSettings({ conditions, pieces, pullAt, leadsAt }: RestSettings): void {
  const { abv20, celsius } = conditions;
  checkWood(conditions, LEAST_RATIO);
  need("strength", abv20, 20, 80, " % vol");
  need("temperature", celsius, 0, 45, " °C");
  need("pull level", pullAt, 0.5, 10, "");
  need("leading level", leadsAt, pullAt, 12, "");
  if (pieces === undefined) return;
  need("pieces with days of their own", pieces.length, 1, MOST_PIECES, "");
  for (const piece of pieces) {
    checkWood(piece, Number.MIN_VALUE);
    need("day in", piece.inDay, 0, 3650, "");
    if (piece.outDay !== null) need("day out", piece.outDay, piece.inDay, 3650, "");
  }
}

function checkWood({ caskRatio, thicknessCm, use }: Wood, least: number): void {
  need("caskRatio", caskRatio, least, 50, "");
  need("thickness", thicknessCm, 0.02, 20, " cm");
  need("use", use, 1, 5, "");
  if (!Number.isInteger(use)) throw new RangeError(`use requires a whole number, got ${use}`);
}

/** @throws RangeError naming what is outside */
export function checkTastings(tastings: readonly CheckTasting[], today: number): void {
  need("today", today, 0, 3650, "");
  for (const { day, level } of tastings) {
    need("day of a tasting", day, 0, 3650, "");
    need("level of a tasting", level, 0, 10, "");
  }
}

function need(what: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high))
    throw new RangeError(`${what} requires ${low} to ${high}${unit}, got ${value}${unit}`);
}
