import { describe, expect, test } from "vitest";
import { newPlan, type Plan, withGlasses } from "./plan.ts";
import { planIssues, stillIssues } from "./plan-issues.ts";

const whole: Plan = {
  ...withGlasses(newPlan("today"), "a", 2),
  pourer: "Pat",
  tasterIds: ["t"],
};

describe("what is missing in a plan", () => {
  test("nothing in a whole one", () => {
    expect(planIssues(whole)).toEqual([]);
  });

  test("each thing has its own code and path, and says what it got", () => {
    const bare = { ...newPlan("today"), name: " " };
    expect(planIssues(bare).map(({ code, path }) => [code, ...path])).toEqual([
      ["glasses_few", "glasses"],
      ["name_missing", "name"],
      ["pourer_needed", "pourer"],
      ["tasters_few", "tasterIds"],
    ]);
    expect(planIssues(bare)[0]?.message).toBe("a flight requires at least 2 glasses, got 0");
  });

  test("alone needs no pourer", () => {
    expect(planIssues({ ...whole, pouring: "alone", pourer: "" })).toEqual([]);
  });

  test("an issue goes when it is put right; those of the house stay until the next try", () => {
    const house = { code: "vessel_short", path: ["glasses", 0], limit: "", received: 1, message: "" };
    const issues = [...planIssues({ ...whole, pourer: "" }), house];
    expect(stillIssues(whole, issues)).toEqual([house]);
    expect(stillIssues({ ...whole, pourer: "" }, issues)).toEqual(issues);
  });
});
