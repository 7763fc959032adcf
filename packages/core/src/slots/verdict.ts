import { known } from "../blending/index.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import type { Bounds, Condition, Listed, Named } from "./rule.ts";

/**
 * Whether a whiskey keeps a condition. `broken` has the value that breaks it; `unknown` the fact that is missing, and with it kept
 * and broken are both possible.
 */
export type Verdict =
  | { readonly state: "kept" }
  | { readonly state: "broken"; readonly value: number | string }
  | { readonly state: "unknown"; readonly fact: string };

const KEPT: Verdict = { state: "kept" };
const broken = (value: number | string): Verdict => ({ state: "broken", value });
const unknown = (fact: string): Verdict => ({ state: "unknown", fact });

/** Shares below this are rounding of what the grains add up to. */
const CRUMB = 1e-6;
/** What a house or a file writes where nobody knows. */
const NOT_KNOWN = "not known";

/** Names are compared without regard to capitals and spaces at their ends. */
const plain = (name: string): string => name.trim().toLowerCase();
const among = (names: readonly string[], name: string): boolean =>
  names.some((one) => plain(one) === plain(name));
const isKnown = (name: string | null | undefined): name is string => known(name) && plain(name) !== NOT_KNOWN;

/** Of a condition that looks at the whiskey alone. What looks at another slot is judged by `sameVerdict`. */
export function verdictOf(condition: Exclude<Condition, { about: "same" }>, whiskey: RuledWhiskey): Verdict {
  switch (condition.about) {
    case "strength":
      return within(condition, whiskey.abv20, "strength");
    case "age":
      return within(condition, whiskey.ageYears, "age");
    case "price":
      return within(condition, whiskey.pricePerLitre, "price");
    case "release":
      return within(condition, whiskey.released, "release");
    case "profile": {
      const said = Object.hasOwn(whiskey.profile, condition.attribute)
        ? whiskey.profile[condition.attribute]
        : null;
      const value = typeof said === "object" ? said?.value : said;
      return within(condition, value, `profile ${condition.attribute}`);
    }
    case "grainShare":
      return shareOf(condition.grain, condition, whiskey);
    case "listed":
      return listed(condition, whiskey);
    case "named":
      return named(condition, whiskey);
    case "sold":
      if (whiskey.gone === undefined) return unknown("sold");
      return whiskey.gone ? broken("gone") : KEPT;
  }
}

/** Of a condition on two slots, for the whiskeys that stand in them. */
export function sameVerdict(
  condition: Extract<Condition, { about: "same" }>,
  whiskey: RuledWhiskey,
  other: RuledWhiskey,
): Verdict {
  const [one, two] = [whiskey, other].map((each) => factOf(condition.what, each));
  if (!isKnown(one)) return unknown(condition.what);
  if (!isKnown(two)) return unknown(`${condition.what} of slot ${condition.slot}`);
  return (plain(one) === plain(two)) === condition.not ? broken(one) : KEPT;
}

function within({ low, high }: Bounds, value: number | null | undefined, fact: string): Verdict {
  if (!known(value)) return unknown(fact);
  return value < (low ?? -Infinity) || value > (high ?? Infinity) ? broken(value) : KEPT;
}

/** Per cent of a grain in the mash: least and most, which differ where the bill is not whole. */
function percentOf(grain: string, grains: Readonly<Record<string, number>>): readonly [number, number] {
  const rows = Object.entries(grains);
  const own = rows.filter(([name]) => plain(name) === plain(grain));
  const sum = own.reduce((all, [, share]) => all + share, 0);
  // Per cent as people write them: 0.07 × 100 is no 7 in floating point.
  const percent = Math.round(sum * 1e11) / 1e9;
  return own.length > 0 ? [percent, percent] : [0, restOf(grains) * 100];
}

/** The part of the mash that nobody has named. */
function restOf(grains: Readonly<Record<string, number>>): number {
  const rest = 1 - Object.values(grains).reduce((all, share) => all + share, 0);
  return rest > CRUMB ? rest : 0;
}

function shareOf(grain: string, { low, high }: Bounds, { grains }: RuledWhiskey): Verdict {
  if (!known(grains)) return unknown("grains");
  const [least, most] = percentOf(grain, grains);
  const [from, to] = [low ?? -Infinity, high ?? Infinity];
  if (least >= from && most <= to) return KEPT;
  return most < from || least > to ? broken(least) : unknown("grains");
}

/** What a whiskey has of a list, and whether that is all of it. */
function listOf(
  what: Listed,
  { grains, casks }: RuledWhiskey,
): { has: readonly string[]; whole: boolean } | null {
  if (what === "grain") {
    if (!known(grains)) return null;
    const rows = Object.entries(grains).filter(([, share]) => share > 0);
    return { has: rows.map(([name]) => name), whole: restOf(grains) === 0 };
  }
  // A whiskey has lain in one cask at least: an empty list says that nobody has written them down.
  if (!known(casks) || casks.length === 0) return null;
  const all = casks.map((cask) => (what === "wood" ? cask.species : cask.held));
  // Two casks of one wood are told once.
  return { has: [...new Set(all.filter(isKnown))], whole: all.every(isKnown) };
}

function listed(
  { what, how, names }: Extract<Condition, { about: "listed" }>,
  whiskey: RuledWhiskey,
): Verdict {
  const fact = what === "grain" ? "grains" : "casks";
  const list = listOf(what, whiskey);
  if (list === null) return unknown(fact);
  const { has, whole } = list;
  const open = whole ? null : unknown(fact);
  const inside = has.filter((name) => among(names, name));
  if (how === "some") return inside.length > 0 ? KEPT : (open ?? broken(has.join(", ")));
  const wrong = how === "no" ? inside : has.filter((name) => !among(names, name));
  return wrong.length > 0 ? broken(wrong.join(", ")) : (open ?? KEPT);
}

function factOf(what: Exclude<Named, "tag" | "place">, whiskey: RuledWhiskey): string | null | undefined {
  return { kind: whiskey.kind, distillery: whiskey.group, maker: whiskey.maker }[what];
}

/** A place is written the narrower first, with commas: of "Saltreach Island, the north" each of the two is one it is from. */
const partsOf = (place: string): readonly string[] =>
  place
    .split(",")
    .map(plain)
    .filter((part) => part !== "");

/** Whether what is from `here` is from `there`. Null where what is said of it is wider than what is asked. */
function isFrom(here: string, there: string): boolean | null {
  const [said, asked] = [partsOf(here), partsOf(there)];
  if (asked.length === 0) return false;
  if (asked.every((part) => said.includes(part))) return true;
  return said.every((part) => asked.includes(part)) ? null : false;
}

function fromPlace({ not, names }: Extract<Condition, { about: "named" }>, { place }: RuledWhiskey): Verdict {
  if (!isKnown(place) || partsOf(place).length === 0) return unknown("place");
  const from = names.map((name) => isFrom(place, name));
  const is = from.includes(true) ? true : from.includes(null) ? null : false;
  return is === null ? unknown("place") : is === not ? broken(place) : KEPT;
}

function named({ what, not, names }: Extract<Condition, { about: "named" }>, whiskey: RuledWhiskey): Verdict {
  if (what === "tag") {
    const { tags } = whiskey;
    if (tags === undefined) return unknown("tags");
    return tags.some((tag) => among(names, tag)) === not ? broken(tags.join(", ")) : KEPT;
  }
  if (what === "place") return fromPlace({ about: "named", what, not, names }, whiskey);
  const fact = factOf(what, whiskey);
  if (!isKnown(fact)) return unknown(what);
  return among(names, fact) === not ? broken(fact) : KEPT;
}
