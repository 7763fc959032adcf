import {
  COULD_WELL_BE_LUCK,
  HARD_TO_PUT_DOWN_TO_LUCK,
  VERY_HARD_TO_PUT_DOWN_TO_LUCK,
} from "@partsproof/core/sensory";

/** What a probability amounts to, by the same levels as the finding's headline. */
export function luckVerdict(p: number): string {
  if (p < VERY_HARD_TO_PUT_DOWN_TO_LUCK) return "Very hard to put down to luck";
  if (p < HARD_TO_PUT_DOWN_TO_LUCK) return "Hard to put down to luck";
  return p < COULD_WELL_BE_LUCK ? "Luck is not ruled out" : "Could well be luck";
}

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** Three figures; below one in ten thousand as a power of ten. */
export function printP(p: number): string {
  if (p === 0 || p >= 1e-4) return String(Number(p.toPrecision(3)));
  const [figures = "", power = ""] = p.toExponential(1).split("e-");
  return `${figures} × 10⁻${Array.from(power, (digit) => SUPERSCRIPTS[Number(digit)] ?? "").join("")}`;
}
