import type { Contents } from "./contents.ts";
import { instantOf } from "./instant.ts";
import { move } from "./move.ts";
import type { Refusal, Refused } from "./refusal.ts";
import { emptyState, type LedgerResult, type LedgerState, type Vessel } from "./state.ts";
import type { Transfer } from "./transfer.ts";

/**
 * The state of every account after all transfers that count, in order of `seq`, or the first refusal.
 * With `until` (ISO 8601) only transfers dated at or before that moment count. A history whose dates do not
 * run in the order of `seq` may be refused at such a moment though it is accepted as a whole.
 *
 * @throws {RangeError} on a bad list of vessels or an `until` that cannot be read.
 * @example
 * const at = "2026-01-05T19:00:00Z";
 * const from = { kind: "outside", name: "tap" };
 * const to = { kind: "vessel", vesselId: "jug" };
 * const amount = { kind: "liquid", liquidId: "water", ethanolG: 0, waterG: 100, cost: 0 };
 * foldLedger([{ id: "jug", capacityMl: 1000 }], [{ id: "t1", seq: 1, at, from, to, amount }]); // { ok: true, ... }
 */
export function foldLedger(
  vessels: Iterable<Vessel>,
  transfers: Iterable<Transfer>,
  until?: string,
): LedgerResult | Refused {
  const { state, refused } = foldPastRefusals(vessels, inOrder(transfers, until));
  const [refusal] = refused;
  return refusal === undefined ? { ok: true, state } : { ok: false, refusal };
}

/** The state at one moment: {@link foldLedger} over what had happened by then. */
export function stateAt(
  vessels: Iterable<Vessel>,
  transfers: Iterable<Transfer>,
  iso: string,
): LedgerResult | Refused {
  return foldLedger(vessels, transfers, iso);
}

/** The transfers that count up to a moment, in order of `seq`. */
export function inOrder(transfers: Iterable<Transfer>, until?: string): Transfer[] {
  const end = until === undefined ? Infinity : instantOf(until);
  if (Number.isNaN(end))
    throw new RangeError(`until requires an ISO 8601 date, or a time with Z or an offset, got ${until}`);
  return [...transfers]
    .filter((transfer) => transfer.undone !== true && !(instantOf(transfer.at) > end))
    .toSorted((a, b) => a.seq - b.seq);
}

/** Folds on one private map, stepping over refused transfers; `refused` lists them in order. */
export function foldPastRefusals(
  vessels: Iterable<Vessel>,
  ordered: readonly Transfer[],
): { state: LedgerState; refused: Refusal[] } {
  const start = emptyState(vessels);
  const accounts = new Map<string, Contents>(start.accounts);
  let state: LedgerState = { ...start, accounts };
  const refused: Refusal[] = [];
  for (const transfer of ordered) {
    const moved = move(state, transfer);
    if (!moved.ok) {
      refused.push(moved.refusal);
      continue;
    }
    for (const [key, contents] of moved.changed) accounts.set(key, contents);
    state = { ...state, lastSeq: transfer.seq };
  }
  return { state, refused };
}
