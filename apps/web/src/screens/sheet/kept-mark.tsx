import { Button, sentence } from "../../parts/index.ts";
import type { Keeping } from "./keeper.ts";

/** Whether all that stands on the sheet is saved, in a word, always in sight. */
export function KeptMark({ keeping, onTry }: { readonly keeping: Keeping; readonly onTry: () => void }) {
  const { state, refusal } = keeping;
  const passing =
    refusal !== null && (refusal.status === 0 || refusal.status === 429 || refusal.status >= 500);
  return (
    <div className={`kept kept-${state} ${passing ? "kept-passing" : ""}`}>
      {state === "kept" && (
        <p>
          <span aria-hidden="true">✓</span> Saved
        </p>
      )}
      {state === "waiting" && (
        <p>
          <span aria-hidden="true">○</span> On this phone
        </p>
      )}
      {state === "keeping" && (
        <p>
          <span aria-hidden="true">…</span> Sending
        </p>
      )}
      {state === "clash" && (
        <p>
          <span aria-hidden="true">!</span> Your choice is needed
        </p>
      )}
      <div role="alert" className="kept-why">
        {state === "stuck" && (
          <>
            <p>
              {passing ? (
                <>
                  <strong>
                    <span aria-hidden="true">◌</span> Kept on this phone
                  </strong>
                  , not yet in the house: {refusal?.status === 0 ? "it cannot be reached" : "it is not ready"}
                  . Sent by itself as soon as it can be. Write on.
                </>
              ) : (
                <>
                  <strong>
                    <span aria-hidden="true">!</span> Not saved
                  </strong>
                  : {sentence(refusal?.issues[0]?.message ?? "the house gave no reason")}
                </>
              )}
            </p>
            <Button kind="quiet" onClick={onTry}>
              Try now
            </Button>
          </>
        )}
      </div>
    </div>
  );
}

export function Notices({
  notices,
  onRead,
}: {
  readonly notices: readonly string[];
  readonly onRead: () => void;
}) {
  return (
    <div role="status" className="notices">
      {notices.length > 0 && (
        <div className="notice">
          {notices.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
          <Button onClick={onRead}>Understood</Button>
        </div>
      )}
    </div>
  );
}
