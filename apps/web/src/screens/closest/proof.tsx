import { useEffect, useState } from "react";
import { proofWords, type Seeking } from "../../closest/index.ts";
import { Button } from "../../parts/index.ts";

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
        <p className="closest-words" aria-hidden="true">
          {words}
        </p>
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
