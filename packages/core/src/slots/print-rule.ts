import { attributeName, standsForAnother } from "./attribute-names.ts";
import { cutTokens } from "./cut-tokens.ts";
import { endsInOak } from "./read-listed.ts";
import { BETWEEN, STARTERS } from "./reserved.data.ts";
import type { Bounds, Condition, Named, SlotRule } from "./rule.ts";

/**
 * A rule as it reads: `parseRule` of it gives the same rule again. Numbers lie
 * within the language's bounds and have at most six decimals.
 */
export const printRule = (rule: SlotRule): string =>
  rule.length === 0 ? "anything" : rule.map(printCondition).join(", ");

export function printCondition(condition: Condition): string {
  switch (condition.about) {
    case "strength":
      return sided(condition, "%", "or stronger", "or weaker");
    case "age":
      return sided(condition, "years", "or older", "or younger");
    case "price":
      return `${atSide(condition)} a litre`;
    case "profile":
      return `${atSide(condition)} of 10 ${printAttribute(condition.attribute)}`;
    case "release":
      return `released in ${printRelease(condition)}`;
    case "grainShare":
      return `${printName(condition.grain)} ${printShare(condition)} %`;
    case "listed":
      return printListed(condition);
    case "named":
      return `${condition.not ? "not " : ""}${BEFORE[condition.what]} ${printNames(condition.names)}`;
    case "same":
      return `${condition.not ? "not " : ""}the same ${condition.what} as slot ${condition.slot}`;
    case "sold":
      return "still sold";
  }
}

const BEFORE: Readonly<Record<Named, string>> = {
  kind: "kind",
  place: "from",
  distillery: "distilled at",
  maker: "made by",
  tag: "tagged",
};

function sided({ low, high }: Bounds, unit: string, least: string, most: string): string {
  if (low !== null && high !== null) return `${String(low)} to ${String(high)} ${unit}`;
  return low === null ? `${String(high!)} ${unit} ${most}` : `${String(low)} ${unit} ${least}`;
}

function atSide({ low, high }: Bounds): string {
  if (low !== null && high !== null) return `${String(low)} to ${String(high)}`;
  return low === null ? `at most ${String(high!)}` : `at least ${String(low)}`;
}

function printShare({ low, high }: Bounds): string {
  if (low !== null && high !== null) return `${String(low)} to ${String(high)}`;
  return low === null ? `<= ${String(high!)}` : `>= ${String(low)}`;
}

function printRelease({ low, high }: Bounds): string {
  if (low === high) return String(low!);
  if (low !== null && high !== null) return `${String(low)} to ${String(high)}`;
  return low === null ? `or before ${String(high!)}` : `or after ${String(low)}`;
}

function printListed({ what, how, names }: Extract<Condition, { about: "listed" }>): string {
  const list = printNames(names);
  if (what === "held") return `${how} casks that held ${list}`;
  const reads = names.every(endsInOak) ? "wood" : names.some(endsInOak) ? null : "grain";
  return reads === what ? `${how} ${list}` : `${how} ${what} ${list}`;
}

const printNames = (names: readonly string[]): string => names.map(printName).join(" or ");

const quote = (name: string): string => `"${name.replaceAll(/["\\]/gu, String.raw`\$&`)}"`;

/** Bare where it is read as the same name again, else in quotes. */
function printName(name: string): string {
  const tokens = cutTokens(name);
  const words = tokens.slice(0, -1);
  const plain =
    words.length > 0 &&
    tokens.at(-1)!.kind === "end" &&
    !STARTERS.has(words[0]!.text.toLowerCase()) &&
    words.every(({ kind, text }) => kind === "word" && text.toLowerCase() !== BETWEEN) &&
    words.map(({ text }) => text).join(" ") === name;
  return plain ? name : quote(name);
}

function printAttribute(id: string): string {
  const name = attributeName(id);
  if (name !== null) return printName(name) === name ? name : quote(id);
  return standsForAnother(id) ? quote(id) : printName(id);
}
