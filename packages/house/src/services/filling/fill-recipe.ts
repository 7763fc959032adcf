import { abv20 } from "@partsproof/core/quantity";
import {
  type FilledSlots,
  type FillProblem,
  fillSlots,
  parseRule,
  type RuledWhiskey,
  type SlotRule,
} from "@partsproof/core/slots";
import type { RecipeFillAnswer, RecipeFillDraft, FillWhiskey } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import { printed } from "./check-recipe.ts";
import { originalOf } from "./original-of.ts";

/** Choices looked at before a filling is given up unproven, so that one request does not keep the others waiting: about a second. */
const MOST_LOOKED = 300_000_000;
const MOST_BOUGHT = 5;

/** A recipe filled from a shelf, and where slots stay empty, with what could be bought. */
export function fillRecipe(draft: RecipeFillDraft): RecipeFillAnswer {
  const begun = performance.now();
  const problem = problemOf(draft);
  const { recipe, shelf } = draft;
  const found = fillSlots(problem, draft.top ?? 1, MOST_LOOKED);
  const [best, ...others] = found.fillings.map(shown);
  return {
    slots: found.slots.map(({ candidates, rejected, asked }, n) => {
      const { parts, rule } = recipe.slots[n]!;
      return {
        slot: n + 1,
        parts,
        rule: rule === undefined ? null : printed(rule),
        candidates: [...candidates],
        rejected: rejected.map(({ id, breaks, missing }) => ({
          id,
          breaks: [...breaks],
          missing: [...missing],
        })),
        asked: asked.map(({ id, missing }) => ({ id, missing: [...missing] })),
      };
    }),
    best: best ?? null,
    distance: best?.distance ?? null,
    others,
    proven: found.proven,
    empty: [...found.empty],
    wanted: found.wanted.map(({ abv20: abv, ...own }) => ({ ...own, profile: { ...own.profile }, abv })),
    bought: found.empty.length === 0 ? [] : boughtFor(draft, problem, found.empty),
    counted: countedOf(problem),
    elapsedMs: performance.now() - begun,
  };

  function boughtFor(
    asked: RecipeFillDraft,
    own: FillProblem,
    empty: readonly number[],
  ): RecipeFillAnswer["bought"] {
    const there = new Set(shelf.whiskeys.map(({ id }) => id));
    const could = (asked.couldBuy ?? []).filter(({ id }) => !there.has(id));
    if (could.length === 0) return [];
    const slots = own.slots.map((slot, n) => {
      const new1 = empty.includes(n + 1);
      const named = asked.recipe.slots[n]!;
      const from = new1 ? could : shelf.whiskeys;
      const ids = (named.rule === undefined ? from.filter((one) => isNamed(named.whiskey!, one)) : from).map(
        ({ id }) => id,
      );
      return { ...slot, ids };
    });
    const whiskeys = [...own.whiskeys, ...could.map(ruled)];
    const full = fillSlots({ ...own, whiskeys, slots }, MOST_BOUGHT, MOST_LOOKED);
    return full.empty.length === 0 ? full.fillings.map(shown) : [];
  }
}

const shown = ({ abv20: abv, ids, off, ...own }: FilledSlots): RecipeFillAnswer["bought"][number] => ({
  ids: [...ids],
  ...own,
  off: off.map((one) => ({ ...one })),
  abv,
});

function problemOf({ recipe, shelf, waterTo, pouredMl, weights }: RecipeFillDraft): FillProblem {
  const original = originalOf(recipe);
  const problem: FillProblem = {
    whiskeys: shelf.whiskeys.map(ruled),
    slots: recipe.slots.map(({ parts, rule, whiskey }) => ({
      parts,
      rule: ruleOf(rule),
      ...(rule === undefined
        ? { ids: shelf.whiskeys.filter((one) => isNamed(whiskey!, one)).map(({ id }) => id) }
        : {}),
    })),
    original,
    ...(waterTo === undefined ? {} : { waterTo: abv20(waterTo) }),
    ...(pouredMl === undefined ? {} : { pouredMl }),
    ...(weights === undefined ? {} : { weights: definedWeights(weights) }),
  };
  const { attributes, strength, age } = countedOf(problem);
  if (attributes.length === 0 && !strength && !age)
    refuse(422, {
      code: "nothing_to_come_close_to",
      path: ["recipe", "original"],
      limit: "a profile, a strength or an age, with a weight above 0",
      received: null,
      message:
        "a recipe to be filled requires a profile, a strength or an age of the original, with a weight above 0, got none",
    });
  return problem;
}

/** What is known of the original and has a weight. */
function countedOf({ original, weights, waterTo }: FillProblem): RecipeFillAnswer["counted"] {
  const own = weights?.profile ?? {};
  return {
    attributes: Object.keys(original.profile).filter((name) => !Object.hasOwn(own, name) || own[name]! > 0),
    strength: (original.abv20 !== null || waterTo !== undefined) && (weights?.strength ?? 1) > 0,
    age: original.youngestYears !== null && (weights?.age ?? 1) > 0,
  };
}

export const definedWeights = (
  weights: NonNullable<RecipeFillDraft["weights"]>,
): NonNullable<FillProblem["weights"]> =>
  Object.fromEntries(Object.entries(weights).filter(([, value]) => value !== undefined));

function ruleOf(text: string | undefined): SlotRule {
  const parsed = parseRule(text ?? "anything");
  return parsed.ok ? parsed.rule : [];
}

type Named = NonNullable<RecipeFillDraft["recipe"]["slots"][number]["whiskey"]>;

/** Whether a whiskey of the shelf is the one a recipe names: the same name, and maker and release where both say them. */
export function isNamed({ maker, name, release }: Named, whiskey: FillWhiskey): boolean {
  const same = (one: string | null | undefined, two: string | null | undefined): boolean =>
    one === undefined || one === null || two === undefined || two === null
      ? true
      : one.trim().toLowerCase() === two.trim().toLowerCase();
  return (
    same(name, whiskey.name ?? whiskey.id) && same(maker, whiskey.maker) && same(release, whiskey.release)
  );
}

/** A whiskey of a shelf's file as core fills with it: what is left out stays not known. */
export function ruled({ abv, profile, name: _, release: __, ...facts }: FillWhiskey): RuledWhiskey {
  const { tags, gone, ...own } = facts;
  return {
    ...own,
    abv20: abv20(abv),
    profile: { ...profile },
    pricePerLitre: own.pricePerLitre ?? null,
    availableMl: own.availableMl ?? null,
    ageYears: own.ageYears ?? null,
    grains: own.grains ?? null,
    casks: own.casks ?? null,
    maker: own.maker ?? null,
    group: own.group ?? null,
    kind: own.kind ?? null,
    place: own.place ?? null,
    released: own.released ?? null,
    ...(tags === undefined ? {} : { tags }),
    ...(gone === undefined ? {} : { gone }),
  };
}
