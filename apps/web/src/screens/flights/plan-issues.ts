import type { Issue } from "@partsproof/house/protocol";
import { glassesOf, inSets, type Plan, tastersOf } from "./plan.ts";

/** What is missing before a plan can be sent, told as people say it; the house checks all else. */
export function planIssues(plan: Plan): readonly Issue[] {
  const glasses = glassesOf(plan);
  return [
    ...(glasses < 2 ? [issue("glasses_few", "glasses", "at least 2 glasses", glasses)] : []),
    ...(inSets(plan) && plan.method === "paired" && plan.asked.trim() === ""
      ? [issue("asked_needed", "asked", "what is asked for, such as sweeter", null)]
      : []),
    ...(plan.name.trim() === "" ? [issue("name_missing", "name", "a name", null)] : []),
    ...(plan.pouring === "someone else" && plan.pourer.trim() === ""
      ? [issue("pourer_needed", "pourer", "the name of somebody who pours and does not taste", null)]
      : []),
    ...(tastersOf(plan) === 0 ? [issue("tasters_few", "tasterIds", "at least 1 taster", 0)] : []),
  ];
}

/** Issues of the last try that still hold: one of ours goes as soon as what it misses is there. */
export function stillIssues(plan: Plan, issues: readonly Issue[]): readonly Issue[] {
  const ours = new Set(["glasses_few", "asked_needed", "name_missing", "pourer_needed", "tasters_few"]);
  const missing = new Set(planIssues(plan).map(({ code }) => code));
  return issues.filter(({ code }) => !ours.has(code) || missing.has(code));
}

function issue(code: string, field: string, limit: string, received: number | null): Issue {
  const message = `a flight requires ${limit}, got ${received ?? "none"}`;
  return { code, path: [field], limit, received, message };
}
