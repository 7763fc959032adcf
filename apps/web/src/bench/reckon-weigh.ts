import { CONVENTIONAL_AIR, volumeFromWeight, type Weighed, weigh } from "@partsproof/core/alcoholometry";
import { abv20, celsius, grams, millilitresRead } from "@partsproof/core/quantity";
import { propagate, scaleMass } from "@partsproof/core/uncertainty";
import { answered, type No } from "./answered.ts";
import { labelled, warmth } from "./inputs.ts";
import { type Told, told } from "./told.ts";
import type { Tools } from "./tools.ts";

export interface WeighAnswer {
  readonly ok: true;
  readonly weighed: Weighed;
  /** Grams where mL were given, mL where grams were. */
  readonly figure: Told;
  /** mL at 20 °C. */
  readonly at20: Told;
  /** At the liquid's temperature, kg/m³. */
  readonly density: Told;
}

/** What so many mL at a temperature weigh, or what so many grams measure. The amount asked about is exact when it is mL. */
export function reckonWeigh(ask: {
  readonly amount: { readonly ml: number } | { readonly g: number };
  readonly abv20: number;
  readonly celsius: number;
  readonly inAir: boolean;
  readonly tools: Tools;
}): WeighAnswer | No {
  return answered(() => {
    const { amount, tools } = ask;
    const strength = labelled("s", ask.abv20, tools);
    const t = warmth(ask.celsius, tools);
    const air = ask.inAir ? { air: CONVENTIONAL_AIR } : {};
    const g = scaleMass({ id: "g", g: "g" in amount ? amount.g : 0, class: tools.scale });
    const inputs = "g" in amount ? [g, strength, t] : [strength, t];
    const at = (valueOf: (id: string) => number): Weighed => {
      const of = { abv20: abv20(valueOf("s")), celsius: celsius(valueOf("t")), ...air };
      return "ml" in amount
        ? weigh(millilitresRead(amount.ml), of)
        : volumeFromWeight(grams(valueOf("g")), of);
    };
    const weighed = at((id) => inputs.find((input) => input.id === id)?.value ?? 0);
    const figure = (of: "grams" | "ml" | "ml20" | "kgPerM3"): Told =>
      told(
        propagate((valueOf) => at(valueOf)[of], inputs),
        tools,
      );
    const main = figure("ml" in amount ? "grams" : "ml");
    return { ok: true, weighed, figure: main, at20: figure("ml20"), density: figure("kgPerM3") };
  });
}
