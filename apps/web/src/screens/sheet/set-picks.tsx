import type { Sheet } from "@partsproof/house/protocol";
import { useId, useState } from "react";
import { Button } from "../../parts/index.ts";
import { groupsOf, withPick } from "./two-and-two.ts";

interface SetPicksProps {
  readonly one: Sheet["sets"][number];
  readonly task: string;
  readonly picked: readonly string[];
  /** All that is picked; empty for no answer. */
  readonly onPick: (picked: readonly string[]) => void;
}

/** The glasses of a set as they stand. One is picked of two or three; of four, the two that belong together. */
export function SetPicks(props: SetPicksProps) {
  return props.one.glasses.length === 4 ? <TwoAndTwo {...props} /> : <PickOne {...props} />;
}

function PickOne({ one, task, picked, onPick }: SetPicksProps) {
  const name = useId();
  return (
    <>
      <fieldset className="picks">
        <legend className="unseen">{task}</legend>
        {one.reference && (
          <div className="picks-one picks-known">
            <span className="picks-glass">R</span>
            <span>the reference, first</span>
          </div>
        )}
        {one.glasses.map(({ code }) => (
          <label key={code} className="picks-one">
            <input
              type="radio"
              name={name}
              checked={picked.includes(code)}
              onChange={() => onPick([code])}
              aria-label={`Glass ${code}`}
            />
            <span className="picks-glass">{code}</span>
            <span aria-hidden="true">{picked.includes(code) ? "● this one" : "○"}</span>
          </label>
        ))}
      </fieldset>
      <Below none={picked.length === 0} onNone={() => onPick([])} />
    </>
  );
}

function TwoAndTwo({ one, task, picked, onPick }: SetPicksProps) {
  // The house takes whole answers only; the first of a group waits here for its second.
  const [half, setHalf] = useState<readonly string[]>(picked);
  const codes = one.glasses.map(({ code }) => code);
  const [first, second] = groupsOf(codes, half);
  const pick = (code: string): void => {
    const next = withPick(half, code);
    setHalf(next);
    if (next.length === 2) onPick(next);
    else if (picked.length > 0) onPick([]);
  };
  return (
    <>
      <div className="picks picks-four" role="group" aria-label={task}>
        {codes.map((code) => {
          const group = first.includes(code) ? "first" : second.includes(code) ? "second" : null;
          return (
            <button
              key={code}
              type="button"
              className={`picks-one ${group === null ? "" : `picks-${group}`}`}
              aria-pressed={first.includes(code)}
              onClick={() => pick(code)}
            >
              <span className="unseen">Glass </span>
              <span className="picks-glass">{code}</span>
              <span>{group === null ? "○" : group === "first" ? "▲ these two" : "■ those two"}</span>
            </button>
          );
        })}
      </div>
      <p className="soft" aria-live="polite">
        {half.length === 0 && "Tap two that are alike; the other two are the other group."}
        {half.length === 1 && `And which is like ${half[0] ?? ""}?`}
        {half.length === 2 && `${first.join(" and ")} alike, ${second.join(" and ")} alike.`}
      </p>
      <Below
        none={half.length === 0}
        onNone={() => {
          setHalf([]);
          onPick([]);
        }}
      />
    </>
  );
}

function Below({ none, onNone }: { readonly none: boolean; readonly onNone: () => void }) {
  return (
    <div className="picks-below">
      <p className="field-hint">
        From left to right, water between them; go back as often as you like. Cannot tell? Guess: a guess
        costs nothing, and an empty answer tells nothing.
      </p>
      {!none && (
        <Button kind="quiet" onClick={onNone}>
          Take the answer back
        </Button>
      )}
    </div>
  );
}
