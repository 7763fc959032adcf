import type { Problem } from "./problem.ts";

/** Names what is looked at, when it comes to that: to spell out every name costs more than to look at every number. */
type What = () => string;

const demand = (what: What, condition: string, kept: boolean, got: number | string): void => {
  if (!kept) throw new RangeError(`${what()} requires ${condition}, got ${got}`);
};
const whole = (what: string, value: number): void =>
  demand(() => what, "a whole number of 1 or more", Number.isInteger(value) && value >= 1, value);
const finite = (what: What, value: number, low: number, high: number): void => {
  if (!(value >= low && value <= high)) demand(what, `a number from ${low} to ${high}`, false, value);
};
/** The first that stands in a list before, or undefined. */
const repeated = (names: readonly string[]): string | undefined => {
  const met = new Set<string>();
  return names.find((name) => met.size === met.add(name).size);
};

/** What no search can make sense of. @throws RangeError naming the first thing that is wrong. */
export function checkProblem({
  whiskeys,
  target,
  maxBottles,
  maxParts,
  rules,
  distance,
  shares,
}: Problem): void {
  whole("maxBottles", maxBottles);
  whole("maxParts", maxParts);
  const twice = repeated(whiskeys.map(({ id }) => id));
  demand(() => "whiskeys", "ids that differ", twice === undefined, String(twice));
  const again = repeated([...rules.map(({ name }) => name), "maxBottles", "maxParts"]);
  demand(
    () => "rules",
    "names that differ, and are not maxBottles or maxParts",
    again === undefined,
    String(again),
  );
  const attributes = Object.keys(target.profile);
  demand(() => "target", "at least one attribute", attributes.length > 0, 0);
  for (const attribute of attributes) {
    finite(() => `target ${attribute}`, target.profile[attribute] ?? Number.NaN, 0, 10);
    finite(() => `weight of ${attribute}`, target.weights?.[attribute] ?? 1, 0, 1e6);
    const exponent = target.exponents?.[attribute] ?? 1;
    if (exponent !== Infinity) finite(() => `exponent of ${attribute}`, exponent, 0.1, 10);
    demand(
      () => "distance",
      "root mean square with a power law",
      exponent === 1 || (distance ?? "root mean square") === "root mean square",
      String(distance),
    );
    for (const { id, profile } of whiskeys) {
      const given = profile[attribute] ?? 0;
      const value = typeof given === "number" ? given : given.value;
      const sd = typeof given === "number" ? 0 : given.sd;
      finite(() => `${attribute} of ${id}`, value, 0, 10);
      finite(() => `spread of ${attribute} of ${id}`, sd, 0, 10);
    }
  }
  demand(
    () => "weights",
    "a sum above 0",
    attributes.some((attribute) => (target.weights?.[attribute] ?? 1) > 0),
    0,
  );
  for (const { id, abv20 } of whiskeys) {
    finite(() => `strength of ${id}`, abv20, 0, 100);
    demand(
      () => `strength of ${id}`,
      "alcohol where shares are of the alcohol",
      shares !== "alcohol" || abv20 > 0,
      abv20,
    );
  }
}
