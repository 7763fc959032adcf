import { known } from "../blending/index.ts";
import type { Condition } from "./rule.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import { roundBound } from "./round-bound.ts";
import { type Verdict, verdictOf } from "./verdict.ts";

/** One bound that a rule may set on a whiskey, or one thing it may ask of its lists: from none to what the original itself keeps. */
export type SlotSide = {
  /** How far a whiskey lies to the side that is kept: larger is safer; null where it is not known. */
  readonly value: (whiskey: RuledWhiskey) => number | null;
  /** The condition that leaves out `out` and all below it and keeps `kept` and all above; null where none is readable. */
  readonly asking: (out: number, kept: number) => Condition | null;
};

type Bounded = (bound: { readonly low: number | null; readonly high: number | null }) => Condition;

/** Both sides of a number. */
function sidesOf(value: SlotSide["value"], condition: Bounded, most: number): readonly SlotSide[] {
  return [
    {
      value,
      asking: (out, kept) => {
        const low = roundBound(out, kept);
        return low === null || low > most ? null : condition({ low, high: null });
      },
    },
    {
      value: (whiskey) => {
        const own = value(whiskey);
        return own === null ? null : -own;
      },
      asking: (out, kept) => {
        const bound = roundBound(out, kept);
        return bound === null || bound > 0 ? null : condition({ low: null, high: bound === 0 ? 0 : -bound });
      },
    },
  ];
}

/** Kept or not: 1 or 0, so that it is a side as well. */
function yesOrNo(condition: Exclude<Condition, { about: "same" }>): SlotSide {
  const of: Record<Verdict["state"], number | null> = { kept: 1, broken: 0, unknown: null };
  return { value: (whiskey) => of[verdictOf(condition, whiskey).state], asking: () => condition };
}

/**
 * What a rule for the place of this whiskey could ask, by what is known of it: kind, woods, what casks held, grains, strength, age, then what it tastes
 * of. Names and prices are left out: a rule is for shelves that have neither.
 */
export function slotSides(
  original: RuledWhiskey,
  attributes: readonly string[],
  most = { percent: 100, years: 200, scale: 10 },
): readonly SlotSide[] {
  const listed: SlotSide[] = [];
  const kept = (condition: Exclude<Condition, { about: "same" }>): void => {
    if (verdictOf(condition, original).state === "kept") listed.push(yesOrNo(condition));
  };
  if (known(original.kind)) kept({ about: "named", what: "kind", not: false, names: [original.kind] });
  const woods = [...new Set(original.casks?.flatMap(({ species }) => species ?? []))];
  if (woods.length > 0) kept({ about: "listed", what: "wood", how: "only", names: woods });
  const held = [...new Set(original.casks?.flatMap((cask) => cask.held ?? []))];
  if (held.length > 0) kept({ about: "listed", what: "held", how: "only", names: held });
  const grains = Object.keys(original.grains ?? {});
  const shareOf =
    (grain: string): SlotSide["value"] =>
    ({ grains: own }) => {
      if (!known(own)) return null;
      const sum = Object.values(own).reduce((all, share) => all + share, 0);
      const share = Object.hasOwn(own, grain) ? own[grain]! : 0;
      // A bill that is not whole may hold more of it, or some of it after all.
      if (Math.abs(sum - 1) > 1e-6 && !Object.hasOwn(own, grain)) return null;
      return Math.round(share * 1e11) / 1e9;
    };
  return [
    ...listed,
    ...sidesOf(
      ({ abv20 }) => abv20,
      (bounds) => ({ about: "strength", ...bounds }),
      most.percent,
    ),
    ...grains.flatMap((grain) =>
      sidesOf(shareOf(grain), (bounds) => ({ about: "grainShare", grain, ...bounds }), most.percent),
    ),
    ...sidesOf(
      ({ ageYears }) => ageYears ?? null,
      (bounds) => ({ about: "age", ...bounds }),
      most.years,
    ),
    ...attributes.flatMap((attribute) =>
      sidesOf(
        ({ profile }) => {
          const said = Object.hasOwn(profile, attribute) ? profile[attribute] : null;
          return (typeof said === "object" ? said?.value : said) ?? null;
        },
        (bounds) => ({ about: "profile", attribute, ...bounds }),
        most.scale,
      ),
    ),
  ];
}
