import { readStrengthOf } from "../../bench/index.ts";
import { printAbv } from "../../figures/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import { announce, Button, Stepper, TextField } from "../../parts/index.ts";
import { MOST_ROWS, nextRowId, type Row } from "./typed.ts";

export interface RowsFieldProps {
  readonly rows: readonly Row[];
  readonly onChange: (rows: readonly Row[]) => void;
  readonly most?: number;
}

/** Liquids by parts and strength. */
export function RowsField({ rows, onChange, most = MOST_ROWS }: RowsFieldProps) {
  const set = (id: number, change: Partial<Row>): void =>
    onChange(rows.map((row) => (row.id === id ? { ...row, ...change } : row)));
  return (
    <>
      <div className="reckon-rowhead" aria-hidden="true">
        <span>Parts</span>
        <span>Strength on the label</span>
      </div>
      <ol className="reckon-rows">
        {rows.map((row, i) => {
          const read = readStrengthOf(row.strength);
          return (
            <li key={row.id} className="reckon-row">
              <Stepper
                label={`Parts of liquid ${i + 1}`}
                value={row.parts}
                onChange={(parts) => set(row.id, { parts })}
              />
              <TextField
                label={`Strength of liquid ${i + 1}`}
                quietLabel
                value={row.strength}
                onChange={(strength) => set(row.id, { strength })}
                input={{ inputMode: "text", placeholder: "62.4% or 124.8 proof" }}
                wrong={read.ok ? null : read.wrong}
                {...(read.ok && /p/i.test(row.strength) ? { hint: printAbv(read.value) } : {})}
              />
              <button
                type="button"
                className="drop"
                aria-label={`Take liquid ${i + 1} away`}
                disabled={rows.length === 1}
                onClick={() => {
                  onChange(rows.filter((other) => other.id !== row.id));
                  announce(`Liquid ${i + 1} taken away`);
                }}
              >
                <CrossGlyph />
              </button>
            </li>
          );
        })}
      </ol>
      <Button
        disabled={rows.length >= most}
        onClick={() => onChange([...rows, { id: nextRowId(rows), parts: 1, strength: "40%" }])}
      >
        Add a liquid
      </Button>
    </>
  );
}

/** The rows as numbers; null while a strength cannot be read or all parts are zero. */
export function readRows(rows: readonly Row[]): {
  readonly rows: readonly { readonly parts: number; readonly abv20: number }[];
  readonly allZero: boolean;
} | null {
  const read = rows.flatMap((row) => {
    const strength = readStrengthOf(row.strength);
    return strength.ok ? [{ parts: row.parts, abv20: strength.value }] : [];
  });
  return read.length < rows.length ? null : { rows: read, allZero: read.every(({ parts }) => parts === 0) };
}
