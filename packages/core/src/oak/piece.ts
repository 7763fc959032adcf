/** A plain block: a stick, a stave strip, a cube, a chip. Centimetres. */
export interface Block {
  readonly shape: "stick" | "stave" | "cube";
  readonly cm: readonly [number, number, number];
}

/** Loose chips: what one of them measures, and what all of them weigh. */
export interface Chips {
  readonly shape: "chips";
  readonly cm: readonly [number, number, number];
  readonly grams: number;
}

/** A rod with a screw-shaped fin cut into it. Centimetres. */
export interface Spiral {
  readonly shape: "spiral";
  /** Across the fin, and across the core that is left. */
  readonly outer: number;
  readonly core: number;
  /** Thickness of the fin along the rod, and from one turn to the next. */
  readonly fin: number;
  readonly pitch: number;
  readonly length: number;
}

export type Piece = Block | Chips | Spiral;

/** What a body has: exact but for the wood itself, which is rougher than it measures. */
export interface Body {
  readonly areaCm2: number;
  readonly volumeCm3: number;
  /** What wood is between its two nearest faces: how far the spirit has to go is half of it. */
  readonly thicknessCm: number;
}
