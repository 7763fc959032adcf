import type { Taster } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import {
  Broken,
  Busy,
  Button,
  Choice,
  Empty,
  Form,
  LinkButton,
  Page,
  Section,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import { go, usePlace } from "../../router/index.ts";
import { keepToken, useHousehold } from "../../session/index.ts";
import { AlcoholNote } from "./alcohol-note.tsx";
import { countGlasses } from "./flight-state.ts";
import { GlassesAbove } from "./glasses-above.tsx";
import { GlassesField } from "./glasses-field.tsx";
import { NamesField } from "./names-field.tsx";
import { QuestionField } from "./question-field.tsx";
import { QuestionNeeds } from "./question-needs.tsx";
import { RowField } from "./row-field.tsx";
import { SeatsField } from "./seats-field.tsx";
import { SetsField } from "./sets-field.tsx";
import { TargetReserve } from "./target-reserve.tsx";
import { flightPath, flightsPath } from "./paths.ts";
import {
  draftOf,
  glassesEach,
  glassesOf,
  inSets,
  mayBeAlone,
  mostGlasses,
  namesOffered,
  newPlan,
  type Plan,
  plannedAlcoholG,
  withinSets,
} from "./plan.ts";
import { proposedPlan } from "./proposed-plan.ts";
import { planIssues, stillIssues } from "./plan-issues.ts";
import { carriedBy, withCarried } from "./with-carried.ts";
import { TastersField } from "./tasters-field.tsx";
import type { Cupboard } from "./cupboard.ts";
import { useCupboard } from "./use-cupboard.ts";
import "./new-flight.css";
import "./question.css";

/** Sets a flight: what is poured, who tastes, who pours, and how much alcohol that is. */
export default function NewFlight() {
  const household = useHousehold().id;
  const cupboard = useCupboard();
  const tasters = useAskAll("listTasters", { at: { household } });
  const { query } = usePlace();
  const broken = [cupboard, tasters].find((asked) => asked.state === "broken");
  return (
    <Page
      title="Set a flight"
      back={{ to: flightsPath(household), label: "Flights" }}
      lead="You choose what is poured. The house draws the numbers on the glasses and the order, and shows the key to nobody who tastes."
      wide
    >
      {broken !== undefined && <Broken asked={broken} title="The shelf could not be fetched" />}
      {broken === undefined && (cupboard.state !== "here" || tasters.state !== "here") && (
        <Busy what="the shelf" />
      )}
      {cupboard.state === "here" &&
        tasters.state === "here" &&
        (cupboard.answer.pourables.length === 0 ? (
          <Empty
            title="Nothing on the shelf can be poured"
            action={
              <LinkButton kind="main" to={`/h/${household}/shelf`}>
                Go to the shelf
              </LinkButton>
            }
          >
            <p>A flight needs at least two glasses, from bottles or batches with something in them.</p>
          </Empty>
        ) : (
          <SetUp
            // What is shown at once may be from before a vial that the address names: begun anew where it comes in.
            key={carriedBy(query, cupboard.answer).length}
            cupboard={cupboard.answer}
            tasters={tasters.answer}
            household={household}
          />
        ))}
    </Page>
  );
}

interface SetUpProps {
  readonly cupboard: Cupboard;
  readonly tasters: readonly Taster[];
  readonly household: string;
}

function SetUp({ cupboard, tasters, household }: SetUpProps) {
  const { query } = usePlace();
  const [plan, setPlan] = useState<Plan>(() =>
    withCarried(proposedPlan(newPlan(printDay(new Date().toISOString())), query, cupboard), query, cupboard),
  );
  const say = useSay("addFlight");
  const count = glassesOf(plan);
  const offered = namesOffered(plan, cupboard.pourables);
  const send = async (): Promise<void> => {
    const missing = planIssues(plan);
    if (missing.length > 0) {
      say.refuse(missing);
      return;
    }
    const made = await say.send({ at: { household }, body: draftOf(plan, offered) });
    if (made === null) return;
    keepToken("host", made.flight.id, made.hostToken);
    if (made.pourerToken !== null) keepToken("pourer", made.flight.id, made.pourerToken);
    go(flightPath(household, made.flight.id), { replace: true });
    scrollTo(0, 0);
  };
  return (
    <Form
      say={{ issues: stillIssues(plan, say.issues), tries: say.tries }}
      onSend={() => void send()}
      className="plan"
    >
      <div className="plan-main">
        <Section title="What do you want to know?">
          <QuestionField plan={plan} onChange={setPlan} />
          {inSets(plan) && <SetsField plan={plan} onChange={setPlan} cupboard={cupboard} />}
        </Section>
        <Section title="The glasses" action={count > 0 && <GlassesAbove count={count} poured />}>
          <p className="plan-count" aria-live="polite">
            {count < 2
              ? inSets(plan)
                ? "Choose the two."
                : "Choose at least two glasses."
              : `${countGlasses(glassesEach(plan))} for each taster.`}
          </p>
          <GlassesField plan={plan} onChange={setPlan} cupboard={cupboard} />
          {count >= 2 && mostGlasses(plan).each > 1 && plan.pouring !== "alone" && (
            <RowField plan={plan} onChange={setPlan} cupboard={cupboard} />
          )}
          <div className="field">
            <span className="field-label">Into each glass, in mL</span>
            <Stepper
              label="Millilitres into each glass"
              value={plan.pourMl}
              min={1}
              max={60}
              path={["pourMl"]}
              onChange={(pourMl) => setPlan({ ...plan, pourMl })}
            />
            <p className="field-hint">Common practice: 10 to 20 mL, enough to smell and taste twice.</p>
          </div>
        </Section>
        {count > 0 && mostGlasses(plan).each > 1 && (
          <Section title={plan.question === "which_is_which" ? "The names to guess from" : "The target"}>
            <NamesField plan={plan} onChange={setPlan} cupboard={cupboard} />
            <TargetReserve plan={plan} cupboard={cupboard} />
          </Section>
        )}
        <Section title="At the table">
          <TextField
            label="Name of the flight"
            path={["name"]}
            value={plan.name}
            onChange={(name) => setPlan({ ...plan, name })}
          />
          {!mayBeAlone(plan) ? (
            <p>Somebody who does not taste pours: two rounds cannot be mixed up alone.</p>
          ) : (
            <Choice
              label="Who pours"
              path={["pouring"]}
              value={plan.pouring}
              onChange={(pouring) =>
                setPlan(
                  withinSets({
                    ...plan,
                    pouring,
                    tasterIds: pouring === "alone" ? plan.tasterIds.slice(0, 1) : plan.tasterIds,
                  }),
                )
              }
              options={[
                { value: "someone else", label: "Somebody who does not taste" },
                { value: "alone", label: "I am alone" },
              ]}
              hint={
                plan.pouring === "alone"
                  ? "You mark the undersides, pour, and mix the glasses up. You look underneath only after your sheet is locked."
                  : "The pourer gets a page of their own that tells what goes in which glass. Nobody else may see it."
              }
            />
          )}
          {plan.pouring === "someone else" && (
            <TextField
              label="The pourer’s name"
              path={["pourer"]}
              value={plan.pourer}
              onChange={(pourer) => setPlan({ ...plan, pourer })}
              hint="None of the tasters."
              input={{ maxLength: 120 }}
            />
          )}
          <TastersField plan={plan} onChange={setPlan} tasters={tasters} />
          {plan.pouring === "someone else" && <SeatsField plan={plan} onChange={setPlan} />}
        </Section>
      </div>
      <div className="plan-side">
        <Section title="Can it be answered?">
          <QuestionNeeds plan={plan} onChange={setPlan} cupboard={cupboard} />
        </Section>
        {count > 0 && (
          <Section title="How much alcohol that is">
            <AlcoholNote
              grams={plannedAlcoholG(plan, cupboard)}
              pourMl={plan.pourMl}
              glasses={glassesEach(plan)}
              planning
            />
          </Section>
        )}
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Set the flight
          </Button>
          <LinkButton to={flightsPath(household)}>Leave it</LinkButton>
        </div>
      </div>
    </Form>
  );
}
