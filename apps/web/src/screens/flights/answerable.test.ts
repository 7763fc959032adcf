import { describe, expect, test } from "vitest";
import { answerable } from "./answerable.ts";
import type { Cupboard } from "./cupboard.ts";
import { newPlan, type Plan, withGlasses } from "./plan.ts";

const bottle = (vesselId: string, freeMl: number) => ({
  vesselId,
  label: vesselId,
  nameId: `whiskey:${vesselId}`,
  name: vesselId,
  blend: false,
  abv20: 46,
  freeMl,
  ethanolPerMl: 0.36,
});
const cupboard: Cupboard = { pourables: [bottle("Tarn", 500), bottle("Skerry", 30)], names: new Map() };
const plan = (more: Partial<Plan>, ...glasses: readonly (readonly [string, number])[]): Plan =>
  glasses.reduce((all, [vessel, n]) => withGlasses(all, vessel, n), { ...newPlan("today"), ...more });

describe("whether a plan's question can be answered", () => {
  test("two to tell apart are two whiskeys", () => {
    const asked = answerable(plan({ question: "tell_apart" }, ["Tarn", 1]), cupboard);
    expect(asked).toEqual({ ok: false, lacks: expect.stringContaining("two") });
  });

  // ISO 4120, number of assessors for alpha 0.05, beta 0.20, pd 50 %: 16. From memory; core/sensory reckons it exactly.
  test("four tasters on one evening are too few for a triangle; on four evenings they are enough but for the whiskey", () => {
    const set = [
      ["Tarn", 1],
      ["Skerry", 1],
    ] as const;
    const panel = { question: "tell_apart", sets: 1, tasterIds: ["a", "b", "c", "d"] } as const;
    const once = answerable(plan(panel, ...set), cupboard);
    expect(once.ok && once.answer.trials?.smallest).toBe(16);
    expect(once.ok && once.answer.shortages.map(({ code }) => code)).toEqual([
      "too_few_for_risk",
      "too_little_left",
    ]);
    const four = answerable(plan({ ...panel, sittings: 4 }, ...set), cupboard);
    expect(four.ok && four.answer.shortages.map(({ code }) => code)).toEqual(["too_little_left"]);
    expect(four.ok && four.missing.join()).toContain("Skerry requires 360 mL");
    const sets = answerable(plan({ ...panel, sets: 4 }, ...set), cupboard);
    expect(sets.ok && sets.answer.trialsAtHand).toBe(16);
  });

  // ISO 5495 counts a one-sided test where the direction is fixed beforehand, a two-sided one where it is not; ISO 10399, one-sided.
  test("a pair is one-sided only where it was said beforehand which has more, and then takes fewer", () => {
    const set = [
      ["Tarn", 1],
      ["Skerry", 1],
    ] as const;
    const pair = { question: "tell_apart", method: "paired", asked: "sweeter" } as const;
    const needs = (more: Partial<Plan>): number => {
      const seen = answerable(plan({ ...pair, ...more }, ...set), cupboard);
      return seen.ok ? (seen.answer.trials?.smallest ?? 0) : 0;
    };
    expect(needs({ expectedVesselId: "Tarn" })).toBeLessThan(needs({}));
    expect(needs({ expectedVesselId: "another" })).toBe(needs({}));
  });

  test("seats for guests count as tasters, and not when somebody is alone", () => {
    const glasses = [
      ["Tarn", 1],
      ["Skerry", 1],
    ] as const;
    const seats = answerable(plan({ tasterIds: ["a"], seats: 5 }, ...glasses), cupboard);
    expect(seats.ok && seats.answer.trialsAtHand).toBe(6);
    const alone = answerable(plan({ tasterIds: ["a"], seats: 5, pouring: "alone" }, ...glasses), cupboard);
    expect(alone.ok && alone.answer.trialsAtHand).toBe(1);
  });

  test("how close needs a target, agreeing with oneself two glasses", () => {
    expect(answerable(plan({ question: "how_close" }, ["Tarn", 2]), cupboard).ok).toBe(false);
    expect(answerable(plan({ question: "agree_with_myself" }, ["Tarn", 1]), cupboard).ok).toBe(false);
    expect(answerable(plan({ question: "agree_with_myself" }, ["Tarn", 1], ["Skerry", 1]), cupboard).ok).toBe(
      true,
    );
  });
});
