import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { BodyOf } from "@partsproof/house/protocol";
import {
  type GivenFlags,
  many,
  one,
  readAttributeLevel,
  readDay,
  readNumber,
  readWord,
} from "../../flags/index.ts";

type Ruled = Partial<Pick<BodyOf<"editRest">, "pull" | "leadsAt" | "falling" | "celsius" | "flightOn">>;

export const ruleFlags = {
  pull: one(
    readAttributeLevel,
    "<attribute>=<level>",
    "the rule: pull when it reaches this, such as wood.toasted=6",
  ),
  leads: one(
    readNumber("leads", 0.5, 12),
    "<level>",
    "from here the oak leads; 1.5 above the rule where left out",
  ),
  falling: many(
    readWord(
      "falling",
      ATTRIBUTES.map(({ id }) => id),
    ),
    "<attribute>",
    "one that rises and then falls, as feel.pull does",
  ),
  celsius: one(readNumber("celsius", 0, 45, "°C"), "<degrees>", "where it stands"),
  flight: one(readDay, "<day>", "the flight that pours the kept sample beside it is planned for this day"),
};

/** What was typed of the rule; what was not stays as it is. */
export function ruled({ pull, leads, falling, celsius, flight }: GivenFlags<typeof ruleFlags>): Ruled {
  return {
    ...(pull === undefined ? {} : { pull: { attribute: pull[0], level: pull[1] } }),
    ...(leads === undefined ? {} : { leadsAt: leads }),
    ...(falling.length === 0 ? {} : { falling: [...falling] }),
    ...(celsius === undefined ? {} : { celsius }),
    ...(flight === undefined ? {} : { flightOn: flight }),
  };
}

export const rulePlaces = { leadsAt: "leads", flightOn: "flight" };
