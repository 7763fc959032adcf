/** How a table is taken to be, as its sums have it: what `learnTable` finds. */
export interface TableState {
  /** How far whiskeys of like labels lie apart, by attribute. */
  readonly apart: Float64Array;
  readonly mixing: number;
  readonly bias: number;
  /** By taster: by how much notes are off besides what they say; offset and stretch of the scale. */
  readonly noise: Float64Array;
  readonly offset: Float64Array;
  readonly stretch: Float64Array;
  /** `contrasts` of the tasters. */
  readonly rows: Float64Array;
}
