import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { Batch, BodyOf } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printMl } from "../../figures/index.ts";
import {
  announce,
  Button,
  Choice,
  Form,
  Section,
  SelectField,
  Stepper,
  TextField,
  Tick,
} from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { dayTyped, instantOfDay } from "./typed-day.ts";

type Begin = NonNullable<BodyOf<"beginRest">>;
type Rule = NonNullable<Begin["pull"]>;

/** Common practice, no source: enough for two glasses. */
const SAMPLE_ML = 30;

interface BeginRestProps {
  readonly batch: Batch;
  readonly again: boolean;
}

/** Begins a rest by the rule that ends it; what is kept from before has to be kept now. */
export function BeginRest({ batch, again }: BeginRestProps) {
  const household = useHousehold();
  const now = useNow();
  const say = useSay("beginRest");
  const [kind, setKind] = useState<Begin["kind"]>("oak");
  const [attribute, setAttribute] = useState<Rule["attribute"]>("wood.toasted");
  const [level, setLevel] = useState(6);
  const [keeps, setKeeps] = useState(!again);
  const [ml, setMl] = useState(String(SAMPLE_ML));
  const [day, setDay] = useState(dayTyped(now));
  const [flightOn, setFlightOn] = useState("");
  const [celsius, setCelsius] = useState("");
  const send = async (): Promise<void> => {
    const kept = Number(ml.replace(",", "."));
    const degrees = celsius.trim() === "" ? null : Number(celsius.replace(",", "."));
    const begun = await say.send({
      at: { household: household.id, batch: batch.id },
      body: {
        kind,
        pull: kind === "oak" ? { attribute, level } : null,
        ...(degrees === null ? {} : { celsius: degrees }),
        ...(flightOn === "" ? {} : { flightOn }),
        ...(keeps
          ? { sample: { label: `${batch.name}, before`.slice(0, 120), capacityMl: kept, ml: kept } }
          : {}),
        ...instantOfDay(day, now),
      },
    });
    if (begun !== null) announce(`The rest of ${batch.name} is begun`);
  };
  return (
    <Section title={again ? "Begin another rest" : "Begin its rest"}>
      <Form say={say} onSend={send} label="Begin its rest">
        <Choice
          label="On"
          path={["kind"]}
          value={kind}
          onChange={setKind}
          options={[
            { value: "oak", label: "Oak" },
            { value: "glass", label: "Glass alone" },
          ]}
          hint={
            kind === "oak"
              ? "A piece of wood in the bottle: days decide, and nobody knows how many before you taste."
              : "A rest in glass is mostly mixing and air. Two weeks are common practice, no source."
          }
        />
        {kind === "oak" && (
          <fieldset className="rest-rule">
            <legend className="field-label">Pull the oak when</legend>
            <div className="form-row">
              <SelectField
                label="This"
                path={["pull", "attribute"]}
                value={attribute}
                onChange={(to) => setAttribute(to as Rule["attribute"])}
                options={ATTRIBUTES.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              />
              <Stepper
                label="Reaches, of 10"
                showLabel
                value={level}
                min={1}
                max={10}
                path={["pull", "level"]}
                onChange={setLevel}
              />
            </div>
          </fieldset>
        )}
        <div className="rest-sample">
          <Tick label="Keep a sample from before, in a vial" value={keeps} onChange={setKeeps} />
          {keeps && (
            <TextField
              label="Into the vial"
              unit="mL"
              path={["sample", "ml"]}
              value={ml}
              onChange={setMl}
              hint={`The blind “before” of a flight later on. It leaves the vessel, which holds ${printMl(batch.now.volumeMl)}.`}
              input={{ inputMode: "decimal" }}
            />
          )}
        </div>
        <div className="form-row">
          <TextField label="Begun on" path={["at"]} value={day} onChange={setDay} input={{ type: "date" }} />
          <TextField
            label="Flight, before and after"
            optional
            path={["flightOn"]}
            value={flightOn}
            onChange={setFlightOn}
            input={{ type: "date" }}
            hint="Planned for this day; it stands in your calendar."
          />
          <TextField
            label="It stands at"
            optional
            unit="°C"
            path={["celsius"]}
            value={celsius}
            onChange={setCelsius}
            hint="20 °C where nobody knows."
            input={{ inputMode: "decimal" }}
          />
        </div>
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Begin its rest
          </Button>
        </div>
      </Form>
    </Section>
  );
}
