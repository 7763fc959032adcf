import { parseStrength } from "@partsproof/core/quantity";
import type { Batch } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { abvDigits, fromNow, printDay, printG, printStated } from "../../figures/index.ts";
import { announce, Button, Form, IssueSummary, Section, Stepper, TextField } from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import "./reduction.css";

/** Water in steps over days: asked for, then poured step by step, each reckoned from what is in the vessel. */
export function Reduction({ batch }: { readonly batch: Batch }) {
  if (batch.now.abv20 === null || batch.state === "finished") return null;
  return (
    <Section title="Water in steps">
      {batch.reduction === null ? <Ask batch={batch} /> : <Steps batch={batch} plan={batch.reduction} />}
    </Section>
  );
}

function Ask({ batch }: { readonly batch: Batch }) {
  const at = { household: useHousehold().id, batch: batch.id };
  const say = useSay("editBatch");
  const [open, setOpen] = useState(false);
  const [to, setTo] = useState("46%");
  const [steps, setSteps] = useState(3);
  const [every, setEvery] = useState(2);
  const read = parseStrength(to);
  const send = async (): Promise<void> => {
    if (!read.ok) {
      say.refuse([{ ...read.issue, path: ["reduction", "waterTo", "value"] }]);
      return;
    }
    const { basis, value } = read.value;
    const reduction = { waterTo: { basis, value }, steps, everyDays: every };
    if ((await say.send({ at, body: { version: batch.version, reduction } })) !== null)
      announce("Water in steps begun");
  };
  if (!open)
    return (
      <>
        <p className="soft">
          A little water every few days is said to be gentler than all at once: common practice, no source.
        </p>
        <Button onClick={() => setOpen(true)}>Add water over days</Button>
      </>
    );
  return (
    <Form say={say} onSend={() => void send()}>
      <TextField
        label="Down to"
        path={["reduction", "waterTo", "value"]}
        value={to}
        onChange={setTo}
        hint={`46% or 92 proof; it has ${abvDigits(batch.now.abv20 ?? 0)} % vol now`}
        wrong={read.ok ? null : read.issue.message}
      />
      <div className="form-row">
        <Stepper label="In how many steps" showLabel value={steps} min={1} max={20} onChange={setSteps} />
        <Stepper label="Days between them" showLabel value={every} min={1} max={60} onChange={setEvery} />
      </div>
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Plan it
        </Button>
        <Button onClick={() => setOpen(false)}>Leave it</Button>
      </div>
    </Form>
  );
}

interface StepsProps {
  readonly batch: Batch;
  readonly plan: NonNullable<Batch["reduction"]>;
}

function Steps({ batch, plan }: StepsProps) {
  const household = useHousehold().id;
  const pour = useSay("addTransfer");
  const end = useSay("editBatch");
  const now = useNow();
  const [next] = plan.left;
  const poured = async (addMl: number): Promise<void> => {
    const done = await pour.send({
      at: { household },
      body: {
        from: { kind: "outside", name: "tap" },
        to: { kind: "vessel", vesselId: batch.vesselId },
        amount: { kind: "volume", ml: addMl },
        note: `${batch.name}, water in steps`,
      },
    });
    if (done !== null) announce("Water poured in");
  };
  return (
    <>
      <IssueSummary say={pour} />
      <IssueSummary say={end} />
      <p>
        To {printStated(plan.waterTo)} in {plan.steps} steps, {plan.everyDays} days apart: {plan.done} done.
      </p>
      {next !== undefined && (
        <ol className="reduction-steps" start={plan.done + 1}>
          {plan.left.map(({ dueAt, addMl, addG, afterAbv20 }, i) => (
            <li key={dueAt}>
              <p>
                <b>{addMl.toFixed(1)}</b> mL of water <span className="soft small">{printG(addG)}</span>
              </p>
              <p className="soft small">
                {printDay(dueAt)}
                {i === 0 && `, ${fromNow(dueAt, now)}`}, to {abvDigits(afterAbv20)} % vol
              </p>
            </li>
          ))}
        </ol>
      )}
      <div className="form-actions">
        {next !== undefined && (
          <Button kind="main" busy={pour.busy} onClick={() => void poured(next.addMl)}>
            The next step is poured
          </Button>
        )}
        <Button
          busy={end.busy}
          onClick={() =>
            void end.send({
              at: { household, batch: batch.id },
              body: { version: batch.version, reduction: null },
            })
          }
        >
          {next === undefined ? "Done with it" : "No more steps"}
        </Button>
      </div>
      <p className="soft small">
        Each step is reckoned from what is in the vessel, so a pour too much or too little is made good by the
        next. It can be undone in the vessel's history. Let it stand before you read its strength: mixing
        warms it.
      </p>
    </>
  );
}
