import { loosestRules, printRule, type RuledWhiskey } from "@partsproof/core/slots";
import type { LoosenAnswer, LoosenDraft } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import { printed } from "./check-recipe.ts";
import { definedWeights, isNamed, ruled } from "./fill-recipe.ts";
import { originalOf } from "./original-of.ts";

type FileSlot = LoosenDraft["recipe"]["slots"][number];

/** For each slot of a recipe the loosest rule that keeps the result near, as far as the whiskeys of a shelf tell. */
export function loosenRecipe(draft: LoosenDraft): LoosenAnswer {
  const begun = performance.now();
  const { recipe, shelf, within, changing, weights } = draft;
  const known = shelf.whiskeys.map(ruled);
  const slots = recipe.slots.map((slot, n) => ({ parts: slot.parts, whiskey: whiskeyIn(slot, n) }));
  const whole = originalOf(recipe);
  // What is not known of a line's own whiskey would leave every other unjudged: it does not count.
  const profile = Object.fromEntries(
    Object.entries(whole.profile).filter(([name]) =>
      slots.every(({ whiskey }) => (whiskey.profile[name] ?? null) !== null),
    ),
  );
  const original = { ...whole, profile };
  needSomething(original);
  const found = loosestRules({
    slots,
    original,
    known,
    within,
    changing,
    ...(weights === undefined ? {} : { weights: definedWeights(weights) }),
  });
  return {
    within,
    changing,
    slots: found.slots.map(({ rule, proven, lets, keepsOutNear, keepsOut, notJudged, farthest }, n) => {
      const { parts, whiskey, rule: before } = recipe.slots[n]!;
      return {
        slot: n + 1,
        parts,
        named: whiskey?.name ?? null,
        before: before === undefined ? null : printed(before),
        rule: rule === null ? null : printRule(rule),
        proven,
        lets: [...lets],
        keepsOutNear: [...keepsOutNear],
        keepsOut: [...keepsOut],
        notJudged: [...notJudged],
        farthest,
        why:
          rule === null ? "no rule of up to four conditions leaves out every whiskey that is too far" : null,
      };
    }),
    eachWithin: found.eachWithin,
    together: found.together,
    elapsedMs: performance.now() - begun,
  };

  /** The shelf knows more of it than the file says, where it has it. */
  function whiskeyIn({ whiskey }: FileSlot, n: number): RuledWhiskey {
    const here = whiskey && shelf.whiskeys.findIndex((one) => isNamed(whiskey, one));
    if (here !== undefined && here >= 0) return known[here]!;
    if (whiskey?.abv === undefined)
      refuse(422, {
        code: "slot_not_known",
        path: ["recipe", "slots", n, "whiskey"],
        limit: "a whiskey with its strength in every slot",
        received: whiskey?.name ?? null,
        message: `finding rules requires a whiskey with its strength in every slot, got ${whiskey === undefined ? "none" : "one without"} in slot ${n + 1}`,
      });
    const id = `slot ${n + 1}`;
    return ruled({
      id,
      abv: whiskey.abv,
      profile: whiskey.profile ?? {},
      ageYears: whiskey.ageYears ?? null,
    });
  }
}

function needSomething({ profile, abv20: abv, youngestYears }: ReturnType<typeof originalOf>): void {
  if (Object.keys(profile).length > 0 || abv !== null || youngestYears !== null) return;
  refuse(422, {
    code: "nothing_to_come_close_to",
    path: ["recipe", "original"],
    limit: "a profile, a strength or an age",
    received: null,
    message: "finding rules requires a profile, a strength or an age of the original, got none",
  });
}
