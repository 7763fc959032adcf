import type { Problem } from "./problem.ts";

const demand = (what: string, condition: string, kept: boolean, got: number | string): void => {
  if (!kept) throw new RangeError(`${what} requires ${condition}, got ${got}`);
};
const whole = (what: string, value: number): void =>
  demand(what, "a whole number of 1 or more", Number.isInteger(value) && value >= 1, value);
const finite = (what: string, value: number, low: number, high: number): void =>
  demand(what, `a number from ${low} to ${high}`, value >= low && value <= high, value);

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
  const ids = whiskeys.map(({ id }) => id);
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  demand("whiskeys", "ids that differ", twice === undefined, String(twice));
  const names = [...rules.map(({ name }) => name), "maxBottles", "maxParts"];
  const again = names.find((name, at) => names.indexOf(name) !== at);
  demand(
    "rules",
    "names that differ, and are not maxBottles or maxParts",
    again === undefined,
    String(again),
  );
  const attributes = Object.keys(target.profile);
  demand("target", "at least one attribute", attributes.length > 0, 0);
  for (const attribute of attributes) {
    finite(`target ${attribute}`, target.profile[attribute] ?? Number.NaN, 0, 10);
    finite(`weight of ${attribute}`, target.weights?.[attribute] ?? 1, 0, 1e6);
    const exponent = target.exponents?.[attribute] ?? 1;
    finite(`exponent of ${attribute}`, exponent, 0.1, 10);
    demand(
      "distance",
      "root mean square with a power law",
      exponent === 1 || (distance ?? "root mean square") === "root mean square",
      String(distance),
    );
    for (const { id, profile } of whiskeys) {
      const given = profile[attribute] ?? 0;
      const [value, sd] = typeof given === "number" ? [given, 0] : [given.value, given.sd];
      finite(`${attribute} of ${id}`, value, 0, 10);
      finite(`spread of ${attribute} of ${id}`, sd, 0, 10);
    }
  }
  demand(
    "weights",
    "a sum above 0",
    attributes.some((attribute) => (target.weights?.[attribute] ?? 1) > 0),
    0,
  );
  for (const { id, abv20 } of whiskeys) {
    finite(`strength of ${id}`, abv20, 0, 100);
    demand(
      `strength of ${id}`,
      "alcohol where shares are of the alcohol",
      shares !== "alcohol" || abv20 > 0,
      abv20,
    );
  }
}
