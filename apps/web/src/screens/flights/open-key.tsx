import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { listed } from "../../figures/index.ts";
import { Button, Dialog, IssueSummary } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { useToken } from "../../session/index.ts";
import { aDaySince } from "./aged.ts";
import { notLocked } from "./flight-state.ts";
import { revealPath } from "./paths.ts";
import { Step } from "./step.tsx";

interface FlightStepProps {
  readonly flight: Flight;
  readonly household: string;
}

/** The reveal: free to all once every sheet is locked, before that to the host only, who is told whom it shuts out. */
export function OpenKey({ flight, household }: FlightStepProps) {
  const token = useToken("host", flight.id);
  const [asking, setAsking] = useState(false);
  const [now] = useState(() => Date.now());
  const say = useSay("revealFlight");
  const open = notLocked(flight);
  const early = open.length > 0;
  const reveal = async (): Promise<void> => {
    const finding = await say.send({
      at: { household, flight: flight.id },
      body: { closeOpenSheets: early },
      ...(early && token !== undefined ? { token } : {}),
    });
    setAsking(false);
    if (finding !== null) go(revealPath(household, flight.id));
  };
  if (!early) {
    return (
      <Step title="Open the key">
        <IssueSummary say={say} />
        <p>It happens once. Gather round: the glasses open one at a time.</p>
        <Button kind="main" busy={say.busy} onClick={() => void reveal()}>
          Reveal
        </Button>
      </Step>
    );
  }
  const mayOpen = flight.pouring !== "alone" && (token !== undefined || aDaySince(flight.pouredAt, now));
  return (
    <Step title={flight.pouring === "alone" ? "Taste and lock the sheet" : "Taste, write, lock"}>
      <IssueSummary say={say} />
      <p>
        Waiting for {listed(open)}. The key opens when every sheet is locked; what nobody writes down before
        that, nobody knew.
      </p>
      {mayOpen && (
        <Button kind="quiet" onClick={() => setAsking(true)}>
          Reveal before everybody has locked
        </Button>
      )}
      <Dialog title="Reveal early?" open={asking} onClose={() => setAsking(false)} alert>
        <p>
          <strong>{listed(open)}</strong> {open.length === 1 ? "has" : "have"} not locked.{" "}
          {open.length === 1 ? "That sheet" : "Those sheets"} will be closed as{" "}
          {open.length === 1 ? "it stands" : "they stand"}: the notes are kept, but the guesses and the
          ranking count for nothing.
        </p>
        <div className="form-actions">
          <Button kind="danger" busy={say.busy} onClick={() => void reveal()}>
            Close {open.length === 1 ? "it" : "them"} and reveal
          </Button>
          <Button onClick={() => setAsking(false)}>Wait</Button>
        </div>
      </Dialog>
    </Step>
  );
}
