import { attributeOf } from "./attribute-names.ts";
import { bounded, upTo } from "./read-bounds.ts";
import { readListed } from "./read-listed.ts";
import { readNames } from "./read-names.ts";
import { RULE_LIMITS } from "./rule.ts";
import type { Bounds, Condition } from "./rule.ts";
import type { TokenReader } from "./token-reader.ts";

/** Largest numbers of a rule. */
const MOST = { percent: 100, scale: 10, years: 200, price: 1_000_000, release: 9999 } as const;

const KINDS = "a condition, such as 55 % or stronger, wheat >= 16 %, only American oak or at least 8 years";

export function readCondition(reader: TokenReader): Condition {
  const { kind, text } = reader.next;
  if (kind === "number") return behindNumber(reader);
  if (kind === "quoted") return grainShare(reader);
  if (kind !== "word") return reader.fail(KINDS);
  switch (text.toLowerCase()) {
    case "at": {
      reader.take();
      return measured(reader, reader.oneOf("least", "most"));
    }
    case "only":
    case "no":
    case "some":
      return readListed(reader);
    case "strength": {
      reader.take();
      const side = reader.oneOf(">=", "<=") === ">=" ? "least" : "most";
      const value = reader.number("a strength in % vol", 0, MOST.percent);
      reader.need("%");
      return { about: "strength", ...bounded(side, value) };
    }
    case "released":
      return release(reader);
    case "still":
      reader.need("still", "sold");
      return { about: "sold" };
    case "not":
      reader.take();
      return named(reader, true);
    case "kind":
    case "from":
    case "distilled":
    case "made":
    case "tagged":
    case "the":
      return named(reader, false);
    default:
      return grainShare(reader);
  }
}

const most = (unit: string): number =>
  unit === "%" ? MOST.percent : unit === "of" ? MOST.scale : unit === "a" ? MOST.price : MOST.years;

/** A number, its unit, and the words that say which side is meant. */
function behindNumber(reader: TokenReader): Condition {
  const low = reader.number("a number", 0, MOST.price);
  if (reader.takeIf("to")) {
    const bounds = upTo(reader, "a number", low, MOST.price);
    return unitOf(reader, bounds);
  }
  if (reader.is("%")) {
    inside(reader, low, MOST.percent);
    reader.need("%", "or");
    const side = reader.oneOf("stronger", "weaker") === "stronger" ? "least" : "most";
    return { about: "strength", ...bounded(side, low) };
  }
  inside(reader, low, MOST.years);
  reader.oneOf("years", "year");
  reader.need("or");
  return { about: "age", ...bounded(reader.oneOf("older", "younger") === "older" ? "least" : "most", low) };
}

const measured = (reader: TokenReader, side: "least" | "most"): Condition =>
  unitOf(reader, bounded(side, reader.number("a number", 0, MOST.price)));

/** Which measure the bounds are of, by the unit that follows. */
function unitOf(reader: TokenReader, bounds: Bounds): Condition {
  const unit = reader.next.text.toLowerCase();
  if (["%", "of", "years", "year"].includes(unit))
    inside(reader, Math.max(bounds.low ?? 0, bounds.high ?? 0), most(unit));
  switch (reader.oneOf("%", "years", "year", "of", "a")) {
    case "%":
      return { about: "strength", ...bounds };
    case "years":
    case "year":
      return { about: "age", ...bounds };
    case "a":
      reader.need("litre");
      return { about: "price", ...bounds };
    case "of":
      if (reader.number("10, the scale of a profile", 0, MOST.price) !== MOST.scale)
        reader.fail("10 as the scale of a profile", "rule_out_of_bounds");
      return { about: "profile", attribute: attributeOf(reader.name("an attribute")), ...bounds };
  }
}

/** The number just read, judged once its unit is known. */
function inside(reader: TokenReader, value: number, limit: number): void {
  if (value > limit) reader.fail(`a number of at most ${limit} before this unit`, "rule_out_of_bounds");
}

function release(reader: TokenReader): Condition {
  reader.need("released", "in");
  if (!reader.takeIf("or")) {
    const low = reader.number("a year", 0, MOST.release, true);
    const bounds = reader.takeIf("to") ? upTo(reader, "a year", low, MOST.release, true) : { low, high: low };
    return { about: "release", ...bounds };
  }
  const side = reader.oneOf("before", "after") === "before" ? "most" : "least";
  return { about: "release", ...bounded(side, reader.number("a year", 0, MOST.release, true)) };
}

function named(reader: TokenReader, not: boolean): Condition {
  switch (reader.oneOf("kind", "from", "distilled", "made", "tagged", "the")) {
    case "kind":
      return { about: "named", what: "kind", not, names: readNames(reader, "a kind of whiskey").names };
    case "from":
      return { about: "named", what: "place", not, names: readNames(reader, "a place").names };
    case "distilled":
      reader.need("at");
      return { about: "named", what: "distillery", not, names: readNames(reader, "a distillery").names };
    case "made":
      reader.need("by");
      return { about: "named", what: "maker", not, names: readNames(reader, "a maker").names };
    case "tagged":
      return { about: "named", what: "tag", not, names: readNames(reader, "a tag").names };
    case "the": {
      reader.need("same");
      const what = reader.oneOf("distillery", "maker", "kind");
      reader.need("as", "slot");
      const slot = reader.number("a slot", 1, RULE_LIMITS.slots, true);
      return { about: "same", what, not, slot };
    }
  }
}

function grainShare(reader: TokenReader): Condition {
  const { name: grain } = reader.name(KINDS);
  if (reader.next.kind === "number") {
    const low = reader.number("per cent", 0, MOST.percent);
    reader.need("to");
    const bounds = upTo(reader, "per cent", low, MOST.percent);
    reader.need("%");
    return { about: "grainShare", grain, ...bounds };
  }
  const side = reader.oneOf(">=", "<=") === ">=" ? "least" : "most";
  const value = reader.number("per cent of the mash", 0, MOST.percent);
  reader.need("%");
  return { about: "grainShare", grain, ...bounded(side, value) };
}
