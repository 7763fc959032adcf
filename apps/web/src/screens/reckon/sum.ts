/** One line of the mix as it is typed. */
export interface Row {
  readonly id: number;
  readonly parts: number;
  readonly strength: string;
}

/** Everything typed into the reckoner. */
export interface Sum {
  readonly rows: readonly Row[];
  readonly volume: string;
  readonly from: string;
  readonly to: string;
  readonly amount: string;
  readonly fixed: "liquid" | "final";
}

export const FIRST: Sum = {
  rows: [
    { id: 1, parts: 2, strength: "62.4%" },
    { id: 2, parts: 1, strength: "46%" },
  ],
  volume: "750 mL",
  from: "60%",
  to: "43%",
  amount: "700 mL",
  fixed: "liquid",
};

export const MOST_ROWS = 12;

export function nextRowId(rows: readonly Row[]): number {
  return Math.max(0, ...rows.map((row) => row.id)) + 1;
}

/** Reads back what this device kept; null where that is not a whole sum. */
export function asWritten(text: string | null): Sum | null {
  if (text === null) return null;
  try {
    const read = JSON.parse(text) as Partial<Sum>;
    const rows = read.rows;
    if (!Array.isArray(rows) || rows.length === 0 || rows.length > MOST_ROWS) return null;
    for (const row of rows as readonly Partial<Row>[]) {
      if (typeof row.strength !== "string" || !Number.isInteger(row.parts) || !Number.isInteger(row.id))
        return null;
    }
    const texts = [read.volume, read.from, read.to, read.amount];
    if (texts.some((one) => typeof one !== "string")) return null;
    if (read.fixed !== "liquid" && read.fixed !== "final") return null;
    return read as Sum;
  } catch {
    return null;
  }
}
