import {
  abv20FromMassFraction,
  abv20OfStrength,
  density,
  freezingPoint,
  massFractionFromAbv20,
  massFractionFromProof60F,
  mixParts,
  type OutOfReach,
  proof60FFromMassFraction,
  waterToFill,
  waterToStrength,
} from "@partsproof/core/alcoholometry";
import { abv20, celsius, massFraction, millilitres20, proof60F } from "@partsproof/core/quantity";
import type { Handlers } from "../handler.ts";
import { partsAllZero, refuse } from "../refuse.ts";
import { strengthOf } from "../shelf/index.ts";

/** Sums that need no household and write nothing. Every number is core's. */
export const reckonHandlers: Handlers<"reckonMix" | "reckonReduce" | "reckonDensity" | "reckonConvert"> = {
  reckonMix: async ({ body }) => {
    if (body.parts.every(({ parts }) => parts === 0)) partsAllZero(["parts"]);
    const parts = body.parts.map(({ parts, strength }) => ({
      parts,
      abv20: abv20OfStrength(strengthOf(strength)),
    }));
    const { abv20, proof60F, volumeMl, contractionMl, massG, naiveAbv20 } = mixParts(
      parts,
      millilitres20(body.volumeMl),
    );
    return { abv20, proof60F, volumeMl, contractionMl, massG, naiveAbv20 };
  },

  reckonReduce: async ({ body }) => {
    const from = abv20OfStrength(strengthOf(body.from));
    const to = abv20OfStrength(strengthOf(body.to));
    if ("volumeMl" in body) {
      const reached = waterToStrength({ volumeMl: millilitres20(body.volumeMl), from, to });
      if (!reached.ok) refuseWater(reached.issue);
      const { waterMl, waterG, finalMl, naiveWaterMl } = reached;
      return { liquidMl: body.volumeMl, waterMl, waterG, finalMl, naiveWaterMl };
    }
    const reached = waterToFill({ finalMl: millilitres20(body.fillMl), from, to });
    if (!reached.ok) refuseWater(reached.issue);
    const { liquidMl, waterMl, waterG, finalMl, naiveWaterMl } = reached;
    return { liquidMl, waterMl, waterG, finalMl, naiveWaterMl };
  },

  reckonDensity: async ({ body }) => ({ kgPerM3: liquidDensity(body.massFraction, body.celsius) }),

  reckonConvert: async ({ body }) => {
    const p =
      "abv20" in body
        ? massFractionFromAbv20(abv20(body.abv20))
        : "proof60F" in body
          ? massFractionFromProof60F(proof60F(body.proof60F))
          : massFraction(body.massPercent / 100);
    return {
      abv20: abv20FromMassFraction(p),
      proof60F: proof60FFromMassFraction(p),
      massPercent: 100 * p,
    };
  },
};

/** The schema has checked both limits, so what core still refuses is ice. */
function liquidDensity(p: number, t: number): number {
  try {
    return density(massFraction(p), celsius(t));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const limit = `at least the freezing point, about ${freezingPoint(massFraction(p))?.toFixed(1)} °C`;
    refuse(422, {
      code: "mixture_frozen",
      path: ["celsius"],
      limit,
      received: t,
      message: `celsius requires ${limit}, got ${t} °C`,
    });
  }
}

function refuseWater({ code, limit, received, message }: OutOfReach["issue"]): never {
  refuse(422, { code, path: ["to", "value"], limit: `${limit} % vol`, received, message });
}
