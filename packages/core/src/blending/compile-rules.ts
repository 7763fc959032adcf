import { admits } from "./admits.ts";
import { rowsOf } from "./rows.ts";
import type { Rule } from "./rule.ts";
import { RULE_TOLERANCE } from "./rule.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

/** Rules as numbers over the whiskeys they let in. `support` and `parts` below are places in `shelf` and whole parts. */
export type CompiledRules = {
  /** The whiskeys every rule lets in, in the shelf's order. */
  readonly shelf: readonly ShelfWhiskey[];
  /** Each has one number a whiskey; a recipe keeps it when the sum of parts x number is 0 or more. */
  readonly rows: readonly Float64Array[];
  /** Fewest and most parts of each whiskey, and the largest share of the parts. */
  readonly least: Int32Array;
  readonly most: Int32Array;
  readonly shareMost: Float64Array;
  /** False when something required is not let in: no recipe can keep the rules. */
  readonly possible: boolean;
};

/** Compiles the rules for a shelf. Rows that hold for every whiskey say nothing and are left out. */
export function compileRules(
  whiskeys: readonly ShelfWhiskey[],
  rules: readonly Rule[],
  maxParts: number,
): CompiledRules {
  const shelf = whiskeys.filter((whiskey) => rules.every((rule) => admits(rule, whiskey)));
  const place = new Map(shelf.map(({ id }, at) => [id, at]));
  const least = new Int32Array(shelf.length);
  const most = new Int32Array(shelf.length).fill(maxParts);
  const shareMost = new Float64Array(shelf.length).fill(1);
  let possible = true;
  const demand = (id: string, parts: number): void => {
    const at = place.get(id);
    if (at === undefined) possible = false;
    else least[at] = Math.max(least[at]!, Math.ceil(parts));
  };
  for (const rule of rules) {
    if (rule.kind === "mustUse") for (const id of rule.ids) demand(id, 1);
    if (rule.kind === "atLeastParts") demand(rule.id, rule.parts);
    if (rule.kind === "atMostParts") {
      const at = place.get(rule.id);
      if (at !== undefined) most[at] = Math.min(most[at]!, Math.floor(rule.parts));
    }
    if (rule.kind === "batch")
      for (const [at, { availableMl }] of shelf.entries())
        shareMost[at] = Math.min(shareMost[at]!, ((availableMl ?? 0) + RULE_TOLERANCE) / rule.ml);
  }
  const rows = rules
    .flatMap(rowsOf)
    .map((row) => Float64Array.from(shelf, row))
    .filter((row) => row.some((number) => number < 0));
  return { shelf, rows, least, most, shareMost, possible };
}

/** Whether a recipe of whiskeys that were let in keeps the compiled rules (least parts of whiskeys not in it are the caller's). */
export function keepsRules(
  rules: CompiledRules,
  support: ArrayLike<number>,
  parts: ArrayLike<number>,
  size: number,
): boolean {
  let all = 0;
  for (let x = 0; x < size; x += 1) all += parts[x]!;
  for (let x = 0; x < size; x += 1) {
    const at = support[x]!;
    const own = parts[x]!;
    if (own < rules.least[at]! || own > rules.most[at]! || own > rules.shareMost[at]! * all) return false;
  }
  for (const row of rules.rows) {
    let sum = 0;
    for (let x = 0; x < size; x += 1) sum += parts[x]! * row[support[x]!]!;
    if (sum < 0) return false;
  }
  return true;
}
