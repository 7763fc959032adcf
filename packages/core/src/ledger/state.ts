import { type Account, accountKey, SINKS, SOURCES } from "./account.ts";
import { type Contents, EMPTY } from "./contents.ts";

/** Something that holds liquid; `capacityMl` is millilitres at 20 °C. */
export type Vessel = { readonly id: string; readonly capacityMl: number };

/** The balance of every account. Never changed in place: each accepted transfer gives a new one. */
export type LedgerState = {
  readonly vessels: ReadonlyMap<string, Vessel>;
  /** By account key; sources hold less than nothing, by as much as they gave. */
  readonly accounts: ReadonlyMap<string, Contents>;
  /** The `seq` of the last transfer that counted. */
  readonly lastSeq: number | null;
};

export type LedgerResult = { readonly ok: true; readonly state: LedgerState };

/** @throws {RangeError} when two vessels share an id or a capacity is not a positive finite number. */
export function emptyState(vessels: Iterable<Vessel>): LedgerState {
  const byId = new Map<string, Vessel>();
  const accounts = new Map<string, Contents>();
  for (const name of [...SOURCES, ...SINKS]) accounts.set(accountKey({ kind: "outside", name }), EMPTY);
  for (const vessel of vessels) {
    if (byId.has(vessel.id))
      throw new RangeError(`vessel id requires to be used once, got ${vessel.id} twice`);
    if (!(vessel.capacityMl > 0 && vessel.capacityMl < Infinity))
      throw new RangeError(
        `capacity of vessel ${vessel.id} requires a positive finite volume, got ${vessel.capacityMl} mL`,
      );
    byId.set(vessel.id, vessel);
    accounts.set(accountKey({ kind: "vessel", vesselId: vessel.id }), EMPTY);
  }
  return { vessels: byId, accounts, lastSeq: null };
}

/** @throws {RangeError} when the ledger has no such account. */
export function contentsOf(state: LedgerState, account: Account): Contents {
  const contents = state.accounts.get(accountKey(account));
  if (contents === undefined)
    throw new RangeError(`account requires to be in this ledger, got ${accountKey(account)}`);
  return contents;
}

/** @throws {RangeError} when the ledger has no such vessel. */
export function contentsOfVessel(state: LedgerState, vesselId: string): Contents {
  return contentsOf(state, { kind: "vessel", vesselId });
}
