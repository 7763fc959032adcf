import { luckLevel } from "@partsproof/core/sensory";

const VERDICTS = [
  "Could well be luck",
  "Luck is not ruled out",
  "Hard to put down to luck",
  "Very hard to put down to luck",
];

/** What a probability amounts to, by the same levels as the finding's headline. */
export const luckVerdict = (p: number): string => VERDICTS[luckLevel(p)] ?? "";

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** Three figures; below one in ten thousand as a power of ten. */
export function printP(p: number): string {
  if (p === 0 || p >= 1e-4) return String(Number(p.toPrecision(3)));
  const [figures = "", power = ""] = p.toExponential(1).split("e-");
  return `${figures} × 10⁻${Array.from(power, (digit) => SUPERSCRIPTS[Number(digit)] ?? "").join("")}`;
}
