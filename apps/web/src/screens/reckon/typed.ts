/** One line of the mix as it is typed. */
export interface Row {
  readonly id: number;
  readonly parts: number;
  readonly strength: string;
}

/** Everything else that is typed at the bench, by job. */
export const FIRST_FIELDS = {
  warmth: "20 °C",
  mixTotal: "750 mL",
  reduceFrom: "60%",
  reduceTo: "43%",
  reduceAdd: "water",
  reduceOther: "40%",
  reduceGoal: "have",
  reduceHave: "700 mL",
  reduceEnd: "700 mL",
  reduceMass: "500 g",
  reduceVessel: "700 mL",
  reduceDays: "1",
  reduceBy: "volume",
  weighWay: "ml",
  weighAmount: "100 mL",
  weighGrams: "100 g",
  weighStrength: "40%",
  weighIn: "air",
  correctScale: "abv20",
  correctReading: "50",
  correctDivision: "1",
  correctSolids: "",
  whatIf: "parts",
  liftFrom: "46%",
  liftHave: "350 mL",
  liftTo: "58%",
  liftKnow: "strength",
  liftOther: "62.4%",
  liftRoom: "200 mL",
  sampleGrams: "94.5 g",
  sampleMl: "100 mL",
  beforeMl: "700 mL",
  beforeStrength: "62.4%",
  afterMl: "650 mL",
  afterStrength: "61%",
} as const satisfies Readonly<Record<string, string>>;

export type FieldName = keyof typeof FIRST_FIELDS;
export type Fields = Readonly<Record<FieldName, string>>;

export interface Typed {
  readonly rows: readonly Row[];
  readonly fields: Fields;
}

export const FIRST: Typed = {
  rows: [
    { id: 1, parts: 2, strength: "62.4%" },
    { id: 2, parts: 1, strength: "46%" },
  ],
  fields: FIRST_FIELDS,
};

export const MOST_ROWS = 12;

export function nextRowId(rows: readonly Row[]): number {
  return Math.max(0, ...rows.map((row) => row.id)) + 1;
}

const isRow = (row: Partial<Row> | null): row is Row =>
  typeof row?.strength === "string" &&
  Number.isInteger(row.id) &&
  Number.isInteger(row.parts) &&
  (row.parts ?? -1) >= 0;

/** Reads back what this device kept; what is not whole is as at first. */
export function asTyped(text: string | null): Typed {
  try {
    const read = (JSON.parse(text ?? "{}") ?? {}) as { rows?: unknown; fields?: unknown };
    const rows = Array.isArray(read.rows) ? (read.rows as readonly Partial<Row>[]) : [];
    const whole = rows.length > 0 && rows.length <= MOST_ROWS && rows.every(isRow);
    const kept = (read.fields ?? {}) as Readonly<Record<string, unknown>>;
    const fields = Object.fromEntries(
      Object.entries(FIRST_FIELDS).map(([name, first]) => {
        const value = kept[name];
        return [name, typeof value === "string" ? value : first];
      }),
    ) as Fields;
    return { rows: whole ? rows : FIRST.rows, fields };
  } catch {
    return FIRST;
  }
}
