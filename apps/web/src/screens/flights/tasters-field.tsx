import type { Taster } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, sentence, TextField, useIssuesAt } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { Plan } from "./plan.ts";

export interface TastersFieldProps {
  readonly plan: Plan;
  /** Takes what to do with the plan, since it may have gone on while a new taster is added. */
  readonly onChange: (change: (plan: Plan) => Plan) => void;
  readonly tasters: readonly Taster[];
}

/** Who tastes: several when somebody else pours, one when alone; a new name can be added on the spot. */
export function TastersField({ plan, onChange, tasters }: TastersFieldProps) {
  const alone = plan.pouring === "alone";
  const issues = useIssuesAt(["tasterIds"]);
  const toggle = (id: string, on: boolean): void =>
    onChange((latest) => {
      const rest = latest.tasterIds.filter((other) => other !== id);
      return { ...latest, tasterIds: alone ? [id] : on ? [...rest, id] : rest };
    });
  return (
    <fieldset className="field">
      <legend className="field-label">Who tastes</legend>
      {tasters.length === 0 && <p className="soft">Nobody has tasted here yet. Add the first name.</p>}
      <div className="choice">
        {tasters.map((taster) => (
          <label key={taster.id}>
            <input
              type={alone ? "radio" : "checkbox"}
              name="who-tastes"
              checked={plan.tasterIds.includes(taster.id)}
              data-path="tasterIds"
              onChange={(event) => toggle(taster.id, event.target.checked)}
            />
            {taster.name}
          </label>
        ))}
      </div>
      {issues.map((issue) => (
        <p className="field-issue" key={issue.message}>
          {issue.message}
        </p>
      ))}
      <AddTaster
        names={tasters.map(({ name }) => name)}
        onAdded={(taster) => {
          toggle(taster.id, true);
          announce(`${taster.name} added to the tasters`);
        }}
      />
    </fieldset>
  );
}

interface AddTasterProps {
  readonly names: readonly string[];
  readonly onAdded: (taster: Taster) => void;
}

function AddTaster({ names, onAdded }: AddTasterProps) {
  const household = useHousehold().id;
  const [name, setName] = useState("");
  const say = useSay("addTaster");
  const add = async (): Promise<void> => {
    const known = names.find((other) => other.toLowerCase() === name.trim().toLowerCase());
    if (known !== undefined) {
      const limit = "a name that nobody here has";
      const message = `another taster requires ${limit}, got ${known}`;
      say.refuse([{ code: "taster_known", path: ["name"], limit, received: known, message }]);
      return;
    }
    const taster = await say.send({ at: { household }, body: { name } });
    if (taster === null) return;
    setName("");
    onAdded(taster);
  };
  return (
    <div className="plan-add">
      <TextField
        label="Another taster"
        value={name}
        onChange={setName}
        wrong={say.issues[0] === undefined ? null : sentence(say.issues[0].message)}
        input={{
          maxLength: 120,
          onKeyDown: (event) => {
            if (event.key !== "Enter") return;
            event.preventDefault();
            void add();
          },
        }}
      />
      <Button busy={say.busy} disabled={name.trim() === ""} onClick={() => void add()}>
        Add
      </Button>
    </div>
  );
}
