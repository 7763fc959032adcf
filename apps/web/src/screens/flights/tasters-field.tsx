import type { Taster } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, sentence, TextField, useIssuesAt } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { Plan } from "./plan.ts";

export interface TastersFieldProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
  readonly tasters: readonly Taster[];
}

/** Who tastes: several when somebody else pours, one when alone; a new name can be added on the spot. */
export function TastersField({ plan, onChange, tasters }: TastersFieldProps) {
  const alone = plan.pouring === "alone";
  const issues = useIssuesAt(["tasterIds"]);
  const toggle = (id: string, on: boolean): void => {
    const rest = plan.tasterIds.filter((other) => other !== id);
    onChange({ ...plan, tasterIds: alone ? [id] : on ? [...rest, id] : rest });
  };
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
        onAdded={(taster) => {
          toggle(taster.id, true);
          announce(`${taster.name} added to the tasters`);
        }}
      />
    </fieldset>
  );
}

function AddTaster({ onAdded }: { readonly onAdded: (taster: Taster) => void }) {
  const household = useHousehold().id;
  const [name, setName] = useState("");
  const say = useSay("addTaster");
  const add = async (): Promise<void> => {
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
