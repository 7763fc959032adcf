import type { Ask } from "../screens/ask.ts";

const COUNT = 60;
/** Ids of the house's attributes, 24 of them. */
const ATTRIBUTES = [
  "grain.cereal",
  "grain.bake",
  "fruit.orchard",
  "fruit.tropical",
  "fruit.stone",
  "fruit.berry",
  "fruit.citrus",
  "fruit.dried",
  "plant.flower",
  "plant.green",
  "plant.herb",
  "sweet.sugar",
  "sweet.honey",
  "sweet.vanilla",
  "sweet.dairy",
  "sweet.cocoa",
  "spice.warm",
  "spice.sharp",
  "nut.nut",
  "wood.fresh",
  "wood.toasted",
  "wood.old",
  "smoke.smoke",
  "smoke.medicinal",
];
/** As shelves are: a few kinds of whiskey, each with its own. */
const KINDS = 5;

/** A walk that visits its range evenly, the same every run. */
const walk = (n: number, step: number): number => (n * step) % 1;

/** Halves from 0 to 10: mostly the kind's own, the rest the whiskey's. */
function profileOf(n: number): unknown {
  const said = ATTRIBUTES.map((attribute, a): [string, number] => {
    const kind = walk((n % KINDS) * 24 + a + 1, 0.618_033_99);
    const own = walk(n * 24 + a + 1, 0.754_877_67);
    return [attribute, Math.round(20 * (0.6 * kind + 0.4 * own)) / 2];
  });
  return { tastedAt: { basis: "abv20", value: 40 }, intensities: Object.fromEntries(said) };
}

/** A household of 60 whiskeys with a bottle and a profile each, and one more, gone, that is sought. */
export async function sixtyWhiskeys(ask: Ask): Promise<{ readonly id: string; readonly target: string }> {
  const { id } = await ask<{ id: string }>("POST", "/api/households", { name: "Sixty", currency: "USD" });
  const at = `/api/households/${id}`;
  let target = "";
  for (let n = 0; n <= COUNT; n += 1) {
    const gone = n === COUNT;
    const made = await ask<{ id: string }>("POST", `${at}/whiskeys`, {
      maker: "Measured",
      name: `Number ${n + 1}`,
      strength: { basis: "abv20", value: Math.round(10 * (43 + 20 * walk(n + 1, 0.618))) / 10 },
      ageYears: 3 + (n % 20),
      priceMinor: 3000 + 90 * n,
      availability: gone ? "gone" : "sold",
      profile: profileOf(n),
    });
    if (gone) target = made.id;
    else await ask("POST", `${at}/bottles`, { whiskeyId: made.id });
  }
  return { id, target };
}
