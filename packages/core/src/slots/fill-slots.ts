import { bestFillings } from "./best-fillings.ts";
import type { BestFillings } from "./best-fillings.ts";
import type { FillProblem } from "./fill-problem.ts";
import type { Filling } from "./filling.ts";
import { RULE_LIMITS } from "./rule.ts";
import type { Condition } from "./rule.ts";
import { slotChoice, type SlotChoice } from "./slot-choice.ts";
import { type Wanted, wantedIn } from "./wanted.ts";

/** A filling of all slots but those that stay empty, which is measured as the recipe it is without them. */
export type FilledSlots = Omit<Filling, "ids"> & { readonly ids: readonly (string | null)[] };

export type FillResult = {
  /** By slot. */
  readonly slots: readonly SlotChoice[];
  /** The closest first; every one leaves the same slots empty. */
  readonly fillings: readonly FilledSlots[];
  /** True when no other filling is closer than the last of the list, or there is no other. */
  readonly proven: boolean;
  /** Slots that stay empty, from 1: as few as can be. */
  readonly empty: readonly number[];
  /** What would fill them best. */
  readonly wanted: readonly Wanted[];
  /** Choices looked at. */
  readonly looked: number;
};

/** Choices looked at before a search is given up unproven: some ten seconds. */
const MOST_LOOKED = 4_000_000_000;

/**
 * Fills a recipe from a shelf: for each slot who can stand in it, who cannot and why, of whom a fact is missing; and the `top` closest
 * fillings, proven. Slots that cannot be filled stay empty, as few as possible, and it is said what would fill them.
 *
 * Domain: 1 to 12 slots of whole parts above 0, ids each once, `top` from 1. Exact: what going through all choices gives, to 1e-9.
 *
 * @throws RangeError when there is nothing to fill or to come close to, or a slot is compared with itself or with none
 */
export function fillSlots(problem: FillProblem, top = 1, most = MOST_LOOKED): FillResult {
  requireSlots(problem);
  const { slots, whiskeys } = problem;
  const choices = slots.map((_, slot) => slotChoice(problem, slot));
  const placeOf = new Map(whiskeys.map(({ id }, place) => [id, place]));
  const places = choices.map(({ candidates }) => candidates.map((id) => placeOf.get(id)!));
  const none = places.flatMap((own, slot) => (own.length === 0 ? [slot] : []));
  let looked = 0;
  // As few more as it takes, where whiskeys cannot stand together.
  for (let more = 0; none.length + more < slots.length; more += 1) {
    let best: { readonly left: readonly number[]; readonly found: BestFillings } | null = null;
    for (const extra of choose(slots.length, more, new Set(none))) {
      const left = [...none, ...extra].toSorted((a, b) => a - b);
      const found = bestFillings(
        without(problem, left),
        places.filter((_, slot) => !left.includes(slot)),
        top,
        most - looked,
      );
      looked += found.looked;
      const distance = found.fillings[0]?.distance ?? Infinity;
      if (distance < (best?.found.fillings[0]?.distance ?? Infinity) || (best === null && !found.proven))
        best = { left, found };
    }
    if (best === null) continue;
    const { left, found } = best;
    const fillings = found.fillings.map((one): FilledSlots => {
      const own = [...one.ids];
      return { ...one, ids: slots.map((_, slot) => (left.includes(slot) ? null : (own.shift() ?? null))) };
    });
    const wanted = wantedIn(problem, fillings[0]?.ids ?? slots.map(() => null), left);
    const empty = left.map((slot) => slot + 1);
    return { slots: choices, fillings, proven: found.proven, empty, wanted, looked };
  }
  const nobody = slots.map((_, slot) => slot);
  const wanted = wantedIn(
    problem,
    slots.map(() => null),
    nobody,
  );
  return {
    slots: choices,
    fillings: [],
    proven: true,
    empty: nobody.map((slot) => slot + 1),
    wanted,
    looked,
  };
}

function requireSlots({ slots }: FillProblem): void {
  if (slots.length === 0 || slots.length > RULE_LIMITS.slots)
    throw new RangeError(`a recipe requires 1 to ${RULE_LIMITS.slots} slots, got ${slots.length}`);
  for (const [n, { rule }] of slots.entries())
    for (const condition of rule)
      if (condition.about === "same" && (condition.slot === n + 1 || condition.slot > slots.length))
        throw new RangeError(
          `slot ${n + 1} requires another slot of ${slots.length} to be compared with, got slot ${condition.slot}`,
        );
}

/** The recipe without some slots: rules that look at others of them look at these by their new numbers. */
function without(problem: FillProblem, left: readonly number[]): FillProblem {
  if (left.length === 0) return problem;
  const kept = problem.slots.flatMap((_, slot) => (left.includes(slot) ? [] : [slot]));
  return {
    ...problem,
    slots: kept.map((slot) => {
      const own = problem.slots[slot]!;
      const rule = own.rule.flatMap((condition): readonly Condition[] => {
        if (condition.about !== "same") return [condition];
        const at = kept.indexOf(condition.slot - 1);
        return at < 0 ? [] : [{ ...condition, slot: at + 1 }];
      });
      return { ...own, rule };
    }),
  };
}

/** Every set of so many slots that are not left out. */
function* choose(
  slots: number,
  many: number,
  without1: ReadonlySet<number>,
  from = 0,
): Generator<readonly number[]> {
  if (many === 0) {
    yield [];
    return;
  }
  for (let slot = from; slot < slots; slot += 1) {
    if (without1.has(slot)) continue;
    for (const rest of choose(slots, many - 1, without1, slot + 1)) yield [slot, ...rest];
  }
}
