/**
 * A sum of unknowns: `base` of the core's numbers at `places`, and what a leaf has of its own (−1: no leaf). Where there is a leaf,
 * `places` are those that it hangs on.
 */
export interface Sum {
  readonly places: Int32Array;
  readonly base: Float64Array;
  readonly leaf: number;
}

/** One liquid as an attribute's sums have it. */
export interface StudiedLiquid {
  /** Whiskey and share. */
  readonly parts: readonly (readonly [whiskey: number, share: number])[];
  /** Of what mixing may add, in variance: 1 for half and half, 0 for a whiskey alone. */
  readonly mixed: number;
  /** Its unknown that no other liquid shares: how it strays from the mean of its parts, or the level of a whiskey in no mix; −1: none. */
  readonly leaf: number;
  readonly level: Sum;
  /** How it strays from the mean of its parts. */
  readonly stray: Sum;
}

export interface StudiedWhiskey {
  /** Place among the core's unknowns, or −1 where it is a leaf; its leaf, or −1. */
  readonly place: number;
  readonly leaf: number;
  /** Whether anything was said of it, or of a mix that held it. */
  readonly told: boolean;
  readonly level: Sum;
  /** How it strays from what its label says. */
  readonly stray: Sum;
}

/** What was said of one attribute. */
export interface AttributeStudy {
  readonly id: string;
  readonly effects: Float64Array;
  readonly liquids: readonly StudiedLiquid[];
  /** By saying. */
  readonly liquid: Int32Array;
  readonly taster: Int32Array;
  readonly said: Float64Array;
  /** How far off it may be by its own words, squared. */
  readonly own: Float64Array;
  /** 1 where it stands at an end of the scale. */
  readonly atEnd: Uint8Array;
  /** As a normal saying: its value, and variance; at an end all of it, else that of its own words, the taster's noise to come. */
  readonly value: Float64Array;
  readonly variance: Float64Array;
  readonly whiskeys: readonly StudiedWhiskey[];
  /** Unknowns in common: effects of the label, tasters' biases, whiskeys that stand in a mix. */
  readonly core: number;
  /** The core's numbers that each leaf hangs on. */
  readonly patterns: readonly Int32Array[];
  /** 1 for leaves of which nothing was said. */
  readonly untold: Uint8Array;
}

export interface Study {
  readonly ids: readonly string[];
  /** How many. */
  readonly notes: number;
  readonly tasters: readonly string[];
  readonly labels: readonly Float64Array[];
  readonly attributes: readonly AttributeStudy[];
}
