import type { BodyOf, DifferAnswer, InTurnAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Choice, Form, TextField } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { EffectFields, effectTyped, TestField, type TestName, type TypedEffect } from "./effect-fields.tsx";
import { Told } from "./told.tsx";
import { ends, few, fixed, hundredths, percent } from "./told-numbers.ts";
import { filled, typedNumber } from "./typed-number.ts";

/** Right answers of a difference test, all together or one at a time. */
export default function DifferJob() {
  const [test, setTest] = useState<TestName>("triangle");
  const [inTurn, setInTurn] = useState(false);
  return (
    <>
      <Choice
        label="The answers are"
        value={inTurn ? "turn" : "all"}
        onChange={(way) => setInTurn(way === "turn")}
        options={[
          { value: "all", label: "counted at the end" },
          { value: "turn", label: "looked at one at a time" },
        ]}
      />
      {inTurn ? <InTurn test={test} onTest={setTest} /> : <Together test={test} onTest={setTest} />}
    </>
  );
}

interface Props {
  readonly test: TestName;
  readonly onTest: (test: TestName) => void;
}

function Together({ test, onTest }: Props) {
  const say = useSay("countsDiffer");
  const [right, setRight] = useState("10");
  const [of, setOf] = useState("15");
  const [sides, setSides] = useState<"1" | "2">("1");
  const [matters, setMatters] = useState<TypedEffect>({ as: "share", value: "" });
  const [answer, setAnswer] = useState<DifferAnswer | null>(null);
  const body = filled({
    test,
    right: typedNumber(right),
    of: typedNumber(of),
    sides: test === "two_afc" && sides === "2" ? 2 : undefined,
    matters: effectTyped(matters),
  }) as BodyOf<"countsDiffer">;
  return (
    <div className="reckon">
      <Form
        say={say}
        onSend={() => void say.send({ body }).then(setAnswer)}
        className="reckon-in"
        label="Right answers"
      >
        <TestField value={test} onChange={onTest} />
        <TextField
          label="Right"
          value={right}
          onChange={setRight}
          path={["right"]}
          input={{ inputMode: "numeric" }}
        />
        <TextField label="Of" value={of} onChange={setOf} path={["of"]} input={{ inputMode: "numeric" }} />
        {test === "two_afc" && (
          <Choice
            label="Was it said beforehand which has more?"
            value={sides}
            onChange={setSides}
            path={["sides"]}
            options={[
              { value: "1", label: "yes" },
              { value: "2", label: "no: either may" },
            ]}
          />
        )}
        <EffectFields
          label="Is it smaller than a difference that would matter?"
          effect={matters}
          onChange={setMatters}
          path={["matters"]}
          optional
        />
        <Button kind="main" type="submit" busy={say.busy}>
          Say what it shows
        </Button>
      </Form>
      {answer !== null && <Differs answer={answer} />}
    </div>
  );
}

function Differs({ answer }: { readonly answer: DifferAnswer }) {
  const { p, critical5, right, of, dPrime, dPrimeReason, level, share, shareInterval, likeness } = answer;
  return (
    <Told
      name="differ"
      answer={answer}
      sentences={[answer.sentence, ...(likeness === null ? [] : [likeness.sentence])]}
      facts={[
        ["By luck", p === 0 ? "p below 1e-300" : `p = ${few(p, 4)}`],
        ["At 5 %", critical5 === null ? "not even all right" : `${critical5} of ${of}`],
        ["d′", dPrime === null ? (dPrimeReason?.message ?? null) : fixed(dPrime)],
        ["d′, exact", `${ends(answer.dPrimeExact)}: covers it in at least ${percent(level)} of such cases`],
        ["d′, by likelihood", `${ends(answer.dPrimeInterval)}: in about ${percent(level)}, at worst fewer`],
        ["Likeness", likeness === null ? null : `p = ${few(likeness.p, 4)}`],
        ["Method", answer.method],
      ]}
    >
      <Figure
        title={`${hundredths(share)} can tell, the rest guessing: anything from ${ends(shareInterval, hundredths)} fits`}
        name="differ-share"
        note={`Share that can tell; ${right} of ${of} right. Dot: most likely; line: ${percent(level)}, exact.`}
        draw={(width) =>
          drawIntervals(
            [
              {
                label: "Can tell, %",
                value: share * 100,
                low: (shareInterval[0] ?? 0) * 100,
                high: (shareInterval[1] ?? 1) * 100,
                said: percent(share),
              },
            ],
            width,
            [0, 100],
          )
        }
        table={{
          heads: ["", "Right", "Of", "Can tell", percent(level)],
          rows: [["All", String(right), String(of), percent(share), ends(shareInterval, percent)]],
        }}
      />
    </Told>
  );
}

/** R and W, or 1 and 0, or + and −, as on the command line; text that is none of it is sent as it is, to be refused. */
function typedResults(text: string): boolean[] {
  const marks = text.replaceAll(/[\s,]/g, "").replaceAll("−", "-").toUpperCase();
  return /^(?:[RW]+|[10]+|[+-]+)$/.test(marks)
    ? Array.from(marks, (mark) => mark === "R" || mark === "1" || mark === "+")
    : (text as unknown as boolean[]);
}

function InTurn({ test, onTest }: Props) {
  const say = useSay("countsInTurn");
  const [results, setResults] = useState("RRWRRRRR");
  const [effect, setEffect] = useState<TypedEffect>({ as: "share", value: "" });
  const [answer, setAnswer] = useState<InTurnAnswer | null>(null);
  const body = filled({
    test,
    results: typedResults(results),
    effect: effectTyped(effect),
  }) as BodyOf<"countsInTurn">;
  return (
    <div className="reckon">
      <Form
        say={say}
        onSend={() => void say.send({ body }).then(setAnswer)}
        className="reckon-in"
        label="Answers in their order"
      >
        <TestField value={test} onChange={onTest} />
        <TextField
          label="The answers in their order"
          value={results}
          onChange={setResults}
          path={["results"]}
          hint="R for right, W for wrong, such as RRWR; or 1 and 0"
          input={{ autoCapitalize: "characters", spellCheck: false }}
        />
        <EffectFields
          label="The difference to be found"
          effect={effect}
          onChange={setEffect}
          path={["effect"]}
          optional
        />
        <Button kind="main" type="submit" busy={say.busy}>
          Say what it shows
        </Button>
      </Form>
      {answer !== null && <Turned answer={answer} />}
    </div>
  );
}

function Turned({ answer }: { readonly answer: InTurnAnswer }) {
  const { anytimeP, foundAt, wald, level, chance, chanceInterval, right, of } = answer;
  const [low, high] = [chanceInterval[0] ?? 0, chanceInterval[1] ?? 1];
  return (
    <Told
      name="differ-in-turn"
      answer={answer}
      sentences={[answer.sentence]}
      facts={[
        [
          "At any moment",
          `p = ${few(anytimeP, 4)}${foundAt === null ? "" : `, below ${wald.alpha} from answer ${foundAt} on`}`,
        ],
        ["d′", ends(answer.dPrimeInterval)],
        ["Wald's lines", `after ${of}: ${wald.upper} right or more, ${wald.lower} or fewer`],
        ["Method", answer.method],
      ]}
    >
      <Figure
        title={`The chance of a right answer lies from ${hundredths(low)} to ${hundredths(high)}; by luck it is ${hundredths(chance)}`}
        name="differ-in-turn"
        note={`${right} of ${of} right. Dot: as counted; line: ${percent(level)} at all moments together; second row: luck.`}
        draw={(width) =>
          drawIntervals(
            [
              {
                label: "Right, %",
                value: (100 * right) / of,
                low: 100 * low,
                high: 100 * high,
                said: percent(right / of),
              },
              {
                label: "By luck, %",
                value: 100 * chance,
                low: 100 * chance,
                high: 100 * chance,
                said: percent(chance),
                ring: true,
              },
            ],
            width,
            [0, 100],
          )
        }
        table={{
          heads: ["", "Right", "Of", "Chance", percent(level)],
          rows: [
            ["Counted", String(right), String(of), percent(right / of), ends(chanceInterval, percent)],
            ["By luck", "", "", percent(chance), ""],
          ],
        }}
      />
    </Told>
  );
}
