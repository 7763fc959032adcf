import { courseOf, keepUp, type KeptUpStep } from "@partsproof/core/kept-up";
import { repeatableRng } from "@partsproof/core/statistics";
import { middle } from "./middle.ts";

// Ten years of a kept-up bottle: 2,000 additions and pours, 60 whiskeys, folded and sampled for a drawing of 400 points.

const BOUND_MS = 5;

function tenYears(): KeptUpStep[] {
  const rng = repeatableRng(2);
  return Array.from({ length: 2000 }, (_, n): KeptUpStep => {
    const at = n * 1.8;
    if (n === 0) return { kind: "add", at, liquidId: "w0", ethanolG: 220, waterG: 300 };
    if (n % 2 === 1) return { kind: "pour", at, ml: 38.8 };
    return { kind: "add", at, liquidId: `w${rng.below(60)}`, ethanolG: 16, waterG: 20 };
  });
}

/** How many bounds were missed. */
export function benchKeptUp(): number {
  const steps = tenYears();
  const fold: number[] = [];
  const draw: number[] = [];
  for (let round = 0; round < 60; round += 1) {
    const start = performance.now();
    const folded = keepUp(steps, 750);
    const middle = performance.now();
    if (!folded.ok) throw new Error(`kept-up requires steps that fit, got ${folded.code} at ${folded.step}`);
    courseOf(folded, 400);
    if (round >= 20) {
      fold.push(middle - start);
      draw.push(performance.now() - middle);
    }
  }
  console.log(
    `kept-up bottle, 2,000 steps: fold ${middle(fold).toFixed(2)} ms (bound ${BOUND_MS}), 400 points to draw ${middle(draw).toFixed(1)} ms`,
  );
  return middle(fold) <= BOUND_MS ? 0 : 1;
}
