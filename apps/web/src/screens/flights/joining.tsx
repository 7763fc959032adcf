import type { AnswerOf, Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { printMoment } from "../../figures/index.ts";
import { announce, Button, Dialog, IssueSummary, Section } from "../../parts/index.ts";
import { useToken } from "../../session/index.ts";
import { onlyThisDevice } from "./only-this-device.ts";
import { joinPath } from "./paths.ts";
import { ShareLink } from "./share-link.tsx";
import "./table.css";

type Made = AnswerOf<"openJoining">;
type Role = Made["role"];
const WHO: Readonly<Record<Role, string>> = { taster: "tasters", watcher: "watchers", pourer: "the pourer" };

interface JoiningProps {
  readonly flight: Flight;
  readonly household: string;
}

/** The host lets guests in, sees who came, and sends away. */
export function Joining({ flight, household }: JoiningProps) {
  const token = useToken("host", flight.id);
  if (token === undefined) return null;
  return <WithToken flight={flight} household={household} token={token} />;
}

function WithToken({ flight, household, token }: JoiningProps & { readonly token: string }) {
  const at = { household, flight: flight.id };
  const asked = useAsk("listJoinings", { at, token });
  const open = useSay("openJoining");
  const close = useSay("closeJoining");
  const revoke = useSay("revokeGuest");
  const [made, setMade] = useState<Made | null>(null);
  const [leaving, setLeaving] = useState<{ readonly id: string; readonly name: string } | null>(null);
  const alone = flight.pouring === "alone";
  const roles: readonly Role[] = [
    ...(!alone && flight.sheets.some((sheet) => sheet.state === "free") ? (["taster"] as const) : []),
    "watcher",
    ...(!alone && flight.state === "pouring" ? (["pourer"] as const) : []),
  ];
  const openFor = async (role: Role): Promise<void> => {
    const answer = await open.send({ at, token, body: { role } });
    if (answer !== null) setMade(answer);
  };
  const sendAway = async (): Promise<void> => {
    if (leaving === null) return;
    const done = await revoke.send({ at: { ...at, guest: leaving.id }, token });
    setLeaving(null);
    if (done !== null) announce(`${leaving.name} can read and write nothing here any more`);
  };
  const ways = asked.answer?.open ?? [];
  const guests = asked.answer?.guests.filter((guest) => guest.revokedAt === null) ?? [];
  return (
    <Section title="Guests">
      <IssueSummary say={open} />
      <IssueSummary say={close} />
      <IssueSummary say={revoke} />
      <div className="form-actions">
        {roles.map((role) => (
          <Button key={role} busy={open.busy} onClick={() => void openFor(role)}>
            Let {WHO[role]} in
          </Button>
        ))}
      </div>
      {ways.length > 0 && (
        <ul className="joining-guests">
          {ways.map((way) => (
            <li key={way.id}>
              <span>
                Open for {WHO[way.role]} until {printMoment(way.expiresAt)}
              </span>
              <Button kind="quiet" onClick={() => void close.send({ at: { ...at, joining: way.id }, token })}>
                Close<span className="unseen"> the way in for {WHO[way.role]}</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      {guests.length === 0 ? (
        <p className="soft">Nobody has joined by a link or a code yet.</p>
      ) : (
        <ul className="joining-guests">
          {guests.map((guest) => (
            <li key={guest.id}>
              <span>
                <span className="name">{guest.name}</span>, {guest.role}
              </span>
              <Button kind="quiet" onClick={() => setLeaving(guest)}>
                Send away<span className="unseen"> {guest.name}</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Dialog
        title={made === null ? "A way in" : `A way in for ${WHO[made.role]}`}
        open={made !== null}
        onClose={() => setMade(null)}
      >
        {made !== null && <WayIn made={made} />}
      </Dialog>
      <Dialog
        title={`Send ${leaving?.name ?? "the guest"} away?`}
        open={leaving !== null}
        onClose={() => setLeaving(null)}
        alert
      >
        <p>
          Their phone can read and write nothing of this flight from that moment. An open sheet keeps what is
          on it and is free for another; a locked one stays locked.
        </p>
        <div className="form-actions">
          <Button kind="danger" busy={revoke.busy} onClick={() => void sendAway()}>
            Send away
          </Button>
          <Button onClick={() => setLeaving(null)}>Leave it</Button>
        </div>
      </Dialog>
    </Section>
  );
}

function WayIn({ made }: { readonly made: Made }) {
  return (
    <>
      {made.role === "pourer" && (
        <p>
          <strong>Whoever comes in by this sees what is in every glass.</strong> It serves one, who tastes
          nothing of the flight.
        </p>
      )}
      <ShareLink label={`the flight, for ${WHO[made.role]}`} path={joinPath(made.link)} />
      {onlyThisDevice(location.hostname) && (
        <p className="field-hint">
          For phones, open this page at the address that the house printed when it started: the square code
          then carries that address.
        </p>
      )}
      {made.code !== null && (
        <p>
          Or at <strong>{location.host}/join</strong> the code
          <br />
          <span className="joining-code">{made.code}</span>
        </p>
      )}
      <p className="field-hint">
        Both are shown this once and end {printMoment(made.expiresAt)}, or when you let others in anew.
      </p>
    </>
  );
}
