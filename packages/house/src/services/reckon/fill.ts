import { describeLiquid, fillVessel, liquidOfVolume } from "@partsproof/core/alcoholometry";
import { millilitres20 } from "@partsproof/core/quantity";
import type { BodyRead, FillResult } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import { abvOf } from "./stated.ts";

export function reckonFill({ held, with: added, vesselMl }: BodyRead<"reckonFill">): FillResult {
  const start = liquidOfVolume(millilitres20(held.volumeMl), abvOf(held.strength));
  const filled = fillVessel({ ...start, capacityMl: millilitres20(vesselMl), abv20: abvOf(added) });
  if (!filled.ok) {
    const what = `at least the ${held.volumeMl} mL that are in it`;
    refuse(422, {
      code: filled.issue.code,
      path: ["vesselMl"],
      limit: what,
      received: vesselMl,
      message: `the vessel requires ${what}, got ${vesselMl} mL; nearest: ${held.volumeMl} mL, with nothing added`,
    });
  }
  const { after, addMl, naiveAddMl } = filled;
  return {
    addMl,
    addG: describeLiquid(filled.added).massG,
    naiveAddMl,
    abv20: after.abv20 ?? 0,
    proof60F: after.proof60F ?? 0,
    finalMl: after.volumeMl,
  };
}
