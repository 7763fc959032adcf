import type { PairsAnswer } from "@partsproof/house/protocol";
import { FileJob } from "./file-job.tsx";
import { Told } from "./told.tsx";
import { few, fixed } from "./told-numbers.ts";
import { believedHow, WorthsTold } from "./worths-told.tsx";

/** Comparisons of two, of a file. */
export default function PairsJob() {
  return (
    <FileJob
      route="countsPairs"
      over={{}}
      holds={
        <>
          Items and who beat whom as JSON: row i, column j is how often i beat j; ties likewise, if there are
          any.
        </>
      }
    >
      {(answer) => <Compared answer={answer} />}
    </FileJob>
  );
}

function Compared({ answer }: { readonly answer: PairsAnswer }) {
  const { items, comparisons, tieParameter, orderEffect, logLikelihood, reason, bayesian } = answer;
  return (
    <Told
      name="pairs"
      answer={answer}
      sentences={bayesian.sentences.slice(1)}
      facts={[
        ["Comparisons", String(comparisons)],
        ["Tie parameter", tieParameter === null ? null : few(tieParameter, 4)],
        [
          "Coming first",
          orderEffect === null
            ? null
            : `${fixed(orderEffect.value)}, give or take ${fixed(orderEffect.standardError)} (log odds)`,
        ],
        ["Log likelihood", logLikelihood === null ? null : fixed(logLikelihood, 3)],
        ["No log worths", reason?.message ?? null],
        ["Believed by", believedHow(bayesian)],
      ]}
    >
      <WorthsTold
        items={items}
        fit={answer}
        bayesian={bayesian}
        name="pairs-worths"
        more="chosen more often"
      />
    </Told>
  );
}
