/** What a label is for, and its width and height in mm. Common practice, no source: a label keeps to the straight wall of its bottle. */
export const LABEL_SIZES = {
  small: { says: "60 × 40 mm", for: "vials, and bottles to 200 mL", wide: 60, high: 40, codeMm: 0 },
  middle: { says: "90 × 60 mm", for: "bottles of 350 to 500 mL", wide: 90, high: 60, codeMm: 32 },
  large: { says: "90 × 120 mm", for: "bottles of 700 mL and more", wide: 90, high: 120, codeMm: 46 },
} as const satisfies Record<
  string,
  {
    readonly says: string;
    readonly for: string;
    readonly wide: number;
    readonly high: number;
    /** The side of the square code on its back; 0 where none fits. */
    readonly codeMm: number;
  }
>;
export type LabelSize = keyof typeof LABEL_SIZES;

/** The smallest module of a square code that a phone reads off paper, in mm. Common practice, no source. */
export const MODULE_MM = 0.33;
