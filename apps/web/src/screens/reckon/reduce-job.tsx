import {
  printMeasured,
  readCelsius,
  readGrams,
  readNumber,
  readStrengthOf,
  readVolumeOf,
  type ReduceAsk,
  type Reduced,
  reckonReduce,
  reckonSteps,
  type Typed as ReadText,
} from "../../bench/index.ts";
import { countDays, mlDigits, printAbv, printG, printMl } from "../../figures/index.ts";
import { Choice, LiquidColumn, NumberHero, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField, WarmthField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";
import type { Fields } from "./typed.ts";

const TITLE = "What to add";
const GOALS = {
  have: "all I have",
  volume: "a final volume",
  mass: "a final weight",
  fill: "fill the vessel",
} as const;
type Goal = keyof typeof GOALS;

/** Which fields this problem asks for. */
function shape(fields: Fields) {
  const both = fields.reduceAdd === "both";
  const typed = Object.hasOwn(GOALS, fields.reduceGoal) ? (fields.reduceGoal as Goal) : "have";
  const goal: Goal = both && typed === "have" ? "fill" : typed;
  return {
    both,
    goal,
    other: fields.reduceAdd !== "water",
    have: both || goal === "have" || goal === "fill",
    to: both || goal !== "fill",
    days: !both && goal !== "fill",
  };
}

/** Down to a strength, or up: with water, another liquid or both. */
export default function ReduceJob({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const asks = shape(fields);
  const skip: ReadText = { ok: true, value: 1 };
  const read = {
    from: readStrengthOf(fields.reduceFrom),
    to: asks.to ? readStrengthOf(fields.reduceTo) : skip,
    other: asks.other ? readStrengthOf(fields.reduceOther) : skip,
    have: asks.have ? readVolumeOf(fields.reduceHave) : skip,
    end:
      asks.goal === "volume"
        ? readVolumeOf(fields.reduceEnd)
        : asks.goal === "mass"
          ? readGrams(fields.reduceMass)
          : asks.goal === "fill"
            ? readVolumeOf(fields.reduceVessel)
            : skip,
    days: asks.days ? readNumber(fields.reduceDays, { name: "days", unit: "days", low: 1, high: 60 }) : skip,
    celsius: readCelsius(fields.warmth),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <ReadField
          label="Strength now"
          value={fields.reduceFrom}
          onChange={(reduceFrom) => set({ reduceFrom })}
          read={read.from}
          hint="62.4% or 124.8 proof"
        />
        {asks.to && (
          <ReadField
            label="Strength wanted"
            value={fields.reduceTo}
            onChange={(reduceTo) => set({ reduceTo })}
            read={read.to}
          />
        )}
        <Choice
          label="Add"
          value={fields.reduceAdd}
          onChange={(reduceAdd) => set({ reduceAdd })}
          options={[
            { value: "water", label: "water" },
            { value: "other", label: "another liquid" },
            { value: "both", label: "both" },
          ]}
        />
        {asks.other && (
          <ReadField
            label="Strength of the other"
            value={fields.reduceOther}
            onChange={(reduceOther) => set({ reduceOther })}
            read={read.other}
          />
        )}
        <Choice
          label="How much"
          value={asks.goal}
          onChange={(reduceGoal) => set({ reduceGoal })}
          options={(Object.keys(GOALS) as Goal[])
            .filter((goal) => !(asks.both && goal === "have"))
            .map((goal) => ({ value: goal, label: GOALS[goal] }))}
        />
        {asks.have && (
          <ReadField
            label="You have"
            value={fields.reduceHave}
            onChange={(reduceHave) => set({ reduceHave })}
            read={read.have}
            hint="700 mL, 70 cl or 2 oz"
          />
        )}
        {asks.goal === "volume" && (
          <ReadField
            label="Volume at the end"
            value={fields.reduceEnd}
            onChange={(reduceEnd) => set({ reduceEnd })}
            read={read.end}
          />
        )}
        {asks.goal === "mass" && (
          <ReadField
            label="Weight at the end"
            value={fields.reduceMass}
            onChange={(reduceMass) => set({ reduceMass })}
            read={read.end}
          />
        )}
        {asks.goal === "fill" && (
          <ReadField
            label="The vessel holds"
            value={fields.reduceVessel}
            onChange={(reduceVessel) => set({ reduceVessel })}
            read={read.end}
          />
        )}
        {asks.days && (
          <ReadField
            label="Over how many days"
            value={fields.reduceDays}
            onChange={(reduceDays) => set({ reduceDays })}
            read={read.days}
            hint="1 for all at once; slowly is common practice and said to be gentler on the taste"
          />
        )}
        {asks.days && read.days.ok && read.days.value > 1 && (
          <Choice
            label="Each day"
            value={fields.reduceBy}
            onChange={(reduceBy) => set({ reduceBy })}
            options={[
              { value: "volume", label: "the same amount" },
              { value: "strength", label: "the same fall in strength" },
            ]}
          />
        )}
        <WarmthField value={fields.warmth} onChange={(warmth) => set({ warmth })} read={read.celsius} />
      </div>
      <Outcome read={all(read)} fields={fields} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: Readonly<
    Record<"from" | "to" | "other" | "have" | "end" | "days" | "celsius", number>
  > | null;
  readonly fields: Fields;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, fields, tools }: OutcomeProps) {
  if (read === null)
    return <Waiting title={TITLE}>Waiting for strengths and amounts that can be read.</Waiting>;
  const asks = shape(fields);
  const { from, to, have, end, celsius } = read;
  const ask: ReduceAsk = {
    from,
    to,
    add: asks.both ? [read.other, 0] : [asks.other ? read.other : 0],
    goal:
      asks.goal === "have"
        ? { kind: "have" }
        : asks.goal === "mass"
          ? { kind: "mass", g: end }
          : { kind: asks.goal, ml: end },
    haveMl: have,
    celsius,
    tools,
  };
  const done = reckonReduce(ask);
  if (!done.ok) return <NoAnswer title={TITLE} no={done} />;
  const name = (at: number): string => (done.added[at]?.abv20 === 0 ? "water" : "the other liquid");
  const [first] = done.added;
  const ends = done.strength;
  const amounts = [done.start, ...done.added];
  const days = Math.round(read.days);
  return (
    <Section title={TITLE} className="reckon-out">
      <Said>
        <NumberHero
          size="hero"
          label={asks.have ? `Into ${printMl(done.start.ml)}` : `Into ${printMeasured(done.start)} of it`}
          value={mlDigits(first?.ml ?? 0)}
          unit={`mL of ${name(0)}`}
          note={`${printG(first?.g ?? 0)} by weight`}
        />
        {done.added[1] !== undefined && (
          <NumberHero
            label="and"
            value={mlDigits(done.added[1].ml)}
            unit={`mL of ${name(1)}`}
            note={`${printG(done.added[1].g)} by weight`}
          />
        )}
      </Said>
      <div className="numbers">
        <Figure label="Ends at" told={ends} unit="% vol" note="measured with what you have" />
        <NumberHero
          label="Comes to"
          value={mlDigits(done.after.volumeMl)}
          unit="mL"
          note={
            Math.abs(celsius - 20) < 0.5
              ? printG(done.after.massG)
              : `${printMl(done.afterReadMl)} as read at ${celsius.toFixed(0)} °C`
          }
        />
        <NumberHero
          label={done.contractionMl >= 0 ? "Shrinks by" : "Swells by"}
          value={Math.abs(done.contractionMl).toFixed(1)}
          unit="mL"
        />
      </div>
      <Blame told={ends} />
      <LiquidColumn
        title={`${printMl(done.start.ml)} of the start, ${done.added.map((one, i) => `${printMl(one.ml)} of ${name(i)}`).join(", ")}`}
        segments={[
          ...done.added
            .map((one) => ({
              amount: one.ml,
              amountText: printMl(one.ml),
              label: one.abv20 === 0 ? "water" : `at ${printAbv(one.abv20)}`,
              water: one.abv20 === 0,
            }))
            .toReversed(),
          {
            amount: done.start.ml,
            amountText: printMl(done.start.ml),
            label: `at ${printAbv(from)}`,
          },
        ]}
      />
      {done.naiveMl !== null && first !== undefined && (
        <p className="reckon-average">
          Reckoned in the head it would be {printMl(done.naiveMl)}
          {first.ml20 - done.naiveMl >= 0.05
            ? `, ${(first.ml20 - done.naiveMl).toFixed(1)} mL too little.`
            : "."}
        </p>
      )}
      {asks.days && days > 1 && <Days ask={ask} days={days} by={fields.reduceBy} what={name(0)} />}
      <SendOn
        carried={carriedOf(amounts, done, to)}
        text={`Reduced at the bench: ${amounts.map((one) => `${printMl(one.ml)} at ${printAbv(one.abv20)}`).join(" + ")} = ${ends.value} % vol, give or take ${ends.by}.`}
      />
    </Section>
  );
}

/** Water is not a part: it is what the parts are brought down with. */
function carriedOf(amounts: readonly Reduced["start"][], done: Reduced, to: number) {
  const parts = amounts
    .filter((one) => one.abv20 > 0 && one.ml20 > 0)
    .map((one) => ({ parts: one.ml20, abv20: one.abv20 }));
  const watered = amounts.some((one) => one.abv20 === 0 && one.ml20 > 0);
  return { parts, waterTo: watered ? (done.after.abv20 ?? to) : null, finalMl: done.after.volumeMl };
}

interface DaysProps {
  readonly ask: ReduceAsk;
  readonly days: number;
  readonly by: string;
  readonly what: string;
}

function Days({ ask, days, by, what }: DaysProps) {
  const done = reckonSteps({ ...ask, days, by: by === "strength" ? "strength" : "volume" });
  if (!done.ok) return null;
  return (
    <div className="steps">
      <h3>Over {countDays(days)}</h3>
      <ol>
        {done.steps.map((step, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- a day is its number
          <li key={i}>
            <span className="steps-day">Day {i + 1}</span>
            <span>
              <b>{mlDigits(step.addMl)}</b> mL of {what}, {printG(step.addG)}
            </span>
            <span className="soft">{printAbv(step.after.abv20 ?? 0)}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}
