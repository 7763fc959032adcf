import { DAY_MS } from "@partsproof/core/quantity";
import type { KeptUp } from "@partsproof/house/protocol";
import { countDays, printShare } from "../../figures/index.ts";

/** The finding: what is most of it now, and what has become of the first of it. */
export function headlineOf(told: KeptUp): string {
  const [first] = told.additions;
  const now = told.course.at(-1);
  if (first === undefined || now === undefined || !(now.volumeMl > 0.05)) return "Nothing is in it now.";
  const most = now.parts.indexOf(Math.max(...now.parts));
  const name = told.liquids[most]?.label ?? "";
  const share = printShare(now.parts[most] ?? 0);
  const left = printShare(first.left);
  if (told.additions.length === 1) return `${name} is all of it; ${left} of what went in is still there.`;
  return `${share} of it is ${name} by now; ${left} of the first that went in is still there.`;
}

/** A half-life in the words of a calendar. */
export function printHalfLife(days: number | null): string {
  if (days === null) return "more than half is still there";
  if (days < 1) return "half gone within a day";
  return days < 120
    ? `half gone after ${countDays(Math.round(days))}`
    : `half gone after ${Math.round(days / 30.44)} months`;
}

/** Up to five moments between two, first and last with them, as whole days, months or years. */
export function ticksOf(from: number, until: number): { readonly at: number; readonly says: string }[] {
  const days = (until - from) / DAY_MS;
  const says = (at: number): string =>
    new Date(at).toLocaleDateString("en-GB", {
      timeZone: "UTC",
      ...(days < 120 ? { day: "numeric", month: "short" } : { month: "short", year: "numeric" }),
    });
  const ticks = Array.from({ length: 4 }, (_, i) => from + (i * (until - from)) / 3).map((at) => ({
    at,
    says: says(at),
  }));
  return ticks.filter(({ says: text }, i) => i === 0 || text !== ticks[i - 1]?.says);
}

/** Layers of more liquids than there are tones: the largest, by how much of them stood there, and the rest as one. */
export function layersOf(
  told: KeptUp,
  most: number,
): {
  readonly layers: readonly { readonly key: string; readonly label: string; readonly water: boolean }[];
  readonly points: readonly { readonly at: number; readonly ml: number; readonly parts: readonly number[] }[];
} {
  const weight = told.liquids.map((_, i) =>
    told.course.reduce((sum, { volumeMl, parts }) => sum + volumeMl * (parts[i] ?? 0), 0),
  );
  const order = told.liquids.map((_, i) => i).toSorted((a, b) => (weight[b] ?? 0) - (weight[a] ?? 0));
  const [shown, rest] =
    order.length <= most ? [order, []] : [order.slice(0, most - 1), order.slice(most - 1)];
  const layers = shown.map((i) => {
    const { liquidId = "", label = "" } = told.liquids[i] ?? {};
    return { key: liquidId, label, water: liquidId === "water" };
  });
  return {
    layers:
      rest.length === 0 ? layers : [...layers, { key: "rest", label: `${rest.length} others`, water: false }],
    points: told.course.map(({ at, volumeMl, parts }) => ({
      at: Date.parse(at),
      ml: volumeMl,
      parts: [
        ...shown.map((i) => parts[i] ?? 0),
        ...(rest.length === 0 ? [] : [rest.reduce((sum, i) => sum + (parts[i] ?? 0), 0)]),
      ],
    })),
  };
}
