import type { BodyOf, MatchAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, TextField, Tick } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { FIRST_GLASSES, GlassFields, glassesTyped } from "./glass-fields.tsx";
import { Told } from "./told.tsx";
import { ends, few, hundredths, percent } from "./told-numbers.ts";
import { filled, typedNumber } from "./typed-number.ts";

/** Rarer counts than this are not drawn; the table has them. */
const LEAST_DRAWN = 0.001;

/** Names given to glasses. */
export default function MatchJob() {
  const say = useSay("countsMatch");
  const [glasses, setGlasses] = useState(FIRST_GLASSES);
  const [right, setRight] = useState("9");
  const [told, setTold] = useState(false);
  const [answer, setAnswer] = useState<MatchAnswer | null>(null);
  const body = filled({
    ...glassesTyped(glasses),
    right: typedNumber(right),
    told: told ? true : undefined,
  }) as BodyOf<"countsMatch">;
  return (
    <div className="reckon">
      <Form
        say={say}
        onSend={() => void say.send({ body }).then(setAnswer)}
        className="reckon-in"
        label="Named glasses"
      >
        <GlassFields typed={glasses} onChange={setGlasses} />
        <TextField
          label="Named right, on all sheets together"
          value={right}
          onChange={setRight}
          path={["right"]}
          input={{ inputMode: "numeric" }}
        />
        <Tick
          label="What stood in a glass was told before the next was named"
          value={told}
          onChange={setTold}
          path={["told"]}
        />
        <Button kind="main" type="submit" busy={say.busy}>
          Say what it shows
        </Button>
      </Form>
      {answer !== null && <Matched answer={answer} />}
    </div>
  );
}

function Matched({ answer }: { readonly answer: MatchAnswer }) {
  const { pAtLeast, fraction, expected, critical5, right, of, exactly, known, knownReason } = answer;
  const drawn = exactly.flatMap((chance, k) => (chance >= LEAST_DRAWN || k === right ? [{ chance, k }] : []));
  return (
    <Told
      name="match"
      answer={answer}
      sentences={[answer.sentence]}
      facts={[
        ["By guessing", `p = ${few(pAtLeast, 4)}${fraction === null ? "" : `, ${fraction}`}`],
        ["On average", `${few(expected)} right by guessing`],
        ["At 5 %", critical5 === null ? "not even all right" : `${critical5} of ${of}`],
        [
          "Truly known",
          known === null
            ? (knownReason?.message ?? null)
            : `about ${few(known.glasses, 2)} of ${of}; ${ends(known.interval, hundredths)} of the glasses, ${percent(known.level)} or more`,
        ],
        ["Method", answer.method],
      ]}
    >
      <Figure
        title={`Guessing gets ${right} or more right in ${hundredths(pAtLeast)} of cases`}
        name="match-luck"
        note={`How often guessing alone gets so many right, in per cent. Ring: the ${right} that there were.`}
        draw={(width) =>
          drawIntervals(
            drawn.map(({ chance, k }) => ({
              label: `${k} right`,
              value: 100 * chance,
              low: 0,
              high: 100 * chance,
              said: hundredths(chance),
              ring: k === right,
            })),
            width,
          )
        }
        table={{
          heads: ["Right", "Chance by guessing"],
          rows: exactly.map((chance, k) => [String(k), few(chance, 4)]),
        }}
      />
    </Told>
  );
}
