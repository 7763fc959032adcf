import type { Goals, Rule, RuleKind } from "@partsproof/core/blending";
import { parseVolume } from "@partsproof/core/quantity";
import type { Issue } from "@partsproof/house/protocol";
import { readMoney } from "../figures/index.ts";
import type { RuleKey, Rules } from "./rules.ts";
import { stands } from "./rules.ts";

/** What rules are about, besides their own values. */
export interface About {
  /** The whiskey sought; "" where none is. */
  readonly targetId: string;
  readonly onShelf: readonly string[];
  readonly currency: string;
}

export interface ReadRules {
  readonly rules: readonly Rule[];
  readonly goals: Goals;
}

const PRICED_ML = 700;

/** Reads what was typed; what cannot be read comes back as issues, and nothing is searched meanwhile. */
export function readRules(
  typed: Rules,
  about: About,
):
  | { readonly ok: true; readonly value: ReadRules }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const rules: Rule[] = [];
  const refuse = (path: string, what: string, limit: string, received: string): void => {
    const got = received.trim() === "" ? "nothing" : `"${received.trim()}"`;
    issues.push({
      code: "rule_unreadable",
      path: [path],
      limit,
      received,
      message: `${what} requires ${limit}, got ${got}`,
    });
  };
  const number = (
    path: string,
    what: string,
    limit: string,
    low: number,
    high: number,
    text: string,
  ): number => {
    const read = /^\d{1,7}(?:[.,]\d{1,3})?$/.test(text.trim())
      ? Number(text.trim().replace(",", "."))
      : Number.NaN;
    if (read >= low && read <= high) return read;
    refuse(path, what, limit, text);
    return low;
  };
  const money = (path: string, text: string): number => {
    const read = readMoney(text, about.currency, [path]);
    if (read.ok && read.minor !== null) return read.minor;
    if (read.ok) refuse(path, "price", `an amount of ${about.currency}`, text);
    else issues.push(read.issue);
    return 0;
  };
  const chosen = (path: string, what: string, text: string): string => {
    if (text.trim() === "") refuse(path, what, "a choice", text);
    return text;
  };
  const rule = (key: RuleKey, of: () => RuleKind): void => {
    if (stands(typed, key)) rules.push({ name: key, ...of() });
  };

  if (about.targetId !== "") rule("notTarget", () => ({ kind: "withoutWhiskeys", ids: [about.targetId] }));
  rule("onShelf", () => ({ kind: "onlyWhiskeys", ids: about.onShelf }));
  rule("strength", () => {
    const low = number("low", "lowest strength", "0 to 100 % vol", 0, 100, typed.low);
    const high = number("high", "highest strength", "0 to 100 % vol", 0, 100, typed.high);
    if (low > high) refuse("high", "highest strength", `at least ${low} % vol`, typed.high);
    return { kind: "strength", low, high };
  });
  rule("minAge", () => ({
    kind: "minAge",
    years: number("years", "youngest age", "0 to 120 years", 0, 120, typed.years),
  }));
  rule("wood", () => ({ kind: "onlyWoods", species: [typed.wood] }));
  rule("withoutHeld", () => ({
    kind: "withoutCasks",
    // Nobody knows that such a cask did not hold it.
    held: [chosen("held", "cask", typed.held), "not known"],
  }));
  rule("notGone", () => ({ kind: "notGone" }));
  rule("onePlace", () => ({ kind: "oneGroup" }));
  rule("grain", () => ({
    kind: "grainShare",
    grain: chosen("grain", "grain", typed.grain),
    low: number("grainPercent", "grain share", "0 to 100 %", 0, 100, typed.grainPercent) / 100,
    high: 1,
  }));
  rule("mustUse", () => ({ kind: "mustUse", ids: some("mustUse", typed.mustUse) }));
  rule("keep", () => ({ kind: "withoutWhiskeys", ids: some("keep", typed.keep) }));
  rule("mostOfOne", () => ({
    kind: "atMostParts",
    id: chosen("mostOf", "whiskey", typed.mostOf),
    parts: typed.mostParts,
  }));
  rule("price", () => ({
    kind: "maxPricePerBottle",
    bottleMl: PRICED_ML,
    price: money("price", typed.price),
  }));
  rule("batch", () => {
    const read = parseVolume(typed.batch);
    if (!read.ok) issues.push({ ...read.issue, path: ["batch"] });
    else if (read.value < 1) refuse("batch", "batch", "at least 1 mL", typed.batch);
    return { kind: "batch", ml: read.ok ? read.value : 1 };
  });
  function some(path: string, ids: readonly string[]): readonly string[] {
    if (ids.length === 0) refuse(path, "whiskey", "a choice", "");
    return ids;
  }

  const { cheaperBy, olderBy, lowBelow } = typed.besides;
  let goals: Goals = {};
  if (cheaperBy.trim() !== "") {
    const minor = money("cheaperBy", cheaperBy);
    if (minor > 0) goals = { ...goals, price: (0.1 / minor) * (PRICED_ML / 1000) };
  }
  if (olderBy.trim() !== "")
    goals = { ...goals, age: 0.1 / number("olderBy", "age", "0.1 to 120 years", 0.1, 120, olderBy) };
  if (lowBelow.trim() !== "") {
    const read = parseVolume(lowBelow);
    if (read.ok) goals = { ...goals, useUp: { weight: 0.3, belowMl: read.value } };
    else issues.push({ ...read.issue, path: ["lowBelow"] });
  }
  return issues.length === 0 ? { ok: true, value: { rules, goals } } : { ok: false, issues };
}
