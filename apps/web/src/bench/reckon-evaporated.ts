import { type Evaporated, evaporated } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { propagate } from "@partsproof/core/uncertainty";
import { printAbv, printMl } from "../figures/index.ts";
import { answered, no, type No } from "./answered.ts";
import { labelled, measuredMl } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface LevelRead {
  readonly ml: number;
  readonly abv20: number;
}

export interface EvaporatedAnswer {
  readonly ok: true;
  readonly gone: Evaporated;
  /** Millilitres of level lost. */
  readonly level: Told;
  readonly ethanolG: Told;
  readonly waterG: Told;
}

/** What has left a vessel, from level and strength before and after, at 20 °C. */
export function reckonEvaporated(ask: {
  readonly before: LevelRead;
  readonly after: LevelRead;
  readonly tools: Tools;
}): EvaporatedAnswer | No {
  return answered(() => {
    const { before, after, tools } = ask;
    const read = ({ ml, abv20: strength }: LevelRead) => ({
      volumeMl: millilitres20(ml),
      abv20: abv20(strength),
    });
    const gone = evaporated(read(before), read(after));
    if (!gone.ok) {
      const most = (before.ml * before.abv20) / after.abv20;
      return no(
        "what is left requires no more alcohol than there was: something was poured in, or a reading is off",
        `at ${printAbv(after.abv20)} at most about ${printMl(most)} can be left`,
      );
    }
    const inputs = [
      measuredMl("v0", before.ml, tools),
      labelled("s0", before.abv20, tools),
      measuredMl("v1", after.ml, tools),
      labelled("s1", after.abv20, tools),
    ];
    // Within their errors the readings may come out the other way round; the difference then is below 0.
    const at = (valueOf: (id: string) => number, of: "ethanolG" | "waterG" | "volumeMl"): number => {
      const first = { ml: valueOf("v0"), abv20: valueOf("s0") };
      const last = { ml: valueOf("v1"), abv20: valueOf("s1") };
      const one = evaporated(read(first), read(last));
      if (one.ok) return one[of];
      const back = evaporated(read(last), read(first));
      return back.ok ? 0 - back[of] : 0;
    };
    const figure = (of: "ethanolG" | "waterG" | "volumeMl"): Told =>
      told(
        propagate((valueOf) => at(valueOf, of), inputs),
        tools,
      );
    return {
      ok: true,
      gone,
      level: figure("volumeMl"),
      ethanolG: figure("ethanolG"),
      waterG: figure("waterG"),
    };
  });
}
