import { CONVENTIONAL_AIR, strengthFromMassAndVolume } from "@partsproof/core/alcoholometry";
import { celsius, grams, millilitresRead } from "@partsproof/core/quantity";
import { sampleUncertainty, thermometer } from "@partsproof/core/uncertainty";
import type { BodyRead, SampleResult } from "../../protocol/index.ts";
import { measureOf, scaleInput, takenAs, volumeInput } from "./measured.ts";
import { refuseReach } from "./refuse-reach.ts";
import { told } from "./told.ts";

type Body = BodyRead<"reckonSample">;

/** At one temperature density falls as strength rises (A2), so there is one answer or none. */
export function reckonSample(body: Body): SampleResult {
  const seen = strengthOf(body, body.inAir);
  if (!seen.ok) {
    refuseReach(seen.issue, ["grams"], "kg/m³ of density", `${seen.nearest.abv20.toFixed(2)} % vol`);
  }
  const other = strengthOf(body, !body.inAir);
  return {
    abv20: seen.abv20,
    proof60F: seen.proof60F,
    kgPerM3: seen.kgPerM3,
    celsius: body.celsius,
    inAir: body.inAir,
    otherwiseAbv20: other.ok ? other.abv20 : null,
    ...(body.uncertainty === undefined ? {} : { uncertainty: uncertainSample(body, body.uncertainty) }),
  };
}

const airOf = (inAir: boolean) => (inAir ? { air: CONVENTIONAL_AIR } : {});

const strengthOf = ({ grams: g, ml, celsius: t }: Body, inAir: boolean) =>
  strengthFromMassAndVolume({
    onScale: grams(g),
    ml: millilitresRead(ml),
    celsius: celsius(t),
    ...airOf(inAir),
  });

function uncertainSample(
  { grams: g, ml, celsius: t, inAir }: Body,
  instruments: NonNullable<Body["uncertainty"]>,
): NonNullable<SampleResult["uncertainty"]> {
  measureOf(instruments, ["cylinder", "syringeMl"]);
  const measure = instruments.syringeMl === undefined ? "cylinder" : "syringe";
  return {
    takenAs: takenAs(instruments, ["scale", "volume", "thermometer"], t),
    abv20: told(
      sampleUncertainty({
        onScale: scaleInput("grams", g, "your scale", instruments.scale ?? "kitchen"),
        ml: volumeInput("volume", ml, `the ${measure}`, instruments),
        celsius: thermometer({ id: "temperature", celsius: celsius(t), class: instruments.thermometer }),
        ...airOf(inAir),
      }),
    ),
  };
}
