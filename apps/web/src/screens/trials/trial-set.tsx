import type { TrialSet } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { listed, printDay } from "../../figures/index.ts";
import {
  announce,
  Broken,
  Busy,
  Button,
  Dialog,
  IssueSummary,
  LinkButton,
  Page,
  Section,
} from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { newFlightPath } from "../flights/paths.ts";
import { DrawList } from "./draw-list.tsx";
import type { ScreenProps } from "../screen.ts";
import { ForFlight, plannedAddress } from "./for-flight.tsx";
import { TrialGlasses } from "./trial-glasses.tsx";
import "./trials.css";

/** One set of bench trials: pour it, set it as a flight, and how each did. */
export default function TrialSetPage({ params }: ScreenProps) {
  const household = useHousehold().id;
  const asked = useAsk("getTrialSet", { at: { household, trials: params["trials"] ?? "" } });
  const back = { to: `/h/${household}/trials`, label: "Bench trials" };
  if (asked.state !== "here")
    return (
      <Page title="Bench trials" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the trials" />
        ) : (
          <Broken asked={asked} title="These trials could not be fetched" />
        )}
      </Page>
    );
  return <Shown set={asked.answer} household={household} back={back} again={asked.again} />;
}

interface ShownProps {
  readonly set: TrialSet;
  readonly household: string;
  readonly back: { readonly to: string; readonly label: string };
  readonly again: () => void;
}

/** A flight takes so many glasses at once. */
const MOST_GLASSES = 10;

function Shown({ set, household, back, again }: ShownProps) {
  const at = { household, trials: set.id };
  const { plan, made } = set;
  const pour = useSay("pourTrials");
  const undo = useSay("undoTrials");
  const remove = useSay("removeTrialSet");
  const [removing, setRemoving] = useState(false);
  const vials = new Map(made.map((one) => [one.trial, one]));
  const left = plan.trials.length - made.length;
  const short = set.bottles.some(({ shortMl }) => shortMl > 0);
  const { flight } = set;
  const full = made.filter(({ leftMl }) => leftMl >= 1).slice(0, MOST_GLASSES);
  const pourAll = async (): Promise<void> => {
    if ((await pour.send({ at, body: { version: set.version } })) === null) return;
    announce("Poured: each trial stands in a vial of its own");
    again();
  };
  const takeBack = async (): Promise<void> => {
    if ((await undo.send({ at })) === null) return;
    announce("The pouring is undone");
    again();
  };
  const take = async (): Promise<void> => {
    if ((await remove.send({ at, query: { version: set.version } })) === null) return;
    go(`/h/${household}/trials`, { replace: true });
  };
  return (
    <Page
      title={set.name}
      wide
      back={back}
      lead={`${plan.trials.length} ${plan.trials.length === 1 ? "mix" : "mixes"} of ${listed(plan.parts)}, planned ${printDay(set.createdAt)}`}
      actions={
        flight !== null
          ? left === 0 && (
              <LinkButton kind="main" to={plannedAddress(household, set.name, flight)}>
                Set this flight
              </LinkButton>
            )
          : full.length >= 2 && (
              <LinkButton
                kind="main"
                to={`${newFlightPath(household)}?glasses=${full.map(({ vesselId }) => vesselId).join(",")}&question=like_best&name=${encodeURIComponent(set.name)}`}
              >
                Set a flight of them
              </LinkButton>
            )
      }
    >
      <IssueSummary say={pour} />
      <IssueSummary say={undo} />
      <IssueSummary say={remove} />
      {left > 0 && (
        <Section title="Pour, bottle by bottle">
          <DrawList plan={plan} bottles={set.bottles} />
          <p className="soft">
            One bottle after the other, into all its trials: so the{" "}
            {plan.trials[0]?.g === null ? "syringe" : "glass you pour from"} is rinsed once a bottle.
          </p>
          <div className="form-actions">
            <Button kind="main" busy={pour.busy} disabled={short} onClick={() => void pourAll()}>
              {made.length === 0 ? "They are poured" : `The other ${left} are poured`}
            </Button>
            <p className="soft small">This takes them off the shelf. It can be undone until one is tasted.</p>
          </div>
        </Section>
      )}
      {flight !== null && <ForFlight flight={flight} left={left} bottles={set.bottles} />}
      <Section title={left === 0 ? "In their vials" : "The mixes"}>
        <TrialGlasses
          plan={plan}
          poured={new Set(made.map(({ trial }) => trial))}
          vials={vials}
          household={household}
        />
        {plan.notes.map((note) => (
          <p key={note} className="soft">
            {note}
          </p>
        ))}
      </Section>
      <div className="form-actions">
        {made.length > 0 ? (
          <Button busy={undo.busy} onClick={() => void takeBack()}>
            Undo the pouring
          </Button>
        ) : (
          <Button onClick={() => setRemoving(true)}>Remove this set</Button>
        )}
      </div>
      <Dialog alert open={removing} title={`Remove ${set.name}?`} onClose={() => setRemoving(false)}>
        <p>Nothing of it was poured; only the plan goes.</p>
        <div className="form-actions">
          <Button kind="main" busy={remove.busy} onClick={() => void take()}>
            Remove it
          </Button>
          <Button onClick={() => setRemoving(false)}>Keep it</Button>
        </div>
      </Dialog>
    </Page>
  );
}
