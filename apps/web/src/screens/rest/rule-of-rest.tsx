import { ATTRIBUTES, attributeName } from "@partsproof/core/sensory";
import type { Rest } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { announce, Button, Form, Section, SelectField, Stepper, TextField } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

type Rule = NonNullable<Rest["pull"]>;

/** The rule that ends it, where it stands, and the flight that was planned; changed at any time. */
export function RuleOfRest({ rest }: { readonly rest: Rest }) {
  const [open, setOpen] = useState(false);
  const { pull, celsius, minimumEndsAt } = rest;
  return (
    <Section title="The rule">
      <p>
        {pull === null
          ? rest.kind === "glass"
            ? "On glass nothing is pulled."
            : "No rule says yet when to pull."
          : `Pull when ${attributeName(pull.attribute)} reaches ${pull.level} of 10.`}
        {minimumEndsAt !== null &&
          (rest.minimumDays ?? 0) > 0 &&
          ` Its shortest rest is over on ${printDay(minimumEndsAt)}.`}
        {celsius !== null && ` It stands at ${celsius} °C.`}
      </p>
      {open ? (
        <EditRule rest={rest} onDone={() => setOpen(false)} />
      ) : (
        rest.endedAt === null && (
          <div className="form-actions">
            <Button onClick={() => setOpen(true)}>Change the rule</Button>
          </div>
        )
      )}
    </Section>
  );
}

function EditRule({ rest, onDone }: { readonly rest: Rest; readonly onDone: () => void }) {
  const household = useHousehold();
  const say = useSay("editRest");
  const [attribute, setAttribute] = useState<Rule["attribute"]>(rest.pull?.attribute ?? "wood.toasted");
  const [level, setLevel] = useState(Math.round(rest.pull?.level ?? 6));
  const [celsius, setCelsius] = useState(rest.celsius === null ? "" : String(rest.celsius));
  const [flightOn, setFlightOn] = useState(rest.flightOn ?? "");
  const [note, setNote] = useState(rest.note);
  const send = async (): Promise<void> => {
    const degrees = celsius.trim() === "" ? null : Number(celsius.replace(",", "."));
    const told = await say.send({
      at: { household: household.id, rest: rest.id },
      body: {
        version: rest.version,
        ...(rest.kind === "oak" ? { pull: { attribute, level } } : {}),
        celsius: degrees,
        flightOn: flightOn === "" ? null : flightOn,
        note,
      },
    });
    if (told === null) return;
    announce("Saved");
    onDone();
  };
  return (
    <Form say={say} onSend={send} label="The rule">
      {rest.kind === "oak" && (
        <div className="form-row">
          <SelectField
            label="Pull when this"
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
      )}
      <div className="form-row">
        <TextField
          label="It stands at"
          optional
          unit="°C"
          path={["celsius"]}
          value={celsius}
          onChange={setCelsius}
          input={{ inputMode: "decimal" }}
        />
        <TextField
          label="Flight, before and after"
          optional
          path={["flightOn"]}
          value={flightOn}
          onChange={setFlightOn}
          input={{ type: "date" }}
        />
      </div>
      <TextField label="Note" optional path={["note"]} value={note} onChange={setNote} />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Save
        </Button>
        <Button onClick={onDone}>Leave it</Button>
      </div>
    </Form>
  );
}
