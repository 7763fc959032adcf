import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Dialog, IssueSummary, Section } from "../../parts/index.ts";
import { keepToken, useToken } from "../../session/index.ts";
import { aDaySince } from "./aged.ts";

/** Nothing was poured: the key is destroyed and the liquid is free again. */
export function CallOff({ flight, household }: { readonly flight: Flight; readonly household: string }) {
  const token = useToken("host", flight.id);
  const [asking, setAsking] = useState(false);
  const [now] = useState(() => Date.now());
  const say = useSay("callOffFlight");
  if (token === undefined && !aDaySince(flight.createdAt, now)) return null;
  const callOff = async (): Promise<void> => {
    const done = await say.send({
      at: { household, flight: flight.id },
      ...(token === undefined ? {} : { token }),
    });
    setAsking(false);
    if (done !== null) keepToken("pourer", flight.id, null);
  };
  return (
    <Section title="If nothing was poured">
      <IssueSummary say={say} />
      <div>
        <Button kind="danger" onClick={() => setAsking(true)}>
          Call the flight off
        </Button>
      </div>
      <Dialog title="Call the flight off?" open={asking} onClose={() => setAsking(false)} alert>
        <p>
          The key is destroyed for good, and what was kept for the flight is free to pour again. A flight that
          was poured cannot be called off.
        </p>
        <div className="form-actions">
          <Button kind="danger" busy={say.busy} onClick={() => void callOff()}>
            Call it off
          </Button>
          <Button onClick={() => setAsking(false)}>Keep it</Button>
        </div>
      </Dialog>
    </Section>
  );
}
