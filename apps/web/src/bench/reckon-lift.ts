import { adjustStrength, liquidOfVolume, strengthToLift } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { mixUncertainty, propagate } from "@partsproof/core/uncertainty";
import { printAbv } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { labelled, measuredMl } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface LiftAnswer {
  readonly ok: true;
  readonly addMl: number;
  readonly addG: number;
  readonly finalMl: number;
  /** The strength it comes out at when the amount is measured. */
  readonly strength: Told;
}

/** How much of another bottle takes this one to a strength. */
export function reckonLift(ask: {
  readonly haveMl: number;
  readonly from: number;
  readonly to: number;
  readonly other: number;
  readonly tools: Tools;
}): LiftAnswer | No {
  return answered(() => {
    const { haveMl, from, to, other, tools } = ask;
    const start = liquidOfVolume(millilitres20(haveMl), abv20(from));
    const done = adjustStrength({ start, to: abv20(to), add: abv20(other) });
    if (!done.ok) {
      const nearest = done.nearest.abv20;
      const how = nearest === other ? "with an endless amount of the other bottle" : "with none of it added";
      return no(done.issue.message, `${printAbv(nearest)}, ${how}`);
    }
    const strength = mixUncertainty(
      [
        { volumeMl: measuredMl("v0", haveMl, tools), abv20: labelled("s0", from, tools) },
        { volumeMl: measuredMl("v1", done.addMl, tools), abv20: labelled("s1", other, tools) },
      ],
      "abv20",
    );
    const { addMl, addG, after } = done;
    return { ok: true, addMl, addG, finalMl: after.volumeMl, strength: told(strength, tools) };
  });
}

export interface RoomAnswer {
  readonly ok: true;
  /** How strong the other bottle must be. */
  readonly strength: Told;
}

/** How strong another bottle must be so that so much of it takes this one to a strength. */
export function reckonRoom(ask: {
  readonly haveMl: number;
  readonly from: number;
  readonly to: number;
  readonly roomMl: number;
  readonly tools: Tools;
}): RoomAnswer | No {
  return answered(() => {
    const { haveMl, from, to, roomMl, tools } = ask;
    const at = (ml: number, strength: number, added: number) =>
      strengthToLift({
        start: liquidOfVolume(millilitres20(ml), abv20(strength)),
        addMl: millilitres20(added),
        to: abv20(to),
      });
    const done = at(haveMl, from, roomMl);
    if (!done.ok) {
      return no(
        done.issue.message,
        `${printAbv(done.nearest.abv20)}, with ${done.issue.received > done.issue.limit ? "pure alcohol" : "water"} in that room`,
      );
    }
    const inputs = [
      measuredMl("v0", haveMl, tools),
      labelled("s0", from, tools),
      measuredMl("v1", roomMl, tools),
    ];
    const strength = propagate((valueOf) => {
      const one = at(valueOf("v0"), valueOf("s0"), valueOf("v1"));
      return one.ok ? one.abv20 : one.issue.received > one.issue.limit ? 100 : 0;
    }, inputs);
    return { ok: true, strength: told(strength, tools) };
  });
}
