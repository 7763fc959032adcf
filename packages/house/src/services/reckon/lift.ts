import {
  adjustStrength,
  type Liquid,
  liquidOfVolume,
  proof60FFromAbv20,
  strengthToLift,
} from "@partsproof/core/alcoholometry";
import { type Abv20, millilitres20 } from "@partsproof/core/quantity";
import type { BodyRead, LiftResult } from "../../protocol/index.ts";
import { HouseRefusal } from "../refuse.ts";
import { refuseAsked, refuseReach } from "./refuse-reach.ts";
import { abvOf } from "./stated.ts";

type Bottle = LiftResult["bottles"][number];

export function reckonLift(body: BodyRead<"reckonLift">): LiftResult {
  const { roomMl } = body;
  if (body.with.length === 0 && roomMl === undefined) {
    refuseAsked("amount_missing", ["with"], "bottles at hand, or roomMl");
  }
  const start = liquidOfVolume(millilitres20(body.volumeMl), abvOf(body.from));
  const to = abvOf(body.to);
  const bottles = body.with.map((strength, n) => bottleOf(start, to, abvOf(strength), roomMl, n));
  const issues = bottles.flatMap(({ issue }) => (issue === null ? [] : [issue]));
  // Where one of them does it the others are told beside it; where none does, that is a refusal.
  if (issues.length > 0 && issues.length === bottles.length && roomMl === undefined) {
    throw new HouseRefusal(422, issues);
  }
  return { bottles, needed: roomMl === undefined ? null : neededFor(start, to, roomMl) };
}

function bottleOf(start: Liquid, to: Abv20, add: Abv20, roomMl: number | undefined, n: number): Bottle {
  const answer = adjustStrength({ start, to, add });
  if (answer.ok) {
    const { addMl, addG, after } = answer;
    const fits = roomMl === undefined ? null : addMl <= roomMl;
    return { abv20: add, addMl, addG, finalMl: after.volumeMl, fits, issue: null };
  }
  const { code, limit, received, message } = answer.issue;
  const issue = {
    code,
    path: ["with", n],
    limit: `${limit} % vol`,
    received,
    message: `${message}; nearest: ${answer.nearest.abv20} % vol`,
  };
  return { abv20: add, addMl: null, addG: null, finalMl: null, fits: null, issue };
}

function neededFor(start: Liquid, to: Abv20, roomMl: number): LiftResult["needed"] {
  const answer = strengthToLift({ start, addMl: millilitres20(roomMl), to });
  if (!answer.ok) refuseReach(answer.issue, ["roomMl"], "% vol", `${answer.nearest.abv20.toFixed(2)} % vol`);
  return { roomMl, abv20: answer.abv20, proof60F: proof60FFromAbv20(answer.abv20) };
}
