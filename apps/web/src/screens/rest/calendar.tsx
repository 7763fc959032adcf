import type { CalendarLink } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import {
  announce,
  Broken,
  Busy,
  Button,
  Form,
  IssueSummary,
  Page,
  Section,
  TextField,
} from "../../parts/index.ts";
import { offerFile } from "../../plots/index.ts";
import { useHousehold } from "../../session/index.ts";
import { ShareLink } from "../flights/share-link.tsx";
import "./rest.css";

const ownZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** What is due on which day, in the person's own calendar: once as a file, or followed by a secret link. */
export default function CalendarPage() {
  const household = useHousehold();
  return (
    <Page
      title="In your own calendar"
      back={{ to: `/h/${household.id}`, label: "What is next" }}
      lead="Check tastings, the days on which oak is likely ready, the end of the shortest rest, flights that were planned."
    >
      <Section title="A file, once">
        <DaysFile />
      </Section>
      <Section title="A link that stays up to date">
        <Links />
      </Section>
    </Page>
  );
}

function DaysFile() {
  const household = useHousehold();
  const zone = ownZone();
  const days = useAsk("getCalendar", { at: { household: household.id }, query: { zone } });
  if (days.state === "busy") return <Busy what="the days" />;
  if (days.state === "broken") return <Broken asked={days} title="The days could not be fetched" />;
  const { text, events } = days.answer;
  if (events === 0) return <p>No day is waited for yet: no batch rests.</p>;
  return (
    <>
      <p>
        {events === 1 ? "1 day" : `${events} days`}, by the names you gave your batches; days are those of{" "}
        {zone}.
      </p>
      <div className="form-actions">
        <Button onClick={() => offerFile("parts-and-proof.ics", new Blob([text], { type: "text/calendar" }))}>
          Save the days as a file
        </Button>
      </div>
    </>
  );
}

function Links() {
  const household = useHousehold();
  const at = { household: household.id };
  const links = useAsk("listCalendarLinks", { at });
  const say = useSay("addCalendarLink");
  const [label, setLabel] = useState("");
  const [made, setMade] = useState<{ readonly label: string; readonly path: string } | null>(null);
  const send = async (): Promise<void> => {
    const told = await say.send({ at, body: { label, zone: ownZone() } });
    if (told === null) return;
    setMade(told);
    setLabel("");
    announce("The link is made");
  };
  return (
    <>
      <p>
        A calendar program asks this address again and again. It gives dates and neutral words alone: no name
        of a batch, no bottle, nothing of a sealed flight. Whoever has the address can read it, so it is as
        good as a key.
      </p>
      {made !== null && (
        <div className="calendar-made">
          <ShareLink label={`the calendar of ${made.label}`} path={made.path} />
          <p className="soft small">It is shown this once. Lost, it is revoked and a new one made.</p>
        </div>
      )}
      <Form say={say} onSend={send} label="Make a link">
        <TextField
          label="What will follow it"
          path={["label"]}
          value={label}
          onChange={setLabel}
          hint="Your phone, say, so that you know which one to revoke."
          input={{ maxLength: 120 }}
        />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Make a link
          </Button>
        </div>
      </Form>
      {(links.answer?.items ?? []).length > 0 && (
        <ul className="rest-checks" aria-label="Links made">
          {links.answer?.items.map((link) => (
            <OneLink key={link.id} link={link} />
          ))}
        </ul>
      )}
    </>
  );
}

function OneLink({ link }: { readonly link: CalendarLink }) {
  const household = useHousehold();
  const say = useSay("revokeCalendarLink");
  const { label, zone, createdAt, revokedAt } = link;
  const revoke = async (): Promise<void> => {
    const told = await say.send({ at: { household: household.id, link: link.id } });
    if (told !== null) announce(`The link of ${label} opens nothing more`);
  };
  return (
    <li>
      <IssueSummary say={say} />
      <p>
        <strong>{label}</strong>
        <span className="soft small">
          {" "}
          made {printDay(createdAt)}, days of {zone}
          {revokedAt !== null && `; revoked ${printDay(revokedAt)}, it opens nothing`}
        </span>
      </p>
      {revokedAt === null && (
        <Button kind="danger" busy={say.busy} onClick={revoke}>
          Revoke<span className="unseen"> the link of {label}</span>
        </Button>
      )}
    </li>
  );
}
