import type { LabelFacts } from "./label.ts";

export interface LabelledWhiskey {
  readonly id: string;
  readonly label: LabelFacts;
}

/** A level of 0 to 10 and how far off it may be, one standard deviation. */
export interface SaidLevel {
  readonly mean: number;
  readonly sd: number;
}

/** What one taster said of one glass. */
export interface TableNote {
  readonly taster: string;
  /** Amounts by whiskey, any unit; a whiskey alone is one. */
  readonly parts: Readonly<Record<string, number>>;
  /** By attribute. One that is not there was not spoken of, and says nothing. */
  readonly says: Readonly<Record<string, SaidLevel>>;
}
