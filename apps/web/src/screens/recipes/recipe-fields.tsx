import { parseStrength } from "@partsproof/core/quantity";
import { printAbv, printStated } from "../../figures/index.ts";
import type { Cellar } from "../../cellar/index.ts";
import { abv20OfStated, whiskeyLabel } from "../../mixing/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import {
  announce,
  AreaField,
  Button,
  IssuesOfWhole,
  SafetyNote,
  SelectField,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import type { TypedRecipe, TypedSlot } from "./recipe-typed.ts";
import "./recipe-fields.css";

const MOST_SLOTS = 12;

export interface RecipeFieldsProps {
  readonly typed: TypedRecipe;
  readonly onChange: (typed: TypedRecipe) => void;
  readonly cellar: Cellar;
}

/** Parts, what each stands for, water, rest and oak. */
export function RecipeFields({ typed, onChange, cellar }: RecipeFieldsProps) {
  const set = (change: Partial<TypedRecipe>): void => onChange({ ...typed, ...change });
  const setSlot = (id: number, change: Partial<TypedSlot>): void =>
    set({ slots: typed.slots.map((slot) => (slot.id === id ? { ...slot, ...change } : slot)) });
  const water = typed.water.trim() === "" ? null : parseStrength(typed.water);
  return (
    <>
      <TextField
        label="Name of the recipe"
        path={["name"]}
        value={typed.name}
        onChange={(name) => set({ name })}
        input={{ maxLength: 120 }}
      />
      <fieldset className="slots">
        <legend className="field-label">Parts</legend>
        <IssuesOfWhole path={["slots"]} />
        {typed.slots.map((slot, i) => (
          <Slot
            key={slot.id}
            slot={slot}
            index={i}
            cellar={cellar}
            onChange={(change) => setSlot(slot.id, change)}
            onDrop={
              typed.slots.length === 1
                ? null
                : () => {
                    set({ slots: typed.slots.filter(({ id }) => id !== slot.id) });
                    announce(`Slot ${i + 1} taken away`);
                  }
            }
          />
        ))}
        <Button
          disabled={typed.slots.length >= MOST_SLOTS}
          onClick={() =>
            set({
              slots: [
                ...typed.slots,
                { id: Math.max(0, ...typed.slots.map(({ id }) => id)) + 1, parts: 1, key: "" },
              ],
            })
          }
        >
          Add a slot
        </Button>
      </fieldset>
      <div className="form-row">
        <TextField
          label="Water to"
          optional
          path={["waterTo"]}
          value={typed.water}
          onChange={(text) => set({ water: text })}
          hint={
            water?.ok === true && water.value.basis === "proof60F"
              ? `That is ${printAbv(abv20OfStated(water.value))} at 20 °C.`
              : "46% or 92 proof; empty for none"
          }
        />
        <TextField
          label="Rest"
          optional
          path={["restDays"]}
          unit="days"
          value={typed.rest}
          onChange={(rest) => set({ rest })}
          input={{ inputMode: "numeric" }}
        />
      </div>
      <SelectField
        label="Comes close to"
        optional
        path={["targetWhiskeyId"]}
        value={typed.target}
        onChange={(target) => set({ target })}
        options={
          <>
            <option value="">Nothing in particular</option>
            {cellar.whiskeys.map((whiskey) => (
              <option key={whiskey.id} value={whiskey.id}>
                {whiskeyLabel(whiskey)}
              </option>
            ))}
          </>
        }
      />
      <TextField
        label="Oak in the bottle"
        optional
        path={["oak"]}
        value={typed.oak}
        onChange={(oak) => set({ oak })}
        hint="Which piece, how toasted, how long: one 10 g stave, medium toast, 14 days"
        input={{ maxLength: 400 }}
      />
      {typed.oak.trim() !== "" && <OakNote />}
      <AreaField
        label="Note"
        optional
        path={["note"]}
        value={typed.note}
        onChange={(note) => set({ note })}
      />
    </>
  );
}

/** What may go into the bottle. */
export function OakNote() {
  return (
    <SafetyNote title="Untreated food-grade oak only">
      <p>
        Nothing glued, painted, oiled or preserved. Taste often: oak goes on giving until it is taken out.
      </p>
    </SafetyNote>
  );
}

interface SlotProps {
  readonly slot: TypedSlot;
  readonly index: number;
  readonly cellar: Cellar;
  readonly onChange: (change: Partial<TypedSlot>) => void;
  readonly onDrop: (() => void) | null;
}

function Slot({ slot, index, cellar, onChange, onDrop }: SlotProps) {
  const label = cellar.stocks.get(slot.key)?.label ?? `slot ${index + 1}`;
  const kinds = [...new Set(cellar.whiskeys.map(({ kind }) => kind))].toSorted();
  return (
    <div className="slot">
      <Stepper
        label={`Parts of ${label}`}
        path={["slots", index, "parts"]}
        value={slot.parts}
        onChange={(parts) => onChange({ parts })}
      />
      <SelectField
        label={`What slot ${index + 1} stands for`}
        quietLabel
        path={["slots", index, "of"]}
        value={slot.key}
        onChange={(key) => onChange({ key })}
        options={
          <>
            <option value="">Choose a whiskey or a batch</option>
            {slot.open !== undefined && (
              <option value="open">
                {slot.open.named === null
                  ? `Open: ${slot.more?.rule ?? "anything"}`
                  : `Open: ${slot.open.named.name}, which is not here`}
              </option>
            )}
            {kinds.map((kind) => (
              <optgroup key={kind} label={kind}>
                {cellar.whiskeys
                  .filter((whiskey) => whiskey.kind === kind)
                  .map((whiskey) => (
                    <option key={whiskey.id} value={`whiskey:${whiskey.id}`}>
                      {whiskeyLabel(whiskey)}, {printStated(whiskey.strength)}
                    </option>
                  ))}
              </optgroup>
            ))}
            {cellar.batches.length > 0 && (
              <optgroup label="batches made here">
                {cellar.batches.map((batch) => (
                  <option key={batch.id} value={`batch:${batch.id}`}>
                    {batch.name}
                  </option>
                ))}
              </optgroup>
            )}
          </>
        }
      />
      <button
        type="button"
        className="drop"
        aria-label={`Take slot ${index + 1} away`}
        disabled={onDrop === null}
        onClick={() => onDrop?.()}
      >
        <CrossGlyph />
      </button>
    </div>
  );
}
