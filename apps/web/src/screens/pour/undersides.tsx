import type { Flight } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, Dialog, IssueSummary, Page } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { flightPath } from "../flights/paths.ts";
import { pouredSets } from "./poured-sets.ts";
import { type MarksAt, placeWith, withMark } from "./marks-at.ts";

export interface UndersidesProps {
  readonly flight: Flight;
  readonly at: { readonly household: string; readonly flight: string };
  readonly token: string;
}

/** After the lock: which letter stood at which place, each letter once. */
export function Undersides({ flight, at, token }: UndersidesProps) {
  const [found, setFound] = useState<MarksAt>(() => flight.marks.map(() => null));
  const [asking, setAsking] = useState(false);
  const say = useSay("enterUndersides");
  const blank = found.filter((mark) => mark === null).length;
  const enter = async (): Promise<void> => {
    const marks = found.flatMap((mark, i) => (mark === null ? [] : [{ place: i + 1, mark }]));
    const done = await say.send({ at, token, body: { marks } });
    setAsking(false);
    if (done !== null) go(flightPath(at.household, flight.id), { replace: true });
  };
  const { setsEach } = flight.design;
  const size = setsEach === 0 ? 0 : flight.marks.length / setsEach;
  const together = pouredSets(flight).map(({ marks }) => marks.map(({ mark }) => mark).join(""));
  return (
    <Page
      title="Look under the glasses"
      back={{ to: flightPath(at.household, flight.id), label: "The flight" }}
      lead="Your sheet is locked. Lift each glass where it stands and enter the letter beneath it."
    >
      <IssueSummary say={say} />
      <ol className="unders">
        {found.map((mark, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- the place is the glass's name
          <li key={i}>
            <fieldset>
              <legend>
                {size > 0 && (
                  <span className="unders-set">
                    Set {Math.floor(i / size) + 1}
                    <span className="unseen">, </span>
                  </span>
                )}
                <span className="unders-place">
                  <span className="unseen">Place </span>
                  {i + 1}
                </span>
              </legend>
              <div
                className="unders-marks"
                // A row for what was poured together.
                {...(size > 0
                  ? { style: { maxWidth: `calc(${String(size)} * (var(--touch) + var(--s2)))` } }
                  : {})}
              >
                {flight.marks.map((one) => {
                  const elsewhere = placeWith(found, one.mark);
                  const taken = elsewhere !== null && elsewhere !== i;
                  return (
                    <label key={one.mark} className={taken ? "unders-taken" : ""}>
                      <input
                        type="radio"
                        name={`place-${i + 1}`}
                        checked={mark === one.mark}
                        onChange={() => {
                          setFound(withMark(found, i, one.mark));
                          announce(
                            taken
                              ? `${one.mark} moved from place ${(elsewhere ?? 0) + 1} to place ${i + 1}`
                              : `Place ${i + 1}: ${one.mark}`,
                          );
                        }}
                      />
                      <span>{one.mark}</span>
                      {taken && <span className="unseen">, now at place {(elsewhere ?? 0) + 1}</span>}
                    </label>
                  );
                })}
              </div>
            </fieldset>
          </li>
        ))}
      </ol>
      <p className="field-hint">
        Each letter stands once. A letter with a dashed edge is at another place already; choosing it moves it
        here.
        {setsEach > 1 && ` The glasses of a set keep together: ${together.join(", ")}.`}
      </p>
      <div className="form-actions">
        <Button kind="main" disabled={blank > 0} onClick={() => setAsking(true)}>
          {blank > 0 ? `${blank} still to enter` : "Enter the letters"}
        </Button>
      </div>
      <Dialog title="All as it stands?" open={asking} onClose={() => setAsking(false)} alert>
        <p>
          {found.map((mark, i) => `place ${i + 1}: ${mark ?? "–"}`).join(", ")}. They are entered once and
          cannot be changed.
        </p>
        <div className="form-actions">
          <Button kind="main" busy={say.busy} onClick={() => void enter()}>
            Enter them
          </Button>
          <Button onClick={() => setAsking(false)}>Look again</Button>
        </div>
      </Dialog>
    </Page>
  );
}
