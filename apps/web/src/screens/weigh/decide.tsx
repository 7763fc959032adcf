import type { ReactNode } from "react";
import { abvDigits, printAbv, printMl } from "../../figures/index.ts";
import {
  type Choice,
  choicesAt,
  type Outcome,
  type Pouring,
  scaleDigits,
  type Standing,
  WATER,
} from "../../weighing/index.ts";

export interface DecideProps {
  readonly pouring: Pouring;
  readonly now: Standing;
  readonly onDecide: (how: Choice["how"]) => void;
  readonly undo: ReactNode;
}

/** A pour that went too far, or a bottle that ran dry: what can be done, and what each comes to. */
export function Decide({ pouring, now, onDecide, undo }: DecideProps) {
  const { question } = now;
  if (question === null) return null;
  const water = question.source === WATER;
  const name = water ? "water" : (pouring.sources[question.source]?.label ?? "");
  const g = scaleDigits(question.g, pouring.scale);
  const over = question.kind === "over";
  const choices = choicesAt(pouring, now);
  const planned = pouring.parts.reduce((sum, { plannedMl }) => sum + plannedMl, 0);
  return (
    <>
      <header className="weigh-head">
        <p className="soft">{over ? "Poured too far" : "Not enough"}</p>
        <h2 tabIndex={-1}>
          {g}&nbsp;g {over ? (water ? "too much" : "too much of") : "short of"} {name}
        </h2>
      </header>
      <p>
        {choices.length === 1
          ? "What is in stays in, and nothing can make it good."
          : over
            ? "What is in stays in. The rest can follow it, or not:"
            : "What is in stays in. The rest can follow it, or be poured as planned:"}
      </p>
      <ul className="decide">
        {choices.map(({ how, outcome }) => (
          <li key={how}>
            <button type="button" className="decide-way" onClick={() => onDecide(how)}>
              <span className="name">{title(how, over, outcome)}</span>
              <span className="decide-comes">
                {outcome.volumeMl === 0 ? (
                  "an empty vessel"
                ) : (
                  <>
                    <b>{abvDigits(outcome.abv20)}</b> % vol, <b>{printMl(outcome.volumeMl)}</b>
                  </>
                )}
              </span>
              {outcome.volumeMl > 0 && <span className="small">{words(how, outcome, planned)}</span>}
              {off(outcome, pouring.waterTo) !== "" && (
                <span className="small">{off(outcome, pouring.waterTo)}</span>
              )}
              {outcome.overMl > 0 && (
                <span className="small decide-care">
                  {printMl(outcome.overMl)} more than the vessel holds.
                </span>
              )}
              {outcome.shortOf.map(({ label, ml }) => (
                <span key={label} className="small decide-care">
                  Needs {printMl(ml)} more of {label} than there is by the book.
                </span>
              ))}
            </button>
          </li>
        ))}
      </ul>
      {undo !== null && <div className="form-actions">{undo}</div>}
      {pouring.waterTo !== null && !water && (
        <p className="soft small">Water still brings it to {printAbv(pouring.waterTo)} where it can.</p>
      )}
    </>
  );
}

function title(how: Choice["how"], over: boolean, { offBy }: Outcome): string {
  if (how === "stop") return "Stop here";
  if (how === "drift") return "Accept the drift";
  if (offBy === 0) return over ? "Make a bit more" : "Make a bit less";
  return over ? "Make a bit more, as far as it goes" : "Come as near as it can";
}

function words(how: Choice["how"], { offBy, offPart }: Outcome, planned: number): string {
  const off =
    offBy === 0
      ? "The parts are as the recipe says."
      : `${offPart} is ${Math.abs(offBy).toFixed(1)} points of 100 ${offBy > 0 ? "over" : "under"} its share.`;
  if (how === "grow") return `The rest follows. ${off}`;
  if (how === "drift") return `The rest as planned (${printMl(planned)} of parts). ${off}`;
  return `Nothing more goes in. ${off}`;
}

/** Where the strength comes out beside the one that was wanted. */
function off({ abv20, volumeMl }: Outcome, waterTo: number | null): string {
  if (waterTo === null || volumeMl === 0 || Math.abs(abv20 - waterTo) < 0.05) return "";
  return `${abv20 < waterTo ? "Weaker" : "Stronger"} than the ${printAbv(waterTo)} wanted.`;
}
