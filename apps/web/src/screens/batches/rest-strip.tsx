import type { Batch } from "@partsproof/house/protocol";
import { countDays, fromNow, printDay } from "../../figures/index.ts";
import { useNow } from "../../session/index.ts";
import { restOf } from "./rest-of.ts";
import "./rest-strip.css";

export interface RestStripProps {
  readonly batch: Pick<Batch, "madeAt" | "restDays" | "restDueAt" | "state">;
  /** Only the strip, where the words stand beside it. */
  readonly small?: boolean;
}

/** How far a batch has rested: a strip measured in days, from the day it was made to the day it is due. */
export function RestStrip({ batch, small = false }: RestStripProps) {
  const now = useNow();
  const rest = restOf(batch, now);
  if (rest === null) {
    return small ? null : <p className="soft">No rest was asked for.</p>;
  }
  const { days, done } = rest;
  const share = Math.min(1, days === 0 ? 1 : done / days);
  const step = days <= 35 ? 7 : days <= 120 ? 14 : 30;
  const ticks = Array.from(
    { length: Math.max(0, Math.ceil(days / step) - 1) },
    (_, i) => ((i + 1) * step) / days,
  );
  const words =
    batch.state === "resting"
      ? `Rested ${countDays(done)} of ${days}; due ${fromNow(rest.dueAt, now)}, ${printDay(rest.dueAt)}`
      : `Rested its ${countDays(days)}: due since ${printDay(rest.dueAt)}`;
  return (
    <div className={`rest ${small ? "rest-small" : ""}`}>
      <div className="rest-strip" aria-hidden="true">
        <span className="rest-done" style={{ width: `${share * 100}%` }} />
        {ticks.map((at) => (
          <span key={at} className="rest-tick" style={{ left: `${at * 100}%` }} />
        ))}
        <span className="rest-now" style={{ left: `${share * 100}%` }} />
      </div>
      <p className={small ? "unseen" : ""}>{words}</p>
    </div>
  );
}
