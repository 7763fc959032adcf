import { Button, sentence } from "../../parts/index.ts";
import type { Keeping } from "./keeper.ts";

/** Whether all that stands on the sheet is saved, in a word, always in sight. */
export function KeptMark({ keeping, onTry }: { readonly keeping: Keeping; readonly onTry: () => void }) {
  const { state, refusal } = keeping;
  return (
    <div className={`kept kept-${state}`}>
      {state === "kept" && (
        <p>
          <span aria-hidden="true">✓</span> Saved
        </p>
      )}
      {state === "waiting" && (
        <p>
          <span aria-hidden="true">○</span> Unsaved
        </p>
      )}
      {state === "keeping" && (
        <p>
          <span aria-hidden="true">…</span> Saving
        </p>
      )}
      <div role="alert" className="kept-why">
        {state === "stuck" && (
          <>
            <p>
              <strong>
                <span aria-hidden="true">!</span> Not saved
              </strong>
              : {sentence(refusal?.issues[0]?.message ?? "the house gave no reason")}
              {refusal !== null &&
                (refusal.status === 0 || refusal.status >= 500) &&
                " It is kept on this phone, and tried again."}
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
