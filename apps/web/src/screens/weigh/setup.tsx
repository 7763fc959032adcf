import { type ReactNode, useState } from "react";
import { asTools, readCelsius, readGrams, readVolumeOf, short } from "../../bench/index.ts";
import { Button, Choice, sentence, TextField } from "../../parts/index.ts";
import { keep, kept } from "../../session/index.ts";
import { type Pouring, standing } from "../../weighing/index.ts";
import { ToolField } from "../reckon/tool-field.tsx";
import { KitchenNote } from "./kitchen-note.tsx";

type Plan = Pick<Pouring, "key" | "title" | "batch" | "parts" | "sources" | "waterTo">;

export interface SetupProps {
  /** null while it cannot be reckoned yet. */
  readonly plan: Plan | null;
  /** What the vessel is taken to hold unless another size is typed, mL. */
  readonly vesselMl: number;
  readonly onStart: (pouring: Pouring) => void;
  readonly children: ReactNode;
}

const TOOLS_KEY = "bench.tools";

/** Scale, room and vessel, before the first pour. */
export function Setup({ plan, vesselMl, onStart, children }: SetupProps) {
  const [tools, setTools] = useState(() => asTools(kept(TOOLS_KEY)));
  const [warmth, setWarmth] = useState("20 °C");
  const [tare, setTare] = useState<Pouring["tare"]>("each");
  const [base, setBase] = useState("0 g");
  const [typedVessel, setVessel] = useState<string | null>(null);
  const [tried, setTried] = useState<string | null>(null);
  const vessel = typedVessel ?? `${Math.ceil(vesselMl / 50) * 50} mL`;
  const celsius = readCelsius(warmth);
  const baseG = tare === "running" ? readGrams(base, true) : { ok: true as const, value: 0 };
  const capacity = vessel.trim() === "" ? { ok: true as const, value: null } : readVolumeOf(vessel);
  const start = (): void => {
    if (plan === null || !celsius.ok || !baseG.ok || !capacity.ok) {
      setTried("Something above cannot be read yet.");
      return;
    }
    const pouring: Pouring = {
      v: 1,
      ...plan,
      capacityMl: capacity.value,
      celsius: celsius.value,
      scale: tools.scale,
      thermometer: tools.thermometer,
      label: tools.label,
      tare,
      baseG: baseG.value,
      happened: [],
    };
    try {
      standing(pouring);
    } catch (error) {
      // Colder than ice, say: core names what it refuses.
      if (!(error instanceof RangeError)) throw error;
      setTried(sentence(short(error.message)));
      return;
    }
    keep(TOOLS_KEY, JSON.stringify(tools));
    onStart(pouring);
  };
  return (
    <form
      className="form weigh-setup"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      {children}
      <ToolField tool="scale" label="Your scale" tools={tools} onChange={setTools} />
      <TextField
        label="The vessel holds"
        optional
        value={vessel}
        onChange={setVessel}
        hint="So far a pour that went too far can be made good"
        wrong={capacity.ok ? null : capacity.wrong}
      />
      <Choice
        label="Between the pours"
        value={tare}
        onChange={setTare}
        options={[
          { value: "each", label: "I zero the scale" },
          { value: "running", label: "I let it run on" },
        ]}
      />
      {tare === "running" && (
        <TextField
          label="It shows before the first pour"
          value={base}
          onChange={setBase}
          hint="0 when it was zeroed with the vessel on it"
          wrong={baseG.ok ? null : baseG.wrong}
        />
      )}
      <details className="weigh-more">
        <summary>Temperature and labels</summary>
        <div className="form-row">
          <TextField
            label="The liquids are at"
            value={warmth}
            onChange={setWarmth}
            hint="24 °C or 75 °F. Grams hardly depend on it."
            wrong={celsius.ok ? null : celsius.wrong}
          />
          <ToolField tool="thermometer" tools={tools} onChange={setTools} />
          <ToolField tool="label" tools={tools} onChange={setTools} />
        </div>
      </details>
      <KitchenNote />
      {tried !== null && (
        <p className="field-issue" role="alert">
          {tried}
        </p>
      )}
      <div className="form-actions">
        <Button kind="main" type="submit" disabled={plan === null}>
          Start pouring
        </Button>
      </div>
    </form>
  );
}
