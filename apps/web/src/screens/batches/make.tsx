import { parseVolume } from "@partsproof/core/quantity";
import type { AnswerOf } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useAskAll } from "../../api.ts";
import { mlDigits, printMl, printMoney } from "../../figures/index.ts";
import {
  Broken,
  Busy,
  Empty,
  LinkButton,
  NumberHero,
  Page,
  Section,
  SelectField,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import { usePlace } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { useSettled } from "./use-settled.ts";
import "./make.css";

/** A recipe fitted to vessels: how much of it, what runs out first, what stays on the shelf, what it costs. Nothing is moved. */
export default function Make() {
  const household = useHousehold();
  const at = { household: household.id };
  const { query } = usePlace();
  const recipes = useAskAll("listRecipes", { at });
  const [chosen, setChosen] = useState(query.get("recipe") ?? "");
  const [vessel, setVessel] = useState("700 mL");
  const [head, setHead] = useState("10 mL");
  const [pour, setPour] = useState("30 mL");
  const [count, setCount] = useState(1);
  const recipeId = chosen === "" ? (recipes.answer?.[0]?.id ?? "") : chosen;
  const read = { vessel: parseVolume(vessel), head: parseVolume(head), pour: parseVolume(pour) };
  const settled = useSettled(JSON.stringify([vessel, head, pour]), 300);
  const ready = settled === JSON.stringify([vessel, head, pour]);
  const made = useAsk(
    "makeBatch",
    recipeId !== "" && ready && read.vessel.ok && read.head.ok && read.pour.ok
      ? {
          at,
          body: {
            recipeId,
            vesselMl: read.vessel.value,
            headMl: read.head.value,
            pourMl: read.pour.value,
            vessels: count,
          },
        }
      : null,
  );
  const wrong = (one: (typeof read)["vessel"]): string | null => (one.ok ? null : one.issue.message);
  return (
    <Page
      title="How much to make"
      wide
      back={{ to: `/h/${household.id}/batches`, label: "Batches" }}
      lead="A recipe fitted to your vessels and to what is on the shelf. Nothing is poured yet."
    >
      {recipes.state === "busy" && <Busy what="the recipes" />}
      {recipes.state === "broken" && <Broken asked={recipes} title="The recipes could not be fetched" />}
      {recipes.state === "here" && recipes.answer.length === 0 && (
        <Empty
          title="No recipe to make"
          action={
            <LinkButton kind="main" to={`/h/${household.id}/recipes/new`}>
              Write a recipe
            </LinkButton>
          }
        />
      )}
      {recipes.state === "here" && recipes.answer.length > 0 && (
        <div className="make">
          <div className="form">
            <SelectField
              label="Recipe"
              value={recipeId}
              onChange={setChosen}
              options={recipes.answer.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            />
            <TextField
              label="A vessel holds, to the brim"
              value={vessel}
              onChange={setVessel}
              hint="Bottle, decanter, jar: 700 mL, 1.5 l"
              wrong={wrong(read.vessel)}
            />
            <TextField
              label="Left empty in each"
              value={head}
              onChange={setHead}
              hint="Head-space: spirit grows with warmth"
              wrong={wrong(read.head)}
            />
            <Stepper label="How many vessels" showLabel value={count} min={1} max={24} onChange={setCount} />
            <TextField
              label="A pour is"
              value={pour}
              onChange={setPour}
              hint="For the cost of one"
              wrong={wrong(read.pour)}
            />
          </div>
          <div className="form">
            {made.state === "busy" && <Busy what="the sum" />}
            {made.state === "broken" && <Broken asked={made} title="This cannot be reckoned" />}
            {made.state === "here" && (
              <Fitted made={made.answer} household={household.id} currency={household.currency} />
            )}
          </div>
        </div>
      )}
    </Page>
  );
}

interface FittedProps {
  readonly made: AnswerOf<"makeBatch">;
  readonly household: string;
  readonly currency: string;
}

/** Less than this left in a bottle is none. */
const EMPTY_ML = 0.1;

function Fitted({ made, household, currency }: FittedProps) {
  const { finalMl, limitedBy, limits, left, plan, perVesselMinor, perPourMinor, pourMl, roomMl } = made;
  if (plan === null) {
    const none = limits.filter(({ freeMl }) => !(freeMl > 0)).map(({ label }) => label);
    return <p className="field-issue">The shelf has none of {none.join(" and ")}.</p>;
  }
  const most = Math.max(roomMl, ...limits.map(({ allowsMl }) => allowsMl));
  const query = `recipe=${plan.recipeId}&ml=${Number(finalMl.toFixed(1))}`;
  return (
    <>
      <div className="numbers">
        <NumberHero
          size="hero"
          label="So much can be made"
          value={mlDigits(finalMl)}
          unit="mL"
          note={limitedBy === null ? "all the vessels full" : `then ${limitedBy} is used up`}
        />
        {perVesselMinor !== null && (
          <NumberHero
            label="A vessel of it"
            value={printMoney(Math.round(perVesselMinor), currency)}
            unit=""
          />
        )}
        {perPourMinor !== null && (
          <NumberHero
            label={`${printMl(pourMl)} of it`}
            value={printMoney(Math.round(perPourMinor), currency)}
            unit=""
          />
        )}
      </div>
      {perPourMinor === null && <p className="soft small">No cost: a whiskey in it has no price.</p>}
      <div className="form-actions">
        <LinkButton kind="main" to={`/h/${household}/batches/new?${query}`}>
          Measure it out
        </LinkButton>
        <LinkButton to={`/h/${household}/batches/weigh?${query}`}>Pour by weight</LinkButton>
      </div>
      <Section title="What each whiskey allows">
        <ul className="make-limits">
          {[...limits, { label: "the vessels", allowsMl: roomMl, freeMl: null }]
            .toSorted((a, b) => a.allowsMl - b.allowsMl)
            .map(({ label, allowsMl, freeMl }) => (
              <li key={label}>
                <span>
                  {label}
                  {freeMl !== null && <span className="soft small"> {printMl(freeMl)} free</span>}
                </span>
                <span className="make-bar" aria-hidden="true">
                  <span style={{ width: `${(100 * allowsMl) / most}%` }} />
                </span>
                <b>{printMl(allowsMl)}</b>
              </li>
            ))}
        </ul>
      </Section>
      <Section title="What stays on the shelf">
        <ul className="make-left">
          {left.map(({ vesselId, label, takenMl, leftMl }) => (
            <li key={vesselId}>
              {label}: {printMl(takenMl)} taken,{" "}
              {leftMl < EMPTY_ML ? <b>the whole bottle is used up</b> : `${printMl(leftMl)} left`}
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}
