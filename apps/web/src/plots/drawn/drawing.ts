/** What a shape is drawn in: the screen's theme gives the colour, a file of its own a fixed one. */
export type Tone = "ink" | "soft" | "line" | "edge" | "fill" | "paper";

export type Shape =
  | {
      readonly kind: "line";
      readonly from: Point;
      readonly to: Point;
      readonly tone: Tone;
      readonly width?: number;
    }
  | {
      readonly kind: "dot";
      readonly at: Point;
      readonly r: number;
      readonly tone: Tone;
      readonly ring?: boolean;
    }
  | {
      readonly kind: "oval";
      readonly at: Point;
      readonly r: Point;
      readonly turn: number;
      readonly tone: Tone;
    }
  | { readonly kind: "area"; readonly points: readonly Point[]; readonly tone: Tone }
  | {
      readonly kind: "text";
      readonly at: Point;
      readonly says: string;
      readonly tone: Tone;
      readonly anchor?: "start" | "middle" | "end";
      readonly size?: number;
      readonly strong?: boolean;
    };
export type Point = readonly [x: number, y: number];

/** A figure as shapes, so that the screen, a print and a file of its own show the same. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** The numbers of a figure, for a reader and for a file. */
export interface Table {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Widths that a figure is drawn at: a phone's and a page's. */
export const WIDTHS = { narrow: 328, wide: 720 } as const;
export const isWide = (width: number): boolean => width >= 560;
