import type { Lineage, LineageBatch, LineageChange, LineageVersion } from "@partsproof/house/protocol";
import { abv, day, ml, percent, stated } from "./figures.ts";

/** The tree as lines, each a step further in than what it comes from. */
export function printLineage({ recipes }: Lineage): string {
  if (recipes.length === 0) return "No recipe yet: recipe add";
  return recipes
    .map(({ name, versions }) => [name, ...versions.flatMap(versionLines).map(indented)].join("\n"))
    .join("\n\n");
}

const indented = (line: string): string => `  ${line}`;

const versionLines = ({ number, createdAt, parts, changes, batches }: LineageVersion): string[] => [
  `version ${number}, ${day(createdAt)}: ${parts.map((one) => `${one.parts} ${one.label}`).join(" + ")}`,
  ...changes.map((change) => `  ${changeText(change)}`),
  ...batches.flatMap(batchLines).map(indented),
];

const batchLines = (batch: LineageBatch): string[] => [
  `batch ${batch.name}, ${day(batch.madeAt)}: ${ml(batch.ml)} at ${abv(batch.abv20)}, ${batch.state}, ${ml(batch.leftMl)} left`,
  ...batch.flights.map(({ name, said }) => `  ${name}: ${said}`),
  ...batch.usedIn.map(({ name, number }) => `  goes into ${name}, version ${number}`),
];

function changeText(change: LineageChange): string {
  if (change.what === "slot")
    return `${change.label}: ${percent(change.shareBefore)} to ${percent(change.shareNow)} of what is poured`;
  if (change.what === "water") {
    const said = (to: typeof change.now): string => (to === null ? "no water" : `water to ${stated(to)}`);
    return `${said(change.before)}, now ${said(change.now)}`;
  }
  if (change.what === "rest") {
    const said = (days: number | null): string => (days === null ? "no rest asked" : `rest ${days} days`);
    return `${said(change.before)}, now ${said(change.now)}`;
  }
  const said = (oak: string): string => (oak === "" ? "no oak" : `oak: ${oak}`);
  return `${said(change.before)}, now ${said(change.now)}`;
}
