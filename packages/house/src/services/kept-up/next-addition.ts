import { describeLiquid } from "@partsproof/core/alcoholometry";
import { type Contents as Held, contentsOfVessel, volumeOf, WATER } from "@partsproof/core/ledger";
import { grams } from "@partsproof/core/quantity";
import type {
  AnswerOf,
  BodyRead,
  NextAddition,
  SearchProblem,
  SearchWhiskey,
  ShelfProblem,
} from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import type { VesselRow } from "../rows.ts";
import { problemOf } from "../search/index.ts";
import { slotLiquids } from "../recipes/index.ts";
import { type Shelf, shownContents, together } from "../shelf/index.ts";
import { stockOf, takeFrom } from "../batches/index.ts";

/** What is asked of the search, and what is needed to tell its answer. */
export interface NextAsked {
  readonly shelf: Shelf;
  readonly vessel: VesselRow;
  readonly addMl: number;
  readonly problem: SearchProblem;
  readonly shown: ShelfProblem;
  readonly bottle: Readonly<Record<string, number>>;
  readonly unknown: readonly string[];
}

/**
 * U3: the search of a recipe for what is poured on top. Every whiskey stands in it as the whole bottle would be were all of the
 * addition it: share s of what is in the bottle and 1 − s of the whiskey. As profiles mix by their means, the closest recipe of these is
 * the addition that brings the bottle closest, at the distance the bottle will have.
 */
export function nextAsked(
  shelf: Shelf,
  currency: string,
  vessel: VesselRow,
  body: BodyRead<"nextAddition">,
): NextAsked {
  const held = contentsOfVessel(shelf.state, vessel.id);
  const heldMl = volumeOf(held);
  const roomMl = vessel.capacityMl - heldMl;
  const addMl = body.addMl ?? roomMl;
  if (!(addMl >= 1) || addMl > roomMl * (1 + 1e-9))
    refuse(422, {
      code: "no_room",
      path: ["addMl"],
      limit: `1 to the ${roomMl.toFixed(1)} mL that ${vessel.label} has room for`,
      received: addMl,
      message: `an addition requires 1 mL to the ${roomMl.toFixed(1)} mL that ${vessel.label} has room for, got ${addMl.toFixed(1)} mL`,
    });
  // The bottle itself is no bottle to add from.
  const others = new Map([...shelf.vessels].filter(([id]) => id !== vessel.id));
  const { addMl: _, maxBottles, maxParts, top, ...target } = body;
  const shown = problemOf({ ...shelf, vessels: others }, currency, {
    ...target,
    useIt: true,
    shares: "volume",
    mixing: "mean",
    levels: "shelf",
    top,
    rules: { maxBottles, maxParts, batchMl: addMl },
  });
  const said = profileOf(shelf, held, Object.keys(shown.problem.target.profile));
  const share = heldMl / (heldMl + addMl);
  const problem = mixedInto(shown.problem, said, share);
  return {
    shelf: { ...shelf, vessels: others },
    vessel,
    addMl,
    problem,
    shown,
    bottle: said,
    unknown: Object.keys(shown.problem.target.profile).filter((name) => !(name in said)),
  };
}

/** What the bottle should taste of: the mean of what went in by volume, water aside; what is not known of one is left out. */
function profileOf(shelf: Shelf, held: Held, attributes: readonly string[]): Record<string, number> {
  const parts = [...held].flatMap(([id, one]) => {
    if (id === WATER) return [];
    const ethanolG = one.pricedEthanolG + one.unpricedEthanolG;
    const waterG = one.pricedWaterG + one.unpricedWaterG;
    const { volumeMl } = describeLiquid({ ethanolG: grams(ethanolG), waterG: grams(waterG) });
    return [{ ml: volumeMl, said: shelf.whiskeys.get(id)?.profile?.intensities ?? {} }];
  });
  const whole = parts.reduce((sum, { ml }) => sum + ml, 0);
  if (whole === 0) return {};
  return Object.fromEntries(
    attributes.flatMap((name): [string, number][] => {
      let sum = 0;
      for (const { ml, said } of parts) {
        const one = said[name];
        if (one === undefined || one === null) return [];
        sum += ml * (typeof one === "number" ? one : one.value);
      }
      return [[name, sum / whole]];
    }),
  );
}

function mixedInto(
  problem: SearchProblem,
  bottle: Readonly<Record<string, number>>,
  share: number,
): SearchProblem {
  // Of an empty bottle everything is known: nothing is in it.
  const known = share === 0 ? Object.keys(problem.target.profile) : Object.keys(bottle);
  if (known.length === 0)
    refuse(422, {
      code: "bottle_unknown",
      path: ["profile"],
      limit: "an attribute that somebody has said of every whiskey in the bottle",
      received: Object.keys(problem.target.profile),
      message:
        "keeping a bottle near a target requires an attribute that somebody has said of every whiskey in it, got none",
    });
  const mixed = ({ profile, ...whiskey }: SearchWhiskey): SearchWhiskey => ({
    ...whiskey,
    profile: Object.fromEntries(
      known.map((name) => {
        const said = profile[name];
        const [own, rest] = [(bottle[name] ?? 0) * share, 1 - share];
        if (said === undefined) return [name, own];
        if (said === null) return [name, null];
        if (typeof said === "number") return [name, own + rest * said];
        return [name, { value: own + rest * said.value, sd: rest * said.sd }];
      }),
    ),
  });
  const { profile, weights } = problem.target;
  return {
    ...problem,
    whiskeys: problem.whiskeys.map(mixed),
    target: {
      profile: Object.fromEntries(known.map((name) => [name, profile[name] ?? 0])),
      ...(weights === undefined
        ? {}
        : { weights: Object.fromEntries(known.map((name) => [name, weights[name] ?? 1])) }),
    },
  };
}

/** The answer with what to pour of which bottle, and what the kept-up bottle will be. */
export function nextShown(asked: NextAsked, answer: AnswerOf<"search">): NextAddition {
  const { shelf, vessel, addMl, problem, shown, bottle, unknown } = asked;
  const held = contentsOfVessel(shelf.state, vessel.id);
  const liquidOf = slotLiquids(shelf);
  return {
    addMl,
    attributes: Object.keys(problem.target.profile),
    unknown: [...unknown],
    before: volumeOf(held) === 0 ? null : distance(problem.target, bottle),
    provenOptimal: answer.provenOptimal,
    cannotTellApart: answer.cannotTellApart,
    conflict: answer.conflict ?? [],
    withoutProfile: shown.withoutProfile,
    recipes: answer.recipes.map((recipe) => {
      const all = recipe.parts.reduce((sum, { parts }) => sum + parts, 0);
      const takes = recipe.parts.map(({ id, parts }) => {
        const ml = (addMl * parts) / all;
        const of = { kind: "whiskey" as const, whiskeyId: id };
        return { id, parts, ml, takes: takeFrom(shelf, stockOf(shelf, of), liquidOf(of), ml) };
      });
      const after = together([held, ...takes.flatMap((one) => one.takes.map((take) => take.held))]);
      return {
        parts: takes.map(({ id, parts, ml, takes: from }) => ({
          whiskeyId: id,
          label: shown.names[id] ?? id,
          parts,
          ml,
          from: from.flatMap(({ vessel: one, ml: some }) =>
            one === null ? [] : [{ vesselId: one.id, label: one.label, ml: some }],
          ),
        })),
        distance: recipe.distance,
        expectedDistance: recipe.expectedDistance,
        predicted: recipe.predicted,
        after: shownContents(shelf, after),
      };
    }),
  };
}

/** The distance of the search: sqrt(sum w (m - t)² / sum w) over the target's attributes. */
function distance(
  { profile, weights }: SearchProblem["target"],
  said: Readonly<Record<string, number>>,
): number {
  let [sum, all] = [0, 0];
  for (const [name, wanted] of Object.entries(profile)) {
    const weight = weights?.[name] ?? 1;
    sum += weight * ((said[name] ?? 0) - wanted) ** 2;
    all += weight;
  }
  return all > 0 ? Math.sqrt(sum / all) : 0;
}
