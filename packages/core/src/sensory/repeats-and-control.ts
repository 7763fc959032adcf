import { type Rng, shuffled } from "../statistics/index.ts";
import { MAX_GLASSES } from "./williams-square.ts";

/** A glass of a flight and why it is there. */
export interface FlightGlass {
  /** Which of the whiskeys 0 … n − 1; n is the control. */
  readonly whiskey: number;
  readonly role: "tasted" | "repeat" | "control";
}

/**
 * The glasses of a flight with repeats and a control: which whiskeys are poured a second time is drawn, so that nobody knows
 * which; the control is one more glass of a whiskey that everybody knows.
 *
 * @returns the glasses, and the pairs of glasses that hold the same whiskey (for `servingPlan`'s `apart`)
 * @throws RangeError when there are more repeats than whiskeys, or more than 12 glasses
 * @example flightGlasses({ whiskeys: 4, repeats: 1, control: true, rng }).glasses.length // 6
 */
export function flightGlasses(ask: {
  readonly whiskeys: number;
  readonly repeats: number;
  readonly control: boolean;
  readonly rng: Rng;
}): { readonly glasses: readonly FlightGlass[]; readonly twins: readonly (readonly [number, number])[] } {
  const { whiskeys, repeats, control, rng } = ask;
  if (!Number.isInteger(whiskeys) || whiskeys < 1) {
    throw new RangeError(`flightGlasses requires a whole 1 or more whiskeys, got ${whiskeys}`);
  }
  if (!Number.isInteger(repeats) || repeats < 0 || repeats > whiskeys) {
    throw new RangeError(`flightGlasses requires a whole 0 to ${whiskeys} repeats, got ${repeats}`);
  }
  const total = whiskeys + repeats + Number(control);
  if (total > MAX_GLASSES) {
    throw new RangeError(`flightGlasses requires at most ${MAX_GLASSES} glasses, got ${total}`);
  }
  const each = [...Array(whiskeys).keys()];
  const again = shuffled(each, rng).slice(0, repeats);
  const glasses: FlightGlass[] = [
    ...each.map((whiskey) => ({ whiskey, role: "tasted" as const })),
    ...again.map((whiskey) => ({ whiskey, role: "repeat" as const })),
    ...(control ? [{ whiskey: whiskeys, role: "control" as const }] : []),
  ];
  return { glasses, twins: again.map((whiskey, i) => [whiskey, whiskeys + i] as const) };
}
