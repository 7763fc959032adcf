import {
  freezingPoint,
  massFractionFromAbv20,
  temperaturesFromDensity,
} from "@partsproof/core/alcoholometry";
import { kgPerM3 } from "@partsproof/core/quantity";
import type { BodyRead, TemperatureResult } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";
import { densityAt } from "./liquid-at.ts";
import { abvOf } from "./stated.ts";

export function reckonTemperature(body: BodyRead<"reckonTemperature">): TemperatureResult {
  const strength = abvOf(body.strength);
  const p = massFractionFromAbv20(strength);
  const found = temperaturesFromDensity(p, kgPerM3(body.kgPerM3));
  if (found.length > 0) return { celsius: [...found] };
  const lightest = densityAt(p, 40);
  // By whole tenths of a degree from where it freezes: near enough to say what can be had.
  const coldest = Math.max(-20, freezingPoint(p) ?? -20);
  const tenths = Array.from({ length: Math.floor(10 * (40 - coldest)) + 1 }, (_, n) => coldest + n / 10);
  const densest = Math.max(...tenths.map((t) => densityAt(p, t)));
  const received = body.kgPerM3;
  const limit =
    received < lightest
      ? `at least ${lightest.toFixed(2)} kg/m³, its density at 40 °C`
      : `at most about ${densest.toFixed(1)} kg/m³, its density where it is densest`;
  refuse(422, {
    code: "density_of_no_temperature",
    path: ["kgPerM3"],
    limit,
    received,
    message: `density requires ${limit}, got ${received} kg/m³`,
  });
}
