/** What a check of a published record can find wrong. */
export type FindingCode =
  | "changed_key"
  | "unreadable_key"
  | "other_commitment"
  | "changed_entry"
  | "rewritten_sheet"
  | "late_entry"
  | "missing_entry"
  | "sheet_set_changed"
  | "time_runs_back"
  | "changed_closing"
  | "other_closing";

export interface Finding {
  readonly code: FindingCode;
  /** The sheet concerned, null when it is the whole flight. */
  readonly sheet: string | null;
  /** The entry concerned, counted from 1, null when it is not one. */
  readonly entry: number | null;
  readonly message: string;
}
