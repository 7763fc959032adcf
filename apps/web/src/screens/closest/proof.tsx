import { useEffect, useState } from "react";
import { LEAST_GAP, printGap, proofWords, type Seeking } from "../../closest/index.ts";
import { Button, Steady } from "../../parts/index.ts";

/** A search that takes longer than this can be watched and stopped. */
const LONG_MS = 500;
/** Said aloud once it has stood a while, not at every step of a search. */
const SAID_MS = 700;

export interface ProofProps {
  readonly seeking: Seeking;
  /** A rule cannot be read: what is shown is from before. */
  readonly unreadable: boolean;
  /** Whether more than closeness counts. */
  readonly besides: boolean;
}

/** How sure it is that nothing is closer; how far a long search is, and the way to stop it. */
export function Proof({ seeking, unreadable, besides }: ProofProps) {
  const { told, state } = seeking;
  const words = unreadable ? "Waiting for a rule that can be read." : proofWords(seeking, besides);
  const [said, setSaid] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => setSaid(words), SAID_MS);
    return () => clearTimeout(timer);
  }, [words]);
  const [long, setLong] = useState(false);
  useEffect(() => {
    if (state !== "searching") return undefined;
    const timer = setTimeout(() => setLong(true), LONG_MS);
    return () => {
      clearTimeout(timer);
      setLong(false);
    };
  }, [state]);
  return (
    <>
      <div className="closest-proof">
        <Words
          words={words}
          gap={
            state === "searching" && seeking.current && !unreadable && told !== null && told.best !== null
              ? printGap(told.gap)
              : null
          }
        />
        <p className="unseen" role="status">
          {said}
        </p>
        {long && state === "searching" && <Button onClick={seeking.stop}>Stop looking</Button>}
        {state === "stopped" && <Button onClick={seeking.goOn}>Go on looking</Button>}
      </div>
      {told !== null && seeking.current && (long || state === "stopped") && !told.done && (
        <p className="soft small">{told.nodes.toLocaleString("en-GB")} possibilities looked into so far.</p>
      )}
    </>
  );
}

/**
 * While a control moves, "within …" and "proven" take turns many times a second: they stand in one place and one is seen, so that
 * nothing around them is laid out anew.
 */
function Words({ words, gap }: { readonly words: string; readonly gap: string | null }) {
  const [sentence, setSentence] = useState(words);
  const [figure, setFigure] = useState("0.00");
  const inFigures = gap !== null && gap !== LEAST_GAP;
  if (gap === null && sentence !== words) setSentence(words);
  if (inFigures && figure !== gap) setFigure(gap);
  const seen = (shown: boolean): string | undefined => (shown ? undefined : "closest-word-away");
  return (
    <div className="closest-words" aria-hidden="true">
      <p className={seen(gap === null)}>{sentence}</p>
      <p className={seen(gap === LEAST_GAP)}>{`Within ${LEAST_GAP} of the best possible, still looking.`}</p>
      <p className={seen(inFigures)}>
        <span className="steady-line">
          Within <Steady text={figure} /> <span>of the best possible, still looking.</span>
        </span>
      </p>
    </div>
  );
}
