import type { Rest } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, Form, Section, TextField } from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { dayTyped, instantOfDay } from "./typed-day.ts";

/** Takes all wood out that is in, or ends a rest on glass; what filtering lost goes into the ledger. */
export function PullRest({ rest }: { readonly rest: Rest }) {
  const household = useHousehold();
  const now = useNow();
  const at = { household: household.id, rest: rest.id };
  const say = useSay("pullRest");
  // Where all wood came out piece by piece there is none to pull.
  const oak = rest.dose !== null;
  const several = rest.oak.filter(({ outAt }) => outAt === null).length > 1;
  const [loss, setLoss] = useState("");
  const [day, setDay] = useState(dayTyped(now));
  const [note, setNote] = useState("");
  const send = async (): Promise<void> => {
    const lossMl = loss.trim() === "" ? 0 : Number(loss.replace(",", "."));
    const told = await say.send({
      at,
      body: { version: rest.version, lossMl, note, ...instantOfDay(day, now) },
    });
    if (told !== null) announce(oak ? "The oak is out" : "The rest is ended");
  };
  return (
    <Section title={several ? "Pull all of the oak" : oak ? "Pull the oak" : "End the rest"}>
      <Form say={say} onSend={send} label="End the rest">
        <div className="form-row">
          <TextField
            label={oak ? "Out on" : "Ended on"}
            path={["at"]}
            value={day}
            onChange={setDay}
            input={{ type: "date" }}
          />
          <TextField
            label="Lost in filtering"
            optional
            unit="mL"
            path={["lossMl"]}
            value={loss}
            onChange={setLoss}
            hint={oak ? "Soaked up and held by the filter; crumbs stay in it." : undefined}
            input={{ inputMode: "decimal" }}
          />
        </div>
        <TextField label="Note" optional path={["note"]} value={note} onChange={setNote} />
        <div className="form-actions">
          <Button type="submit" busy={say.busy}>
            {several ? "All of the oak is out" : oak ? "The oak is out" : "The rest is over"}
          </Button>
        </div>
      </Form>
    </Section>
  );
}
