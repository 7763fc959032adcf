import type { Vessel } from "@partsproof/house/protocol";
import { useState } from "react";
import { mlDigits, printG, printMl } from "../../figures/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import { Button, SelectField, TextField } from "../../parts/index.ts";
import { gramsPerMl, type PouredRow } from "./poured-rows.ts";

export interface PourLinesProps {
  readonly rows: readonly PouredRow[];
  readonly onChange: (rows: readonly PouredRow[]) => void;
  readonly unit: "mL" | "g";
  readonly vessels: readonly Vessel[];
  readonly byId: ReadonlyMap<string, Vessel>;
}

/** Every pour with what was planned and a box for what was really poured. */
export function PourLines({ rows, onChange, unit, vessels, byId }: PourLinesProps) {
  const [extra, setExtra] = useState("");
  const full = vessels.filter(({ contents }) => contents.volumeMl > 0);
  const set = (id: string, typed: string | null): void =>
    onChange(rows.map((row) => (row.id === id ? { ...row, typed } : row)));
  const add = (): void => {
    const vessel = byId.get(extra);
    const id = `extra ${rows.length} ${extra}`;
    const row: PouredRow =
      vessel === undefined
        ? { id, label: "water", from: { kind: "water" }, planned: null, typed: "" }
        : {
            id,
            label: vessel.label,
            from: { kind: "vessel", vesselId: vessel.id },
            planned: null,
            typed: "",
          };
    onChange([...rows, row]);
    setExtra("");
  };
  return (
    <>
      <ol className="pours">
        {rows.map((row, i) => (
          <li key={row.id}>
            <span className="pours-step" aria-hidden="true">
              {i + 1}
            </span>
            <div className="pours-what">
              <span className="name">{row.from.kind === "water" ? "Water" : row.label}</span>
              {row.planned === null ? (
                <span className="soft small">not in the plan</span>
              ) : (
                <span className="pours-plan">
                  {unit === "mL" ? (
                    <>
                      <b>{row.planned.ml.toFixed(1)}</b> mL{" "}
                      <span className="soft small">{printG(row.planned.g)}</span>
                    </>
                  ) : (
                    <>
                      <b>{row.planned.g.toFixed(1)}</b> g{" "}
                      <span className="soft small">{printMl(row.planned.ml)}</span>
                    </>
                  )}
                </span>
              )}
            </div>
            <TextField
              label={`Really poured of ${row.from.kind === "water" ? "water" : row.label}`}
              quietLabel
              path={["rows", i, "amount"]}
              unit={unit}
              value={row.typed ?? plannedText(row, unit)}
              onChange={(text) => set(row.id, text)}
              input={{ inputMode: "decimal" }}
            />
            {row.planned === null ? (
              <button
                type="button"
                className="drop"
                aria-label={`Take pour ${i + 1} away`}
                onClick={() => onChange(rows.filter(({ id }) => id !== row.id))}
              >
                <CrossGlyph />
              </button>
            ) : (
              row.typed !== null && (
                <Button
                  kind="quiet"
                  onClick={() => set(row.id, null)}
                  aria-label={`As planned: ${row.label}`}
                >
                  as planned
                </Button>
              )
            )}
            <More row={row} unit={unit} byId={byId} />
          </li>
        ))}
      </ol>
      <div className="pours-add">
        <SelectField
          label="Something else went in"
          value={extra}
          onChange={setExtra}
          options={
            <>
              <option value="">Water</option>
              {full.map((vessel) => (
                <option key={vessel.id} value={vessel.id}>
                  {vessel.label}, {printMl(vessel.contents.volumeMl)}
                </option>
              ))}
            </>
          }
        />
        <Button onClick={add}>Add the pour</Button>
      </div>
    </>
  );
}

const plannedText = (row: PouredRow, unit: "mL" | "g"): string =>
  row.planned === null ? "" : (unit === "mL" ? row.planned.ml : row.planned.g).toFixed(1);

/** What a typed amount is in the other unit. */
function More({ row, unit, byId }: { readonly row: PouredRow } & Pick<PourLinesProps, "unit" | "byId">) {
  if (row.typed === null || !/^\d+([.,]\d+)?$/.test(row.typed.trim())) return null;
  const value = Number(row.typed.trim().replace(",", "."));
  const perMl = gramsPerMl(row, byId);
  return (
    <p className="pours-more soft small">
      {unit === "mL" ? `about ${printG(value * perMl)}` : `about ${mlDigits(value / perMl)} mL`}
    </p>
  );
}
