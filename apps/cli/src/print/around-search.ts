import type { PurchasesAnswer, RulePricesAnswer, TradeOffAnswer } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { partsOf, printRecipes, type Words } from "./search.ts";

export function printTradeOff({ points, complete }: TradeOffAnswer, of: string, words: Words): string {
  const proven = complete
    ? `Proven: no other recipe is both as close as one of these and as good in ${of}.`
    : "There are more than these.";
  return [printRecipes(points, words, "No recipe keeps the rules."), "", proven].join("\n");
}

export function printRulePrices({ best, rules }: RulePricesAnswer, words: Words): string {
  const head = best === null ? "No recipe keeps all rules." : printRecipes([best], words, "");
  const table = columns(
    rules,
    [
      { head: "Without", cell: ({ rule }) => rule },
      { head: "Closer by", cell: ({ costs }) => (costs === null ? "-" : costs.toFixed(3)), right: true },
      { head: "Then", cell: ({ without }) => (without === null ? "no recipe" : partsOf(without, words)) },
    ],
    "There are no rules besides those of bottles and parts.",
  );
  return [head, "", table].join("\n");
}

export function printPurchases({ purchases, neverNeeded }: PurchasesAnswer, words: Words): string {
  const table = columns(
    purchases,
    [
      { head: "Bottle", cell: ({ id }) => words.label(id) },
      { head: "Closer by", cell: ({ gain }) => gain.toFixed(3), right: true },
      {
        head: "Then",
        cell: ({ recipes: [first] }) => (first ? partsOf(first, words) : "no better recipe uses it"),
      },
    ],
    "There is none to choose from.",
  );
  const idle = neverNeeded.map(words.label).join(", ");
  return [table, "", `In none of the best recipes: ${idle === "" ? "none; all are used" : idle}.`].join("\n");
}
