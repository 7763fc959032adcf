/** Where the wood lies. */
export interface Conditions {
  /** Contact area a litre, against a 200 L cask (oak: `oakDose`). */
  readonly caskRatio: number;
  /** Face to face, cm. */
  readonly thicknessCm: number;
  readonly abv20: number;
  readonly celsius: number;
  /** 1 for new wood, 2 for its second use. */
  readonly use: number;
}

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
  readonly course: Course;
  readonly form: Form;
  /** The rule: the oak comes out when the attribute reaches this. */
  readonly pullAt: number;
  /** The level from which the oak leads. */
  readonly leadsAt: number;
}

/** @throws RangeError naming what is outside */
export function checkSettings({ conditions, pullAt, leadsAt }: RestSettings): void {
  const { caskRatio, thicknessCm, abv20, celsius, use } = conditions;
  need("caskRatio", caskRatio, 0.01, 50, "");
  need("thickness", thicknessCm, 0.02, 20, " cm");
  need("strength", abv20, 20, 80, " % vol");
  need("temperature", celsius, 0, 45, " °C");
  need("use", use, 1, 5, "");
  if (!Number.isInteger(use)) throw new RangeError(`use requires a whole number, got ${use}`);
  need("pull level", pullAt, 0.5, 10, "");
  need("leading level", leadsAt, pullAt, 12, "");
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
