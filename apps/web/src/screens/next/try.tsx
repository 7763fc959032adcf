import type { Parts } from "@partsproof/core/learning";
import type { TriedHistory } from "@partsproof/house/protocol";
import { useMemo, useState } from "react";
import { Busy, Empty, Section, Stepper, Tick } from "../../parts/index.ts";
import { useTrying } from "../../trying/index.ts";
import { Believed } from "./believed.tsx";
import { Glasses, type Overruled } from "./glasses.tsx";
import { MixMap } from "./mix-map.tsx";

const NOTHING: Overruled = { edited: {}, dropped: [] };

export interface TryProps {
  readonly history: TriedHistory;
  readonly household: string;
  /** What the recipe is called. */
  readonly recipe: string;
}

/** The proposal, the map beside it and what stands behind both; all of it follows what is asked for. */
export function Try({ history, household, recipe }: TryProps) {
  const { names } = history;
  const all = useMemo(() => history.asked.mixes ?? [], [history]);
  const [glasses, setGlasses] = useState(history.asked.glasses);
  const [maxParts, setMaxParts] = useState(history.asked.maxParts);
  const [without, setWithout] = useState<readonly string[]>([]);
  const [overruled, setOverruled] = useState<Overruled>(NOTHING);
  const [chosen, setChosen] = useState<readonly string[]>(() => all.slice(0, 3));
  const [here, setHere] = useState<Parts | null>(null);
  const mixes = useMemo(() => all.filter((id) => !without.includes(id)), [all, without]);
  const asked = useMemo(
    () => (mixes.length === 0 ? null : { ...history.asked, glasses, maxParts, mixes: [...mixes] }),
    [history, glasses, maxParts, mixes],
  );
  const [a, b, c] = chosen;
  const corners = useMemo(
    () =>
      a === undefined || b === undefined || c === undefined ? null : ([a, b, c] as [string, string, string]),
    [a, b, c],
  );
  const point = here ?? (corners === null ? null : Object.fromEntries(corners.map((id) => [id, 1])));
  const edits = Object.values(overruled.edited);
  const wondered = [...(point === null ? [] : [point]), ...edits].filter((parts) =>
    Object.values(parts).some((part) => part > 0),
  );
  const { answered, current, beliefs, failed } = useTrying(asked, corners, wondered);
  const pointBelief = point === null ? undefined : beliefs[0];
  const change = (then: () => void): void => {
    setOverruled(NOTHING);
    then();
  };
  if (all.length < 2)
    return (
      <Empty title="Nothing to mix yet">
        {history.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </Empty>
    );
  return (
    <div className="next">
      <div className="next-main">
        <Section title="The next flight">
          <p className="soft">
            {history.counted.flights === 0
              ? "No order or score of a revealed flight to go by yet: this flight is to find out what is liked at all."
              : `From ${history.counted.flights} revealed ${history.counted.flights === 1 ? "flight" : "flights"}, by ${
                  history.by === "closeness" ? "closeness to the target" : "liking"
                }.`}
          </p>
          {failed !== null && <p role="alert">The proposal could not be reckoned: {failed}.</p>}
          {answered === null && failed === null && asked !== null && <Busy what="what would tell most" />}
          {asked === null && <p>Tick at least one whiskey that may be mixed.</p>}
          {answered !== null && asked !== null && (
            <Glasses
              history={history}
              household={household}
              recipe={recipe}
              flight={answered.flight}
              busy={!current}
              overruled={overruled}
              onOverrule={setOverruled}
              beliefs={point === null ? beliefs : beliefs.slice(1)}
            />
          )}
        </Section>
        <Section title="What the flight may be made of">
          <div className="next-asked">
            <Stepper
              showLabel
              label="Glasses"
              value={glasses}
              min={history.asked.target === undefined ? 2 : 3}
              max={12}
              onChange={(value) => change(() => setGlasses(value))}
            />
            <Stepper
              showLabel
              label="Most parts in a mix"
              value={maxParts}
              min={1}
              max={20}
              onChange={(value) => change(() => setMaxParts(value))}
            />
          </div>
          <details className="mix-table">
            <summary>
              {without.length === 0
                ? `All ${all.length} whiskeys may be mixed`
                : `${mixes.length} of ${all.length} whiskeys may be mixed`}
            </summary>
            {all.map((id) => (
              <Tick
                key={id}
                label={`${names[id] ?? id} may be mixed, ${(
                  history.stock.find((one) => one.id === id)?.freeMl ?? 0
                ).toFixed(0)} mL left`}
                value={!without.includes(id)}
                onChange={(on) =>
                  change(() => setWithout(on ? without.filter((one) => one !== id) : [...without, id]))
                }
              />
            ))}
          </details>
          {history.notes.length > 0 && (
            <ul className="soft">
              {history.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          )}
        </Section>
      </div>
      <div className="next-side">
        {answered !== null && corners !== null && point !== null && (
          <MixMap
            history={history}
            corners={corners}
            all={all}
            onCorners={(ids) => {
              setChosen(ids);
              setHere(null);
            }}
            answered={answered}
            point={point}
            belief={pointBelief}
            onPoint={setHere}
          />
        )}
        {answered !== null && <Believed history={history} answered={answered} />}
      </div>
    </div>
  );
}
