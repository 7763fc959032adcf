import { parseVolume } from "@partsproof/core/quantity";
import type { Facts } from "@partsproof/core/ledger";
import type { BatchPlan, Issue, Recipe, Vessel } from "@partsproof/house/protocol";
import { useMemo, useState } from "react";
import { useSay } from "../../api.ts";
import { abvDigits, mlDigits, printAbv, printG, printMl } from "../../figures/index.ts";
import { printGive } from "../../mixing/index.ts";
import {
  announce,
  AreaField,
  Button,
  Choice,
  Form,
  NumberHero,
  Section,
  SelectField,
  TextField,
} from "../../parts/index.ts";
import { go, useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { OakNote } from "../recipes/recipe-fields.tsx";
import { asPoured } from "./as-poured.ts";
import { PourLines } from "./pour-lines.tsx";
import { type PouredRow, readRows, rowOfPour, rowsAsWeighed, rowsOf } from "./poured-rows.ts";
import { resolveRows } from "./resolve-rows.ts";
import "./pour-batch.css";

export interface PourBatchProps {
  readonly plan: BatchPlan;
  readonly recipe: Recipe;
  readonly vessels: readonly Vessel[];
  readonly facts: Facts;
  /** What a scale said, where it was poured by weight already. */
  readonly weighed?: Parameters<typeof rowsAsWeighed>[1] | null;
  readonly onRecorded?: () => void;
}

/** Pours in order, what they come to as poured, the vessel, and the record of it all. */
export function PourBatch({ plan, recipe, vessels, facts, weighed = null, onRecorded }: PourBatchProps) {
  const household = useHousehold();
  const say = useSay("addBatch");
  const [unit, setUnit] = useState<"mL" | "g">(weighed === null ? "mL" : "g");
  const [rows, setRows] = useState<readonly PouredRow[]>(() =>
    weighed === null ? rowsOf(plan) : rowsAsWeighed(rowsOf(plan), weighed),
  );
  const [name, setName] = useState(recipe.name);
  const [into, setInto] = useState("new");
  const [label, setLabel] = useState(`${recipe.name}, batch`);
  const [capacity, setCapacity] = useState(() => {
    // What was weighed may have grown a little over the plan.
    const read = readRows(rows, unit);
    const made = read.ok ? asPoured(read.pours, new Map(vessels.map((one) => [one.id, one])), facts) : null;
    const most = Math.max(plan.result.volumeMl, weighed === null ? 0 : (made?.result.volumeMl ?? 0));
    return `${Math.ceil(most / 50) * 50} mL`;
  });
  const [rest, setRest] = useState(recipe.latest.restDays === null ? "" : String(recipe.latest.restDays));
  const [note, setNote] = useState("");
  const saved = useUnsaved(rows.some(({ typed }) => typed !== null) || note !== "");
  const byId = useMemo(() => new Map(vessels.map((vessel) => [vessel.id, vessel])), [vessels]);
  const empty = vessels.filter(({ kind, contents }) => kind !== "bottle" && contents.volumeMl <= 0);
  const read = readRows(rows, unit);
  const poured = read.ok ? asPoured(read.pours, byId, facts) : null;
  const holds = into === "new" ? parseVolume(capacity) : null;
  const again = resolveRows(
    plan,
    rows,
    unit,
    byId,
    holds === null ? (byId.get(into)?.capacityMl ?? null) : holds.ok ? holds.value : null,
  );

  const send = async (): Promise<void> => {
    const issues: Issue[] = read.ok ? [] : [...read.issues];
    const size = into === "new" ? parseVolume(capacity) : null;
    if (size?.ok === false) issues.push({ ...size.issue, path: ["vessel", "capacityMl"] });
    if (rest.trim() !== "" && !/^\d{1,4}$/.test(rest.trim())) {
      const limit = "whole days, or nothing";
      const message = `rest requires ${limit}, got "${rest}"`;
      issues.push({ code: "rest_unreadable", path: ["restDays"], limit, received: rest, message });
    }
    if (issues.length > 0 || !read.ok) {
      say.refuse(issues);
      return;
    }
    const made = await say.send({
      at: { household: household.id },
      body: {
        name,
        recipeId: plan.recipeId,
        recipeNumber: plan.recipeNumber,
        vessel:
          size === null
            ? { kind: "existing", vesselId: into }
            : { kind: "new", label, capacityMl: size.ok ? size.value : 0 },
        pours: read.pours,
        restDays: rest.trim() === "" ? null : Number(rest),
        note,
      },
    });
    if (made !== null) {
      saved();
      onRecorded?.();
      announce(`${made.name} recorded`);
      go(`/h/${household.id}/batches/${made.id}`);
    }
  };
  const issues = say.issues.map((issue) => {
    const [where, pour] = issue.path;
    // The house counts the pours it was sent; the page counts its rows, of which some may not have been poured.
    if (where === "pours" && typeof pour === "number") {
      return { ...issue, path: ["rows", rowOfPour(rows, unit, pour), "amount"] };
    }
    // A vessel that is too small is told where it can be put right.
    return issue.path.length === 1 && where === "vessel"
      ? { ...issue, path: ["vessel", into === "new" ? "capacityMl" : "vesselId"] }
      : issue;
  });
  return (
    <Form say={{ issues, tries: say.tries }} onSend={send}>
      <div className="pouring">
        <Section
          title={weighed === null ? "Pour in this order" : "As the scale said"}
          action={
            <Choice
              label="Measured in"
              quietLabel
              value={unit}
              onChange={setUnit}
              options={[
                { value: "mL", label: "mL" },
                { value: "g", label: "g" },
              ]}
            />
          }
        >
          <PourLines rows={rows} onChange={setRows} unit={unit} vessels={vessels} byId={byId} />
          {again !== null && (
            <div className="form-actions">
              <Button
                kind="main"
                onClick={() => {
                  setRows(again.rows);
                  announce("The rest is reckoned again");
                }}
              >
                Reckon the rest again
              </Button>
              <p className="soft small">
                A pour went too far. What is in stays in; what is not poured yet grows with it
                {again.ratioKept ? ", and the parts come out right." : " as far as the vessel allows."}
                {!again.strengthKept && " The strength does not."}
              </p>
            </div>
          )}
        </Section>
        <Section title="As poured" className="pouring-out">
          {poured === null || poured.result.abv20 === null ? (
            <p className="soft">Waiting for amounts that can be read.</p>
          ) : (
            <>
              <NumberHero
                size="hero"
                label="Strength"
                value={abvDigits(poured.result.abv20)}
                unit="% vol"
                give={printGive(poured.give)}
              />
              <div className="numbers">
                <NumberHero label="Volume" value={mlDigits(poured.result.volumeMl)} unit="mL" />
                <NumberHero label="On the scale" value={String(Math.round(poured.result.massG))} unit="g" />
              </div>
              {plan.result.abv20 !== null && (
                <p className="soft small">
                  Planned: {printAbv(plan.result.abv20)}, {printMl(plan.result.volumeMl)},{" "}
                  {printG(plan.result.massG)}.
                </p>
              )}
            </>
          )}
        </Section>
      </div>
      <Section title="Into which vessel">
        <SelectField
          label="Vessel"
          quietLabel
          path={["vessel", "vesselId"]}
          value={into}
          onChange={setInto}
          options={
            <>
              <option value="new">A new one</option>
              {empty.length > 0 && (
                <optgroup label="Empty ones here">
                  {empty.map((vessel) => (
                    <option key={vessel.id} value={vessel.id}>
                      {vessel.label}, holds {printMl(vessel.capacityMl)}
                    </option>
                  ))}
                </optgroup>
              )}
            </>
          }
        />
        {into === "new" && (
          <div className="form-row">
            <TextField label="Its label" path={["vessel", "label"]} value={label} onChange={setLabel} />
            <TextField
              label="It holds"
              path={["vessel", "capacityMl"]}
              value={capacity}
              onChange={setCapacity}
            />
          </div>
        )}
      </Section>
      <Section title="The record">
        <div className="form-row">
          <TextField label="Name of the batch" path={["name"]} value={name} onChange={setName} />
          <TextField
            label="Rest"
            optional
            path={["restDays"]}
            unit="days"
            value={rest}
            onChange={setRest}
            input={{ inputMode: "numeric" }}
          />
        </div>
        {recipe.latest.oak !== "" && (
          <>
            <p>
              <strong>Oak:</strong> {recipe.latest.oak}
            </p>
            <OakNote />
          </>
        )}
        <AreaField label="Note" optional path={["note"]} value={note} onChange={setNote} />
      </Section>
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Record the batch
        </Button>
        <p className="soft small">
          This takes the pours off the shelf. It can be undone in the vessel's history.
        </p>
      </div>
    </Form>
  );
}
