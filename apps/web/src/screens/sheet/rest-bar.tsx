import { Button } from "../../parts/index.ts";
import { clockWords, REST_MINUTES } from "./rest-between.ts";
import type { Resting } from "./use-rest.ts";

interface RestBarProps {
  readonly rest: Resting;
  /** Which glass of the row is in hand, from 1. */
  readonly position: number;
  readonly glasses: number;
}

/** Glasses after which the palate tires: common practice, no source. */
const TIRES_AFTER = 4;

/** Water between two glasses, and a rest if one is wanted. Nothing is locked meanwhile; no sound is needed. */
export function RestBar({ rest, position, glasses }: RestBarProps) {
  if (rest.left > 0) {
    return (
      <div className="rest rest-on">
        <p className="rest-clock">
          <span role="timer" aria-label="Rest before this glass">
            {clockWords(rest.left)}
          </span>
        </p>
        <p>
          Rest before this glass. <strong>Water</strong>, and a bite of plain bread.
          {position > TIRES_AFTER && " After four glasses a palate tires: take your time."}
        </p>
        <Button onClick={rest.end}>Go on now</Button>
      </div>
    );
  }
  return (
    <div className="rest">
      <p>
        <strong>Water first</strong>; spit if you like.
        {position > TIRES_AFTER &&
          glasses > TIRES_AFTER &&
          " After four glasses a palate tires: a longer rest helps."}
      </p>
      <label className="rest-pick">
        <span>
          Rest<span className="unseen"> before each glass</span>
        </span>
        <select
          value={String(rest.minutes)}
          onChange={(event) => rest.setMinutes(Number(event.target.value))}
        >
          {REST_MINUTES.map((minutes) => (
            <option key={minutes} value={minutes}>
              {minutes === 0 ? "none" : `${minutes} min`}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
