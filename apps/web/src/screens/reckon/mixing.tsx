import { mixParts } from "@partsproof/core/alcoholometry";
import { millilitres20, parseStrength, parseVolume } from "@partsproof/core/quantity";
import { abvDigits, mlDigits, printAbv, printMl, printParts, proofDigits } from "../../figures/index.ts";
import { abv20OfStated, LABEL_TOLERANCE, printGive, strengthGive } from "../../mixing/index.ts";
import {
  announce,
  Button,
  LiquidColumn,
  NumberHero,
  Section,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import { MOST_ROWS, nextRowId, type Row, type Sum } from "./sum.ts";

export interface PanelProps {
  readonly sum: Sum;
  readonly onChange: (sum: Sum) => void;
}

const abvOf = (text: string) => {
  const read = parseStrength(text);
  return read.ok ? abv20OfStated(read.value) : null;
};

/** Parts and strengths in, strength and proof out. */
export function Mixing({ sum, onChange }: PanelProps) {
  const { rows } = sum;
  const set = (id: number, change: Partial<Row>): void =>
    onChange({ ...sum, rows: rows.map((row) => (row.id === id ? { ...row, ...change } : row)) });
  const volume = parseVolume(sum.volume);
  return (
    <div className="reckon">
      <div className="reckon-in">
        <div className="reckon-rowhead" aria-hidden="true">
          <span>Parts</span>
          <span>Strength on the label</span>
        </div>
        <ol className="reckon-rows">
          {rows.map((row, i) => {
            const read = parseStrength(row.strength);
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
                  wrong={read.ok ? null : read.issue.message}
                  {...(read.ok && read.value.basis === "proof60F"
                    ? { hint: printAbv(abv20OfStated(read.value)) }
                    : {})}
                />
                <button
                  type="button"
                  className="drop"
                  aria-label={`Take liquid ${i + 1} away`}
                  disabled={rows.length === 1}
                  onClick={() => {
                    onChange({ ...sum, rows: rows.filter((other) => other.id !== row.id) });
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
          disabled={rows.length >= MOST_ROWS}
          onClick={() =>
            onChange({ ...sum, rows: [...rows, { id: nextRowId(rows), parts: 1, strength: "40%" }] })
          }
        >
          Add a liquid
        </Button>
        <TextField
          label="Poured in all"
          value={sum.volume}
          onChange={(text) => onChange({ ...sum, volume: text })}
          hint="Before it shrinks: the parts added up. 750 mL, 70 cl or 2 oz."
          wrong={volume.ok ? null : volume.issue.message}
        />
      </div>
      <Outcome sum={sum} volumeMl={volume.ok ? volume.value : null} />
    </div>
  );
}

function Outcome({ sum, volumeMl }: { readonly sum: Sum; readonly volumeMl: number | null }) {
  const parts = sum.rows.map((row) => ({ parts: row.parts, abv20: abvOf(row.strength) }));
  const known = parts.flatMap((part) =>
    part.abv20 === null ? [] : [{ parts: part.parts, abv20: part.abv20 }],
  );
  const whole = known.reduce((all, part) => all + part.parts, 0);
  if (known.length < parts.length || whole === 0 || volumeMl === null || volumeMl === 0) {
    return (
      <Section title="What comes of it" className="reckon-out">
        <p className="soft">
          {whole === 0 && known.length === parts.length
            ? "All parts are zero. Give at least one liquid a part."
            : "Waiting for every strength and the amount poured."}
        </p>
      </Section>
    );
  }
  const mixed = mixParts(known, millilitres20(volumeMl));
  const give = printGive(strengthGive(known.map((one) => ({ ml: one.parts, abv20: one.abv20 }))));
  const off = mixed.abv20 - mixed.naiveAbv20;
  return (
    <Section title="What comes of it" className="reckon-out">
      <div aria-live="polite" aria-atomic="true">
        <NumberHero size="hero" label="Strength" value={abvDigits(mixed.abv20)} unit="% vol" give={give} />
      </div>
      <div className="numbers">
        <NumberHero label="Proof (US)" value={proofDigits(mixed.proof60F)} unit="proof" />
        <NumberHero label="Volume" value={mlDigits(mixed.volumeMl)} unit="mL" />
        <NumberHero
          label={mixed.contractionMl >= 0 ? "Shrinks by" : "Swells by"}
          value={Math.abs(mixed.contractionMl).toFixed(1)}
          unit="mL"
          note={`of ${printMl(mixed.sumMl)} poured`}
        />
      </div>
      <LiquidColumn
        title={`The mix: ${sum.rows.map((row) => `${printParts(row.parts)} at ${row.strength}`).join(", ")}`}
        segments={sum.rows.map((row, i) => ({
          key: String(row.id),
          amount: row.parts,
          amountText: String(row.parts),
          label: printAbv(known[i]?.abv20 ?? 0),
          sub: printMl((volumeMl * row.parts) / whole),
        }))}
      />
      <p className="reckon-average">
        Averaging the strengths would say {abvDigits(mixed.naiveAbv20)} %
        {Math.abs(off) < 0.005
          ? ", the same to a hundredth."
          : `, which is ${Math.abs(off).toFixed(2)} points too ${off > 0 ? "low" : "high"}.`}
      </p>
      <p className="soft small">
        {give} holds if every label is right to {LABEL_TOLERANCE} % vol, the most that EU and US rules allow.
      </p>
    </Section>
  );
}
