import type { RankAnswer } from "@partsproof/house/protocol";
import { FileJob } from "./file-job.tsx";
import { Told } from "./told.tsx";
import { few, fixed } from "./told-numbers.ts";
import { believedHow, WorthsTold } from "./worths-told.tsx";

/** Rankings of a file. */
export default function RankJob() {
  return (
    <FileJob
      route="countsRank"
      over={{}}
      holds={
        <>
          Items and rankings as JSON, best first; inner lists are ties; what a ranking does not list was not
          poured.
        </>
      }
    >
      {(answer) => <Ranked answer={answer} />}
    </FileJob>
  );
}

function Ranked({ answer }: { readonly answer: RankAnswer }) {
  const { items, rankings, friedman, kendallW, plackettLuce, bayesian, sentence } = answer;
  const { statistic, p, df, method, reason } = friedman;
  const places = plackettLuce.placeEffects;
  const give = ({
    value,
    standardError,
  }: {
    readonly value: number;
    readonly standardError: number;
  }): string => `${fixed(value)}, give or take ${fixed(standardError)}`;
  return (
    <Told
      name="rank"
      answer={answer}
      sentences={[sentence, ...bayesian.sentences.slice(1)]}
      facts={[
        ["Rankings", String(rankings)],
        [
          "Friedman",
          statistic === null || p === null
            ? (reason?.message ?? null)
            : `${few(statistic, 5)}, ${df} df, p = ${few(p, 4)} (${method})`,
        ],
        ["Kendall's W", kendallW === null ? null : fixed(kendallW, 3)],
        ["Log likelihood", plackettLuce.logLikelihood === null ? null : fixed(plackettLuce.logLikelihood, 3)],
        ["No log worths", plackettLuce.reason?.message ?? null],
        ["Served first", places === null ? null : give(places.first)],
        ["Served last", places === null ? null : give(places.last)],
        ["Believed by", believedHow(bayesian)],
      ]}
    >
      <WorthsTold
        items={items}
        fit={plackettLuce}
        bayesian={bayesian}
        name="rank-worths"
        more="ranked higher"
      />
    </Told>
  );
}
