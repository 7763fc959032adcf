import { parseStrength } from "@partsproof/core/quantity";
import type { Whiskey, WoodSpecies } from "@partsproof/house/protocol";
import { printAbv } from "../../figures/index.ts";
import { abv20OfStated } from "../../mixing/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import { AreaField, Button, Choice, IssuesOfWhole, SelectField, TextField } from "../../parts/index.ts";
import type { TypedWhiskey } from "./whiskey-typed.ts";
import "./whiskey-fields.css";

const KINDS: readonly Whiskey["kind"][] = [
  "malt",
  "pot still",
  "rye",
  "wheat",
  "corn",
  "bourbon",
  "grain",
  "blend",
  "other",
];
const SPECIES: readonly WoodSpecies[] = [
  "American oak",
  "European oak",
  "Japanese oak",
  "other oak",
  "other wood",
  "not known",
];

export interface WhiskeyFieldsProps {
  readonly typed: TypedWhiskey;
  readonly onChange: (typed: TypedWhiskey) => void;
  readonly currency: string;
  /** Shows every field at once; else the less needed ones wait behind one tap. */
  readonly all?: boolean;
}

/** What a label says of a whiskey. */
export function WhiskeyFields({ typed, onChange, currency, all = false }: WhiskeyFieldsProps) {
  const set = (change: Partial<TypedWhiskey>): void => onChange({ ...typed, ...change });
  const strength = parseStrength(typed.strength);
  const proof =
    strength.ok && strength.value.basis === "proof60F" ? printAbv(abv20OfStated(strength.value)) : null;
  return (
    <>
      <div className="form-row">
        <TextField
          label="Maker"
          path={["maker"]}
          value={typed.maker}
          onChange={(maker) => set({ maker })}
          input={{ maxLength: 120 }}
        />
        <TextField
          label="Name"
          path={["name"]}
          value={typed.name}
          onChange={(name) => set({ name })}
          input={{ maxLength: 120 }}
        />
      </div>
      <div className="form-row">
        <TextField
          label="Strength"
          path={["strength"]}
          value={typed.strength}
          onChange={(text) => set({ strength: text })}
          hint={proof === null ? "62.4% or 124.8 proof" : `That is ${proof} at 20 °C.`}
        />
        <TextField
          label="Age"
          optional
          path={["ageYears"]}
          unit="years"
          value={typed.age}
          onChange={(age) => set({ age })}
          hint="Empty where none is stated"
          input={{ inputMode: "decimal" }}
        />
      </div>
      <div className="form-row">
        <SelectField
          label="Kind"
          path={["kind"]}
          value={typed.kind}
          onChange={(kind) => set({ kind: kind as Whiskey["kind"] })}
          options={KINDS.map((kind) => <option key={kind}>{kind}</option>)}
        />
        <TextField
          label="Bottle size"
          path={["bottleMl"]}
          value={typed.bottle}
          onChange={(bottle) => set({ bottle })}
        />
        <TextField
          label="Price"
          optional
          path={["priceMinor"]}
          unit={currency}
          value={typed.price}
          onChange={(price) => set({ price })}
          input={{ inputMode: "decimal" }}
        />
      </div>
      <details className="more" open={all || undefined}>
        <summary>Release, casks, grains and the rest</summary>
        <div className="more-in">
          <div className="form-row">
            <TextField
              label="Release, batch or year"
              optional
              path={["release"]}
              value={typed.release}
              onChange={(release) => set({ release })}
              input={{ maxLength: 120 }}
            />
            <TextField
              label="Distilled at"
              optional
              path={["distilledAt"]}
              value={typed.distilledAt}
              onChange={(distilledAt) => set({ distilledAt })}
              input={{ maxLength: 120 }}
            />
          </div>
          <TextField
            label="Place"
            optional
            path={["place"]}
            value={typed.place}
            onChange={(place) => set({ place })}
            hint="Region, country: the narrower first, with a comma"
            input={{ maxLength: 120 }}
          />
          <fieldset className="lines">
            <legend className="field-label">Casks</legend>
            <IssuesOfWhole path={["casks"]} />
            {typed.casks.map((cask, i) => (
              // oxlint-disable-next-line react/no-array-index-key -- lines have no name of their own
              <div key={i} className="line">
                <SelectField
                  label={`Wood of cask ${i + 1}`}
                  quietLabel
                  path={["casks", i, "species"]}
                  value={cask.species}
                  onChange={(species) =>
                    set({ casks: typed.casks.with(i, { ...cask, species: species as WoodSpecies }) })
                  }
                  options={SPECIES.map((one) => <option key={one}>{one}</option>)}
                />
                <TextField
                  label={`What cask ${i + 1} held before`}
                  quietLabel
                  path={["casks", i, "held"]}
                  value={cask.held}
                  onChange={(held) => set({ casks: typed.casks.with(i, { ...cask, held }) })}
                  input={{ placeholder: "held: bourbon, port, nothing", list: "cask-held", maxLength: 120 }}
                />
                <button
                  type="button"
                  className="drop"
                  aria-label={`Take cask ${i + 1} away`}
                  onClick={() => set({ casks: typed.casks.toSpliced(i, 1) })}
                >
                  <CrossGlyph />
                </button>
              </div>
            ))}
            <datalist id="cask-held">
              {[
                "nothing",
                "bourbon",
                "rye",
                "sherry",
                "port",
                "red wine",
                "white wine",
                "rum",
                "not known",
              ].map((held) => (
                <option key={held}>{held}</option>
              ))}
            </datalist>
            <Button
              disabled={typed.casks.length >= 12}
              onClick={() => set({ casks: [...typed.casks, { species: "American oak", held: "" }] })}
            >
              Add a cask
            </Button>
          </fieldset>
          <fieldset className="lines">
            <legend className="field-label">Grain bill</legend>
            <IssuesOfWhole path={["grains"]} />
            {typed.grains.map((line, i) => (
              // oxlint-disable-next-line react/no-array-index-key -- lines have no name of their own
              <div key={i} className="line">
                <TextField
                  label={`Grain ${i + 1}`}
                  quietLabel
                  path={["grains", i, "grain"]}
                  value={line.grain}
                  onChange={(grain) => set({ grains: typed.grains.with(i, { ...line, grain }) })}
                  input={{ placeholder: "malted barley", list: "grain-names", maxLength: 120 }}
                />
                <TextField
                  label={`Per cent of grain ${i + 1}`}
                  quietLabel
                  path={["grains", i, "percent"]}
                  unit="%"
                  value={line.percent}
                  onChange={(percent) => set({ grains: typed.grains.with(i, { ...line, percent }) })}
                  input={{ inputMode: "decimal" }}
                />
                <button
                  type="button"
                  className="drop"
                  aria-label={`Take grain ${i + 1} away`}
                  onClick={() => set({ grains: typed.grains.toSpliced(i, 1) })}
                >
                  <CrossGlyph />
                </button>
              </div>
            ))}
            {typed.grains.length > 0 && (
              <p className="field-hint" role="status">
                Adds up to {grainSum(typed.grains)} %; a grain bill is 100 %.
              </p>
            )}
            <datalist id="grain-names">
              {["malted barley", "barley", "rye", "malted rye", "wheat", "corn", "oats"].map((grain) => (
                <option key={grain}>{grain}</option>
              ))}
            </datalist>
            <Button
              disabled={typed.grains.length >= 12}
              onClick={() => set({ grains: [...typed.grains, { grain: "", percent: "" }] })}
            >
              Add a grain
            </Button>
          </fieldset>
          <Choice
            label="Can it still be bought?"
            path={["availability"]}
            value={typed.availability}
            onChange={(availability) => set({ availability })}
            options={[
              { value: "sold", label: "Still sold" },
              { value: "gone", label: "No longer sold" },
            ]}
          />
          <AreaField
            label="Note"
            optional
            path={["note"]}
            value={typed.note}
            onChange={(note) => set({ note })}
          />
        </div>
      </details>
    </>
  );
}

/** What can be read of the per cents, added up. */
function grainSum(grains: TypedWhiskey["grains"]): string {
  const sum = grains.reduce((all, { percent }) => all + (Number(percent.replace(",", ".")) || 0), 0);
  return String(Number(sum.toFixed(3)));
}
