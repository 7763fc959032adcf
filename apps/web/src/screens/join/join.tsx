import type { JoinShown, Ticket } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { useSay } from "../../api.ts";
import { Busy, Button, Form, IssueSummary, Page, TextField } from "../../parts/index.ts";
import { GuestForm } from "./guest-form.tsx";
import { ticketInAddress, ticketTyped } from "./ticket.ts";

/** Where a guest comes in: by the link of a square code, or by a code typed. */
export default function Join() {
  const [ticket, setTicket] = useState<Ticket | null>(() => ticketInAddress(location.hash));
  const [shown, setShown] = useState<JoinShown | null>(null);
  const say = useSay("askJoining");
  const { send } = say;
  useEffect(() => {
    // Out of the address bar, so that nobody reads or shares it by accident.
    if (location.hash !== "") history.replaceState(null, "", location.pathname);
  }, []);
  useEffect(() => {
    if (ticket === null) return;
    void send({ body: { ticket } }).then(setShown);
  }, [ticket, send]);
  if (ticket !== null && shown !== null) {
    return <GuestForm ticket={ticket} shown={shown} />;
  }
  return (
    <Page
      title="Join a flight"
      lead="The host shows a square code for the camera, or reads out eight characters."
    >
      {say.busy && <Busy what="the flight" />}
      {ticket?.kind === "link" ? (
        <>
          <IssueSummary say={say} />
          {!say.busy && (
            <div className="form-actions">
              <Button kind="main" onClick={() => void send({ body: { ticket } }).then(setShown)}>
                Try again
              </Button>
              <Button onClick={() => setTicket(null)}>Type a code instead</Button>
            </div>
          )}
        </>
      ) : (
        <Typed
          say={say}
          onTicket={(typed) => {
            setTicket(null);
            void send({ body: { ticket: typed } }).then((answer) => {
              if (answer === null) return;
              setShown(answer);
              setTicket(typed);
            });
          }}
        />
      )}
    </Page>
  );
}

interface TypedProps {
  readonly say: ReturnType<typeof useSay<"askJoining">>;
  readonly onTicket: (ticket: Ticket) => void;
}

function Typed({ say, onTicket }: TypedProps) {
  const [code, setCode] = useState("");
  const ask = (): void => {
    const ticket = ticketTyped(code);
    if (ticket !== null) {
      onTicket(ticket);
      return;
    }
    const limit = "a code of 8 letters and figures";
    const message = `joining requires ${limit}, got ${code.trim() === "" ? "none" : code}`;
    say.refuse([{ code: "code_short", path: ["ticket"], limit, received: code, message }]);
  };
  return (
    <Form say={say} onSend={ask}>
      <TextField
        label="Code"
        path={["ticket"]}
        value={code}
        onChange={setCode}
        hint="Capitals, spaces and hyphens do not matter."
        input={{ maxLength: 16, autoCapitalize: "characters", spellCheck: false }}
      />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Look
        </Button>
      </div>
    </Form>
  );
}
