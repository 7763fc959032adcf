import { parseVolume } from "@partsproof/core/quantity";
import { useId } from "react";
import { Choice, TextField, VesselLevel } from "../../parts/index.ts";
import "./bottle-fields.css";

/** One bottle as it is typed. */
export interface TypedBottle {
  readonly opened: boolean;
  readonly level: string;
  readonly paid: string;
  readonly label: string;
}

export const FULL: TypedBottle = { opened: false, level: "", paid: "", label: "" };

export interface BottleFieldsProps {
  readonly bottle: TypedBottle;
  readonly onChange: (bottle: TypedBottle) => void;
  readonly bottleMl: number;
  readonly currency: string;
}

/** Sealed or opened, and how much is in it. */
export function BottleFields({ bottle, onChange, bottleMl, currency }: BottleFieldsProps) {
  const id = useId();
  const level = parseVolume(bottle.level);
  const ml = bottle.opened && level.ok ? level.value : bottleMl;
  const set = (change: Partial<TypedBottle>): void => onChange({ ...bottle, ...change });
  return (
    <div className="bottle">
      <VesselLevel kind="bottle" size="page" full={ml / bottleMl} sealed={!bottle.opened} />
      <div className="bottle-fields">
        <Choice
          label="It is"
          path={["sealed"]}
          value={bottle.opened ? "opened" : "sealed"}
          onChange={(value) =>
            set({
              opened: value === "opened",
              level: value === "opened" ? `${Math.round(bottleMl / 2)} mL` : "",
            })
          }
          options={[
            { value: "sealed", label: "Sealed" },
            { value: "opened", label: "Opened" },
          ]}
        />
        {bottle.opened && (
          <>
            <div className="field">
              <label htmlFor={id} className="field-label">
                Level by eye
              </label>
              <input
                id={id}
                className="slide"
                type="range"
                min="0"
                max="100"
                step="1"
                value={Math.round((ml / bottleMl) * 100)}
                aria-valuetext={`${Math.round(ml)} mL of ${bottleMl} mL`}
                onChange={(event) =>
                  set({ level: `${Math.round((bottleMl * Number(event.target.value)) / 100)} mL` })
                }
              />
            </div>
            <TextField
              label="In it now"
              path={["levelMl"]}
              value={bottle.level}
              onChange={(text) => set({ level: text })}
              hint={`Of ${bottleMl} mL. By eye is good to about 20 mL.`}
            />
          </>
        )}
        <div className="form-row">
          <TextField
            label="Paid for it"
            optional
            path={["paid"]}
            unit={currency}
            value={bottle.paid}
            onChange={(paid) => set({ paid })}
            hint="Empty: the whiskey's usual price"
            input={{ inputMode: "decimal" }}
          />
          <TextField
            label="Mark on this bottle"
            optional
            path={["label"]}
            value={bottle.label}
            onChange={(label) => set({ label })}
            input={{ maxLength: 120, placeholder: "second bottle" }}
          />
        </div>
      </div>
    </div>
  );
}
