import { useEffect, useRef } from "react";
import { announce, Button } from "../../parts/index.ts";
import { mostPairQuestions, type PairAnswer, pairState } from "./pair-questions.ts";
import type { Tiers } from "./ranking-moves.ts";

export interface PairBoardProps {
  readonly codes: readonly string[];
  readonly answers: readonly PairAnswer[];
  readonly onAnswers: (answers: readonly PairAnswer[]) => void;
  readonly onDone: (tiers: Tiers) => void;
  readonly onLeave: () => void;
  /** "Which do you like better?" */
  readonly question: string;
  /** What helps to remember a glass. */
  readonly about: (code: string) => string;
  /** Whether two may be level. */
  readonly ties: boolean;
}

/** This or that: two glasses at a time, until the ranking follows. */
export function PairBoard({
  codes,
  answers,
  onAnswers,
  onDone,
  onLeave,
  question,
  about,
  ties,
}: PairBoardProps) {
  const now = pairState(codes, answers);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), [answers.length]);
  if (now.state === "done") return null;
  const [a, b] = now.pair;
  const say = (ahead: string): void => {
    const next = [...answers, { pair: now.pair, ahead }];
    onAnswers(next);
    const then = pairState(codes, next);
    announce(ahead === "level" ? `${a} and ${b}: level` : `${ahead} before ${ahead === a ? b : a}`);
    if (then.state === "done") onDone(then.tiers);
  };
  return (
    <div className="pairs">
      <h3 ref={heading} tabIndex={-1}>
        {question}
      </h3>
      <div className="pairs-two">
        {[a, b].map((code) => (
          <button key={code} type="button" className="pairs-one" onClick={() => say(code)}>
            <span className="pairs-glass">
              <span className="unseen">Glass </span>
              {code}
            </span>
            <span className="pairs-about">{about(code)}</span>
          </button>
        ))}
      </div>
      {ties && (
        <div className="pairs-level">
          <Button onClick={() => say("level")}>Level: I cannot say</Button>
        </div>
      )}
      <p className="soft">
        Question {answers.length + 1} of at most {mostPairQuestions(codes.length)}. Sip again if you like.
        What follows from your answers is not asked.
      </p>
      <div className="form-actions">
        <Button kind="quiet" disabled={answers.length === 0} onClick={() => onAnswers(answers.slice(0, -1))}>
          Take the last answer back
        </Button>
        <Button kind="quiet" onClick={onLeave}>
          Leave the questions
        </Button>
      </div>
    </div>
  );
}
