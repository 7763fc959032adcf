import type { Handlers } from "../handler.ts";
import { reckonConvert } from "./convert.ts";
import { reckonEvaporated } from "./evaporated.ts";
import { reckonFill } from "./fill.ts";
import { reckonGauge } from "./gauge.ts";
import { reckonLift } from "./lift.ts";
import { densityAt } from "./liquid-at.ts";
import { reckonMix } from "./mix.ts";
import { reckonReduce } from "./reduce.ts";
import { reckonSample } from "./sample.ts";
import { reckonTemperature } from "./temperature.ts";
import { reckonWeigh } from "./weigh.ts";
import { reckonWeighOut } from "./weigh-out.ts";

type Reckoning =
  | "reckonMix"
  | "reckonReduce"
  | "reckonDensity"
  | "reckonConvert"
  | "reckonGauge"
  | "reckonWeigh"
  | "reckonWeighOut"
  | "reckonFill"
  | "reckonLift"
  | "reckonSample"
  | "reckonEvaporated"
  | "reckonTemperature";

/** Sums that need no household and write nothing: they ask nothing of the house. Every number is core's. */
export const reckonHandlers: Handlers<Reckoning> = {
  reckonMix: async ({ body }) => reckonMix(body),
  reckonReduce: async ({ body }) => reckonReduce(body),
  reckonDensity: async ({ body }) => ({ kgPerM3: densityAt(body.massFraction, body.celsius) }),
  reckonConvert: async ({ body }) => reckonConvert(body),
  reckonGauge: async ({ body }) => reckonGauge(body),
  reckonWeigh: async ({ body }) => reckonWeigh(body),
  reckonWeighOut: async ({ body }) => reckonWeighOut(body),
  reckonFill: async ({ body }) => reckonFill(body),
  reckonLift: async ({ body }) => reckonLift(body),
  reckonSample: async ({ body }) => reckonSample(body),
  reckonEvaporated: async ({ body }) => reckonEvaporated(body),
  reckonTemperature: async ({ body }) => reckonTemperature(body),
};
