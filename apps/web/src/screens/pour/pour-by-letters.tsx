import { type Flight, REFERENCE_LABEL } from "@partsproof/house/protocol";
import { pouredSets, tickOfR } from "./poured-sets.ts";
import type { Ticks } from "./use-ticks.ts";

interface PourByLettersProps {
  readonly flight: Flight;
  readonly ticks: Ticks;
}

/** What goes over which letter, set by set or in one row, each with a tick; R first, which has no letter. */
export function PourByLetters({ flight, ticks }: PourByLettersProps) {
  return pouredSets(flight).map(({ set, marks, reference }) => (
    <ul key={set ?? "row"} className="alone-marks" aria-label={set === null ? "The letters" : `Tray ${set}`}>
      {set !== null && (
        <li className="tasters-set" aria-hidden="true">
          Tray {set}
        </li>
      )}
      {reference !== null && (
        <Line
          tick={tickOfR(set)}
          code={REFERENCE_LABEL}
          what={`${reference}, labelled R on the side`}
          ml={flight.pourMl}
          ticks={ticks}
        />
      )}
      {marks.map(({ mark, label }) => (
        <Line key={mark} tick={mark} code={mark} what={label} ml={flight.pourMl} ticks={ticks} />
      ))}
    </ul>
  ));
}

interface LineProps {
  readonly tick: string;
  readonly code: string;
  readonly what: string;
  readonly ml: number;
  readonly ticks: Ticks;
}

function Line({ tick, code, what, ml, ticks }: LineProps) {
  return (
    <li>
      <label className="pourline">
        <input
          type="checkbox"
          checked={ticks.has(tick)}
          onChange={(event) => ticks.set(tick, event.target.checked)}
        />
        <span className="pourline-code">{code}</span>
        <span className="pourline-what">
          {what}
          <span className="pourline-ml"> {ml} mL</span>
        </span>
      </label>
    </li>
  );
}
