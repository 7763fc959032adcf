import type { Sheet } from "@partsproof/house/protocol";
import { announce, Button } from "../../parts/index.ts";
import { RoundOrder } from "./round-order.tsx";
import { SetPicks } from "./set-picks.tsx";
import { answerKey, pickedIn, roundIn } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";

export interface SetBoardProps extends SheetStepProps {
  readonly at: number;
  readonly onSet: (set: number) => void;
  readonly onDone: () => void;
}

type OneSet = Sheet["sets"][number];

/** One set at a time, big: what is asked, the glasses as they stand, the answer. */
export function SetBoard({ sheet, fields, set, heading, at, onSet, onDone }: SetBoardProps) {
  const rounds = sheet.asks.answers === "ranking";
  const word = rounds ? "Round" : "Set";
  const shown = sheet.sets.find((one) => one.set === at) ?? sheet.sets[0];
  if (shown === undefined) return null;
  const next = sheet.sets[sheet.sets.indexOf(shown) + 1];
  const answered = (one: OneSet): boolean => (fields.get(answerKey(one.set)) ?? null) !== null;
  return (
    <section className="setboard">
      {sheet.sets.length > 1 && (
        <ol className="row" aria-label={`${word}s`}>
          {sheet.sets.map((one) => (
            <li key={one.set}>
              <button
                type="button"
                className={`row-one ${answered(one) ? "row-done" : ""}`}
                aria-current={one === shown ? "true" : undefined}
                onClick={() => onSet(one.set)}
              >
                <span className="unseen">{word} </span>
                {one.set}
                <span className="unseen">, {answered(one) ? "answered" : "open"}</span>
                {answered(one) && (
                  <span className="row-tick" aria-hidden="true">
                    ✓
                  </span>
                )}
              </button>
            </li>
          ))}
        </ol>
      )}
      <h2 ref={heading} tabIndex={-1} className="setboard-head">
        <span className="taste-pass">
          {word} {shown.set} of {sheet.sets.length}
        </span>{" "}
        {rounds ? "Put them in order, best first" : sheet.task}
      </h2>
      {rounds ? (
        <RoundOrder
          key={shown.set}
          sheet={sheet}
          fields={fields}
          one={shown}
          order={roundIn(fields, shown.set)}
          onOrder={(order) => set(answerKey(shown.set), order)}
        />
      ) : (
        <SetPicks
          key={shown.set}
          one={shown}
          task={sheet.task}
          picked={pickedIn(fields, shown.set)}
          onPick={(picked) => {
            set(answerKey(shown.set), picked.length === 0 ? null : picked.toSorted().join(" "));
            announce(picked.length === 0 ? "No answer" : `Picked ${picked.join(" and ")}`);
          }}
        />
      )}
      <div className="form-actions">
        {next === undefined ? (
          <Button kind="main" onClick={onDone}>
            Go to the lock
          </Button>
        ) : (
          <Button kind="main" onClick={() => onSet(next.set)}>
            Next: {word.toLowerCase()} {next.set}
          </Button>
        )}
      </div>
    </section>
  );
}
