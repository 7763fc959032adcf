import {
  abv20FromProof60F,
  gauge,
  type Gauged,
  type HydrometerReading,
  type NotGauged,
  proof60FFromAbv20,
  trueProofWithSolids,
  type Unobscured,
} from "@partsproof/core/alcoholometry";
import { celsius, proof60F } from "@partsproof/core/quantity";
import { hydrometer, propagate } from "@partsproof/core/uncertainty";
import { printAbv } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export type Scale = HydrometerReading["scale"];

const ENDS: Readonly<Record<Scale, readonly [number, number]>> = {
  abv20: [0, 100],
  proof60F: [0, 200],
  density20: [600, 1200],
};

export interface Corrected {
  readonly ok: true;
  /** By the reading and the temperature alone. */
  readonly apparent: Gauged;
  /** With what the solids hide; null where none were given. */
  readonly solids: Unobscured | null;
  readonly strength: Told;
  readonly proof: Told;
}

/**
 * True strength from a reading at `celsius`: the liquid's and the glass's expansion corrected, and what dissolved solids hide
 * added. The solids are taken as exact.
 */
export function reckonCorrect(ask: {
  readonly scale: Scale;
  readonly reading: number;
  /** What the marks stand apart. */
  readonly division: number;
  readonly celsius: number;
  /** mg in 100 mL. */
  readonly solids: number;
  readonly tools: Tools;
}): Corrected | No {
  return answered(() => {
    const { scale, tools } = ask;
    const [low, high] = ENDS[scale];
    const reading = hydrometer({ id: "h", reading: ask.reading, division: ask.division, low, high });
    const t = warmth(ask.celsius, tools);
    const at = (value: number, warm: number): Gauged | NotGauged =>
      gauge({ scale, value } as HydrometerReading, celsius(warm));
    const apparent = at(ask.reading, ask.celsius);
    if (!apparent.ok) {
      const { nearest } = apparent;
      return no(apparent.issue.message, `${printAbv(nearest.abv20)}, ${nearest.kgPerM3.toFixed(1)} kg/m³`);
    }
    const proofOf = (answer: Gauged | NotGauged): number => {
      const { proof60F: seen } = answer.ok ? answer : answer.nearest;
      return ask.solids === 0 ? seen : trueProofWithSolids(seen, ask.solids).proof60F;
    };
    const proof = propagate((valueOf) => proofOf(at(valueOf("h"), valueOf("t"))), [reading, t]);
    const strength = propagate(
      (valueOf) => abv20FromProof60F(proof60F(proofOf(at(valueOf("h"), valueOf("t"))))),
      [reading, t],
    );
    return {
      ok: true,
      apparent,
      solids: ask.solids === 0 ? null : trueProofWithSolids(proof60FFromAbv20(apparent.abv20), ask.solids),
      strength: told(strength, tools),
      proof: told(proof, tools),
    };
  });
}
