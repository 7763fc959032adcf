import type { Batch, Rest } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk } from "../../api.ts";
import { printDay, printMl } from "../../figures/index.ts";
import { Broken, Busy, Button, Page, SafetyNote, Section, Tag } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { Advice } from "./advice.tsx";
import { BeginRest } from "./begin-rest.tsx";
import { BegunByMistake } from "./begun-by-mistake.tsx";
import { BeforeAndAfter } from "./before-and-after.tsx";
import { Checks } from "./checks.tsx";
import { OakIn } from "./oak-in.tsx";
import { PullRest } from "./pull-rest.tsx";
import { PutOak } from "./put-oak.tsx";
import { RuleOfRest } from "./rule-of-rest.tsx";
import "./rest.css";

/** A batch's time on glass or on oak: begun, the wood in, tasted, pulled. */
export default function RestPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, batch: params["batch"] ?? "" };
  const batch = useAsk("getBatch", { at });
  const rests = useAsk("listRests", { at });
  const back = { to: `/h/${household.id}/batches/${at.batch}`, label: batch.answer?.name ?? "The batch" };
  if (batch.state !== "here" || rests.state !== "here") {
    const broken = [batch, rests].find(({ state }) => state === "broken");
    return (
      <Page title="Its rest" back={back}>
        {broken === undefined ? (
          <Busy what="the rest" />
        ) : (
          <Broken asked={broken} title="This rest could not be fetched" />
        )}
      </Page>
    );
  }
  return <Shown batch={batch.answer} rests={rests.answer.items} back={back} />;
}

interface ShownProps {
  readonly batch: Batch;
  readonly rests: readonly Rest[];
  readonly back: { readonly to: string; readonly label: string };
}

function Shown({ batch, rests, back }: ShownProps) {
  const household = useHousehold();
  const open = rests.find(({ endedAt }) => endedAt === null);
  const ended = rests.filter(({ endedAt }) => endedAt !== null);
  const there = batch.state !== "finished" && batch.now.volumeMl > 0;
  return (
    <Page
      title={`${batch.name}: its rest`}
      wide
      back={back}
      lead={
        open === undefined
          ? ended.length > 0
            ? "No rest goes on."
            : "No rest was begun yet."
          : open.oakInAt === null
            ? `On ${open.kind} since ${printDay(open.beganAt)}`
            : open.dose === null
              ? `On oak from ${printDay(open.oakInAt)}, all of it out`
              : `Oak in since ${printDay(open.oakInAt)}`
      }
    >
      {open === undefined && !there && (
        <p>Nothing of it is left in its vessel, or it is finished: there is nothing to rest.</p>
      )}
      {open === undefined && there && ended.length === 0 && <BeginRest batch={batch} again={false} />}
      {open !== undefined && <Open rest={open} />}
      {ended.map((rest) => (
        <Ended key={rest.id} rest={rest} />
      ))}
      {open === undefined && there && ended.length > 0 && <Again batch={batch} />}
      <p>
        <Link to={`/h/${household.id}/calendar`}>These days in your own calendar</Link>
      </p>
    </Page>
  );
}

function Again({ batch }: { readonly batch: Batch }) {
  const [asked, setAsked] = useState(false);
  if (asked) return <BeginRest batch={batch} again />;
  return (
    <div className="form-actions">
      <Button onClick={() => setAsked(true)}>Begin another rest</Button>
    </div>
  );
}

function Open({ rest }: { readonly rest: Rest }) {
  const waits = rest.kind === "oak" && rest.oakInAt === null;
  const [more, setMore] = useState(false);
  return (
    <>
      <div className="rest-sides">
        <div className="rest-side">
          {waits ? <PutOak rest={rest} /> : <Advice rest={rest} />}
          <Checks rest={rest} />
        </div>
        <div className="rest-side">
          {rest.oak.length > 0 && (
            <>
              <OakIn rest={rest} />
              {more ? (
                <PutOak rest={rest} onDone={() => setMore(false)} />
              ) : (
                <div className="form-actions">
                  <Button onClick={() => setMore(true)}>Put more wood in</Button>
                </div>
              )}
            </>
          )}
          <RuleOfRest rest={rest} />
          <BeforeAndAfter rest={rest} />
          {waits ? <BegunByMistake rest={rest} /> : <PullRest rest={rest} />}
        </div>
      </div>
      {rest.kind === "oak" && (
        <SafetyNote title="Wood, glass and spirit">
          {rest.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </SafetyNote>
      )}
    </>
  );
}

function Ended({ rest }: { readonly rest: Rest }) {
  const days = rest.oakInAt ?? rest.beganAt;
  return (
    <Section
      title={`On ${rest.kind}, ${printDay(days)} to ${printDay(rest.endedAt ?? days)}`}
      action={<Tag>ended</Tag>}
    >
      {(rest.lossMl ?? 0) > 0 && <p>{printMl(rest.lossMl ?? 0)} lost in filtering.</p>}
      {rest.note !== "" && <p className="rest-note">{rest.note}</p>}
      {rest.kind === "oak" && <OakIn rest={rest} />}
      <Checks rest={rest} />
      <BeforeAndAfter rest={rest} />
    </Section>
  );
}
