import { abv20OfStrength, waterToStrength } from "@partsproof/core/alcoholometry";
import { type Description, type Facts, type Measure, mixDescription, WATER } from "@partsproof/core/ledger";
import { abv20, proof60F } from "@partsproof/core/quantity";
import type { Slot, StatedStrength } from "@partsproof/house/protocol";
import { slotKey, type Stocks } from "./stock.ts";
import { strengthGive } from "./strength-give.ts";

export interface ReckonedRecipe {
  readonly ok: true;
  /** What the parts and the water come to. */
  readonly result: Description;
  /** Sum of the poured whiskeys, water left out. */
  readonly pouredMl: number;
  readonly waterMl: number;
  readonly waterG: number;
  /** Poured and water, less what results. */
  readonly contractionMl: number;
  /** How far the strength may be off if the labels are right to 0.3 % vol. */
  readonly give: number;
  /** Why the water asked for cannot do it; null when it can, or none was asked. */
  readonly waterRefused: string | null;
}

/** Why nothing can be reckoned yet. */
export interface NotYet {
  readonly ok: false;
  readonly why: "no parts" | "unknown liquid";
}

/** What parts of these liquids would come to, at 20 °C, poured to `pouredMl` before water and contraction. */
export function reckonRecipe(
  body: { readonly slots: readonly Slot[]; readonly waterTo: StatedStrength | null },
  pouredMl: number,
  stocks: Stocks,
  facts: Facts,
): ReckonedRecipe | NotYet {
  const slots = body.slots.filter((slot) => slot.parts > 0);
  const whole = slots.reduce((sum, slot) => sum + slot.parts, 0);
  if (whole === 0) return { ok: false, why: "no parts" };
  const measures: Measure[] = [];
  const pours: { ml: number; abv20: number }[] = [];
  for (const slot of slots) {
    const stock = stocks.get(slotKey(slot.of));
    if (stock === undefined) return { ok: false, why: "unknown liquid" };
    const ml = (pouredMl * slot.parts) / whole;
    pours.push({ ml, abv20: stock.abv20 });
    for (const one of stock.perMl) {
      measures.push({ ...one, volumeMl: one.volumeMl * ml, cost: one.cost === null ? null : one.cost * ml });
    }
  }
  const dry = mixDescription(measures, facts);
  if (body.waterTo === null || dry.abv20 === null) {
    const contractionMl = pouredMl - dry.volumeMl;
    return done(dry, pouredMl, 0, 0, contractionMl, strengthGive(pours), null);
  }
  const water = waterToStrength({ volumeMl: dry.volumeMl, from: dry.abv20, to: abv20OfStated(body.waterTo) });
  if (!water.ok) {
    return done(dry, pouredMl, 0, 0, pouredMl - dry.volumeMl, strengthGive(pours), water.issue.message);
  }
  const wet = mixDescription(
    [...measures, { liquidId: WATER, volumeMl: water.waterMl, abv20: 0, cost: 0 }],
    facts,
  );
  const give = strengthGive([...pours, { ml: water.waterMl, abv20: 0 }]);
  const contractionMl = pouredMl + water.waterMl - wet.volumeMl;
  return done(wet, pouredMl, water.waterMl, water.waterG, contractionMl, give, null);
}

export function abv20OfStated(strength: StatedStrength): ReturnType<typeof abv20> {
  return abv20OfStrength(
    strength.basis === "abv20"
      ? { basis: "abv20", value: abv20(strength.value) }
      : { basis: "proof60F", value: proof60F(strength.value) },
  );
}

const done = (
  result: Description,
  pouredMl: number,
  waterMl: number,
  waterG: number,
  contractionMl: number,
  give: number,
  waterRefused: string | null,
): ReckonedRecipe => ({ ok: true, result, pouredMl, waterMl, waterG, contractionMl, give, waterRefused });
