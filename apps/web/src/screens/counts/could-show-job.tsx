import type { BodyOf, CouldShowAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Choice, Form, TextField } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { EffectFields, effectTyped, TestField, type TestName } from "./effect-fields.tsx";
import { FIRST_GLASSES, GlassFields, glassesTyped } from "./glass-fields.tsx";
import { Told } from "./told.tsx";
import { ends, few, fixed, percent } from "./told-numbers.ts";
import { filled, typedNumber, typedNumbers } from "./typed-number.ts";

type Kind = CouldShowAnswer["of"];

/** Everything that is typed, whatever is asked; what is asked for takes its own. */
const FIRST = {
  test: "triangle" as TestName,
  trials: "12",
  effect: { as: "share", value: "0.5" } as Parameters<typeof effectTyped>[0],
  glasses: FIRST_GLASSES,
  known: "2",
  worths: "1, 0, 0, 0",
  sheets: "8",
};
type Typed = typeof FIRST;

function bodyOf(of: Kind, typed: Typed): BodyOf<"countsCouldShow"> {
  const tested = { test: typed.test, trials: typedNumber(typed.trials), effect: effectTyped(typed.effect) };
  const fields = {
    differ: tested,
    "in-turn": tested,
    match: { ...glassesTyped(typed.glasses), known: typedNumber(typed.known) },
    rank: { logWorth: typedNumbers(typed.worths), sheets: typedNumber(typed.sheets) },
  }[of];
  return filled({ of, ...fields }) as BodyOf<"countsCouldShow">;
}

/** Before a flight: what the chosen numbers could show. */
export default function CouldShowJob() {
  const say = useSay("countsCouldShow");
  const [of, setOf] = useState<Kind>("differ");
  const [typed, setTyped] = useState(FIRST);
  const [answer, setAnswer] = useState<CouldShowAnswer | null>(null);
  const set = (fields: Partial<Typed>): void => setTyped({ ...typed, ...fields });
  return (
    <div className="reckon">
      <Form
        say={say}
        onSend={() => void say.send({ body: bodyOf(of, typed) }).then(setAnswer)}
        className="reckon-in"
        label="The numbers chosen"
      >
        <p>Before a flight is poured: whether so many sheets could show what you hope to find.</p>
        <Choice
          label="Of"
          value={of}
          onChange={(next) => {
            setOf(next);
            setAnswer(null);
            say.clear();
          }}
          options={[
            { value: "differ", label: "a difference test" },
            { value: "in-turn", label: "one at a time" },
            { value: "match", label: "names of glasses" },
            { value: "rank", label: "rankings" },
          ]}
        />
        {(of === "differ" || of === "in-turn") && (
          <>
            <TestField value={typed.test} onChange={(test) => set({ test })} />
            <TextField
              label={of === "differ" ? "Answers there will be" : "Answers after which one gives up"}
              value={typed.trials}
              onChange={(trials) => set({ trials })}
              path={["trials"]}
              input={{ inputMode: "numeric" }}
            />
            <EffectFields
              label="The difference that is there"
              effect={typed.effect}
              onChange={(effect) => set({ effect })}
              path={["effect"]}
            />
          </>
        )}
        {of === "match" && (
          <>
            <GlassFields typed={typed.glasses} onChange={(glasses) => set({ glasses })} />
            <TextField
              label="Glasses of each sheet that are really known"
              value={typed.known}
              onChange={(known) => set({ known })}
              path={["known"]}
              input={{ inputMode: "numeric" }}
            />
          </>
        )}
        {of === "rank" && (
          <>
            <TextField
              label="How much each glass is liked, as natural logs"
              value={typed.worths}
              onChange={(worths) => set({ worths })}
              path={["logWorth"]}
              hint="one number a glass; 1 apart is chosen before the other 73 times in 100"
            />
            <TextField
              label="Rankings there will be"
              value={typed.sheets}
              onChange={(sheets) => set({ sheets })}
              path={["sheets"]}
              input={{ inputMode: "numeric" }}
            />
          </>
        )}
        <Button kind="main" type="submit" busy={say.busy}>
          Say what it could show
        </Button>
      </Form>
      {answer !== null && <Shown answer={answer} />}
    </div>
  );
}

function Shown({ answer }: { readonly answer: CouldShowAnswer }) {
  const { power, powerInterval, falseFinding, critical, needs, expectedTrials, bestFirst, alpha } = answer;
  const rows = [
    { label: "Found if it is there", share: power, low: powerInterval?.[0], high: powerInterval?.[1] },
    ...(falseFinding === null
      ? []
      : [{ label: "Found by luck alone", share: falseFinding, low: undefined, high: undefined }]),
    ...(bestFirst === null
      ? []
      : [{ label: "The best comes out first", share: bestFirst, low: undefined, high: undefined }]),
  ];
  return (
    <Told
      name="could-show"
      answer={answer}
      sentences={[answer.sentence]}
      facts={[
        [
          "Found with",
          `${few(power)}${powerInterval === null ? "" : ` (${ends(powerInterval)}: what drawing leaves open)`}`,
        ],
        [
          "By luck alone",
          falseFinding === null
            ? null
            : `${few(falseFinding)}${falseFinding > alpha ? `, asked for: ${alpha}; Wald's limits keep to it only nearly` : `, at most ${alpha}`}`,
        ],
        ["It takes", critical === null ? null : `${critical} right`],
        ["Needed", needs === null ? null : `${needs.smallest}, from ${needs.stable} on for every number`],
        [
          "On average",
          expectedTrials === null
            ? null
            : `${fixed(expectedTrials.withEffect, 1)} answers with the difference, ${fixed(expectedTrials.byLuck, 1)} by luck`,
        ],
        ["Best is first", bestFirst === null ? null : few(bestFirst)],
        ["Method", answer.method],
      ]}
    >
      <Figure
        title={`What is there would be found in ${Math.round(100 * power)} of 100 such flights`}
        name="could-show"
        note={`Per cent of cases${powerInterval === null ? "" : "; line: what drawing leaves open"}. Ring: what luck alone gives.`}
        draw={(width) =>
          drawIntervals(
            rows.map(({ label, share, low, high }) => ({
              label,
              value: 100 * share,
              low: 100 * (low ?? share),
              high: 100 * (high ?? share),
              said: percent(share),
              ring: label === "Found by luck alone",
            })),
            width,
            [0, 100],
          )
        }
        table={{
          heads: ["", "Chance", "From", "To"],
          rows: rows.map(({ label, share, low, high }) => [
            label,
            few(share),
            low === undefined || low === null ? "" : few(low),
            high === undefined || high === null ? "" : few(high),
          ]),
        }}
      />
    </Told>
  );
}
