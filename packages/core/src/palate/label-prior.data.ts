/**
 * What a label says of taste, before any note: common practice, no source, and kept weak. `usual` is the level in a whiskey of 10 years,
 * 46 %, malted barley, used American oak; the rest is added for each unit of a fact (`label-numbers.ts`). How far each may be off stands
 * in `EFFECT_SD`; notes move them all.
 *
 * The mash bill says least: trained panels did not tell bourbon from rye by their descriptions (Lahne et al., J. Food Sci. 84 (2019) 629).
 */
export const USUAL: Readonly<Record<string, number>> = {
  "grain.cereal": 3,
  "grain.bake": 3,
  "fruit.orchard": 3.5,
  "fruit.tropical": 2,
  "fruit.stone": 2.5,
  "fruit.berry": 2,
  "fruit.citrus": 3,
  "fruit.dried": 3,
  "plant.flower": 2,
  "plant.green": 2,
  "plant.herb": 2,
  "sweet.sugar": 4,
  "sweet.honey": 3.5,
  "sweet.vanilla": 4,
  "sweet.dairy": 2,
  "sweet.cocoa": 2.5,
  "spice.warm": 3.5,
  "spice.sharp": 3,
  "nut.nut": 3,
  "wood.fresh": 3,
  "wood.toasted": 3.5,
  "wood.old": 2,
  "smoke.smoke": 2,
  "smoke.medicinal": 1,
  "earth.earth": 1.5,
  "earth.leather-and-leaf": 2,
  "savoury.sulphur": 1,
  "savoury.fat": 1.5,
  "savoury.sour-and-sweaty": 1,
  "savoury.stale": 0.5,
  "spirit.heads": 1.5,
  "spirit.ethanol": 3,
  "feel.weight": 4.5,
  "feel.burn": 3.5,
  "feel.pull": 3,
  "time.finish": 5,
};
/** The usual level of an attribute that is not listed. */
export const USUAL_ELSE = 3;

/** Added to the usual level for one unit of a fact. */
export const EFFECTS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  age: {
    "grain.cereal": -0.5,
    "fruit.dried": 0.5,
    "wood.fresh": -0.3,
    "wood.old": 1,
    "wood.toasted": 0.3,
    "earth.leather-and-leaf": 0.7,
    "spirit.ethanol": -0.7,
    "spirit.heads": -0.5,
    "feel.burn": -0.5,
    "feel.pull": 0.5,
    "time.finish": 0.5,
  },
  strength: { "spirit.ethanol": 0.7, "feel.burn": 1, "feel.weight": 0.5, "time.finish": 0.5 },
  newOak: {
    "sweet.vanilla": 1,
    "sweet.sugar": 1,
    "wood.fresh": 0.7,
    "wood.toasted": 1,
    "spice.warm": 0.5,
    "feel.pull": 0.5,
  },
  wineCask: { "fruit.dried": 1.2, "fruit.berry": 0.8, "sweet.cocoa": 0.5, "nut.nut": 0.3 },
  europeanOak: { "spice.warm": 0.5, "feel.pull": 0.5, "sweet.vanilla": -0.3 },
  rye: { "spice.sharp": 0.5, "plant.herb": 0.5 },
  wheat: { "grain.bake": 0.3, "sweet.honey": 0.2 },
  corn: { "sweet.sugar": 0.3, "grain.cereal": 0.2 },
};

/** How far an effect may be off, one standard deviation. */
export const EFFECT_SD: Readonly<Record<string, number>> = {
  age: 0.5,
  strength: 0.5,
  newOak: 0.7,
  wineCask: 0.7,
  europeanOak: 0.5,
  rye: 0.4,
  wheat: 0.4,
  corn: 0.4,
};

/** The mash where a label names only its kind: shares, rough. Common practice, no source. */
export const MASH_OF_KIND: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  rye: { rye: 0.7 },
  wheat: { wheat: 0.6 },
  corn: { corn: 0.85 },
  bourbon: { corn: 0.7, rye: 0.15 },
  grain: { wheat: 0.5, corn: 0.4 },
};
/** Kinds that lie in new oak where a label names no casks. */
export const NEW_OAK_KINDS: ReadonlySet<string> = new Set(["bourbon", "rye"]);
/** What a cask that once held wine is said to have held. */
export const WINES =
  /wine|port|sherry|madeira|marsala|oloroso|fino|amontillado|sauternes|ximénez|ximenez|muscat|tokaj/i;
