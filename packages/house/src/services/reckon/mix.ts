import { mix, type Pour } from "@partsproof/core/alcoholometry";
import { type Celsius, celsius } from "@partsproof/core/quantity";
import { measuredUncertainty } from "@partsproof/core/uncertainty";
import type { BodyRead, Instruments, MixResult } from "../../protocol/index.ts";
import { benchAt } from "./liquid-at.ts";
import { benchInput, measuredPour, measureOf, takenAs } from "./measured.ts";
import { partsPoured, readAt } from "./parts-poured.ts";
import { abvOf } from "./stated.ts";
import { told } from "./told.ts";

export function reckonMix(body: BodyRead<"reckonMix">): MixResult {
  const strengths = body.parts.map(({ strength }) => abvOf(strength));
  const t = body.celsius === undefined ? undefined : benchAt(body.celsius, strengths);
  const pours = partsPoured(body.parts, body.volumeMl, t);
  const { abv20, proof60F, volumeMl, contractionMl, massG, naiveAbv20 } = mix(pours);
  return {
    abv20,
    proof60F,
    volumeMl,
    contractionMl,
    massG,
    naiveAbv20,
    ...(t === undefined ? {} : { asRead: { celsius: t, volumeMl: readAt(volumeMl, abv20, t) } }),
    ...(body.uncertainty === undefined ? {} : { uncertainty: uncertainMix(pours, body.uncertainty, t) }),
  };
}

function uncertainMix(
  pours: readonly Pour[],
  instruments: Instruments,
  t: Celsius | undefined,
): NonNullable<MixResult["uncertainty"]> {
  measureOf(instruments);
  const bench = benchInput(
    t,
    pours.map(({ abv20 }) => abv20),
    instruments,
  );
  const measured = pours.flatMap((pour, n) =>
    pour.volumeMl === 0 ? [] : [measuredPour(pour, `part ${n + 1}`, t ?? celsius(20), instruments)],
  );
  const figure = (name: "abv20" | "proof60F" | "volumeMl") =>
    told(measuredUncertainty(measured, name, bench));
  return {
    takenAs: takenAs(instruments, ["label", "measure", "thermometer"], t),
    abv20: figure("abv20"),
    proof60F: figure("proof60F"),
    volumeMl: figure("volumeMl"),
  };
}
