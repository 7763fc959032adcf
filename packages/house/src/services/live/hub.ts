import type { LiveEvent } from "../../protocol/index.ts";
import type { LiveSink } from "../handler.ts";
import type { House, Reads } from "../ports.ts";
import { eventsOf, lastSeq } from "./happened.ts";

/** How often the database is asked for what other processes wrote. */
const ASK_EVERY_MS = 500;
/**
 * A stream says that it stands, and whoever follows it is looked at again, once in so many askings: every 15 s. Each has
 * its own turn, so that a full table is never looked at all at once while somebody waits for a write.
 */
const TURNS = 30;

export interface Follower {
  readonly household: string;
  readonly flight: string;
  /** The number of the last event it was sent. */
  sent: number;
  /** Whose it is, where one may hold only so many: a token's hash; null where nobody counts. */
  readonly holder: string | null;
  readonly sink: LiveSink;
  readonly wants: (event: LiveEvent) => boolean;
  /** Whether it may still follow: a token may have been revoked, a session ended. */
  readonly may: (records: Reads) => Promise<boolean>;
}

interface Followed {
  readonly household: string;
  readonly flight: string;
  /** The last event read from the database. */
  seq: number;
  /** Each with its turn. */
  readonly followers: Map<Follower, number>;
}

export interface Hub {
  /** Begins to send; the function returned ends it. */
  follow(follower: Follower): () => void;
  /** Something of this flight may have been written by this process: it is read at once. */
  nudge(flight: string): void;
  /** Looks at every follower again. */
  recheck(): void;
  /** How many streams of a flight are the holder's. */
  heldBy(flight: string, holder: string): number;
  /** Ends every stream. */
  end(): void;
}

/**
 * The streams of this process. What this process writes is sent at once, what others write within half a second: one
 * small question for all followed flights, and none where nobody follows.
 */
function createHub(house: Pick<House, "store">): Hub {
  const flights = new Map<string, Followed>();
  let asking: ReturnType<typeof setInterval> | undefined;
  let came = 0;
  let asked = 0;
  let line: Promise<void> = Promise.resolve();

  /** One reading after the other, so that no follower is sent an event twice or out of order. */
  const inLine = (work: () => Promise<void>): void => {
    line = line.then(work).catch((error: unknown) => {
      console.error("house: live events could not be read:", error instanceof Error ? error.message : error);
    });
  };

  /** Followed flights that are to be read. */
  const due = new Set<Followed>();
  /** Reads them soon, and once for all who ask before it is their turn: a table that fills up asks for each who comes. */
  const readSoon = (which: Iterable<Followed>): void => {
    const waits = due.size > 0;
    for (const followed of which) due.add(followed);
    if (waits || due.size === 0) return;
    inLine(async () => {
      const now = [...due];
      due.clear();
      await read(now);
    });
  };

  const drop = (follower: Follower): void => {
    const followed = flights.get(follower.flight);
    followed?.followers.delete(follower);
    if (followed?.followers.size === 0) flights.delete(follower.flight);
    if (flights.size > 0) return;
    clearInterval(asking);
    asking = undefined;
  };

  const ended = (follower: Follower): void => {
    drop(follower);
    follower.sink.end();
  };

  const read = async (which: readonly Followed[]): Promise<void> => {
    const fresh = await house.store.read(async (records) => {
      const found: (readonly [Followed, readonly LiveEvent[]])[] = [];
      const seqs = await lastSeqs(records, which);
      for (const followed of which) {
        const seq = seqs.get(followed.flight) ?? 0;
        let behind = followed.seq;
        for (const { sent } of followed.followers.keys()) behind = Math.min(behind, sent);
        if (seq > behind)
          found.push([followed, await eventsOf(records, followed.household, followed.flight)]);
      }
      return found;
    });
    for (const [followed, events] of fresh) {
      followed.seq = Math.max(followed.seq, events.at(-1)?.seq ?? 0);
      for (const follower of followed.followers.keys()) deliver(follower, events);
      if (events.some(({ what }) => what === "seat freed")) await look([...followed.followers.keys()]);
    }
  };

  const deliver = (follower: Follower, events: readonly LiveEvent[]): void => {
    for (const event of events) {
      if (event.seq <= follower.sent) continue;
      follower.sent = event.seq;
      if (follower.wants(event) && !follower.sink.send(event)) return ended(follower);
    }
  };

  /** Ends the streams of those who may not follow any more. */
  const look = async (which: readonly Follower[]): Promise<void> => {
    const gone = await house.store.read(async (records) => {
      const found: Follower[] = [];
      for (const follower of which) if (!(await follower.may(records))) found.push(follower);
      return found;
    });
    for (const follower of gone) ended(follower);
  };

  const everybody = (): readonly Follower[] =>
    [...flights.values()].flatMap(({ followers }) => [...followers.keys()]);

  const ask = (): void => {
    asked = (asked + 1) % TURNS;
    const next: Follower[] = [];
    for (const { followers } of flights.values()) {
      for (const [follower, turn] of followers) if (turn === asked) next.push(follower);
    }
    for (const follower of next) if (!follower.sink.beat()) ended(follower);
    readSoon(flights.values());
    if (next.length > 0) inLine(() => look(next));
  };

  return {
    follow: (follower) => {
      const { household, flight, sent } = follower;
      const followed = flights.get(flight) ?? { household, flight, seq: sent, followers: new Map() };
      came = (came + 1) % TURNS;
      followed.followers.set(follower, came);
      flights.set(flight, followed);
      asking ??= setInterval(ask, ASK_EVERY_MS);
      // What was written between its first message and now is with others already.
      readSoon([followed]);
      return () => drop(follower);
    },
    nudge: (flight) => {
      const followed = flights.get(flight);
      if (followed) readSoon([followed]);
    },
    recheck: () => {
      if (flights.size > 0) inLine(() => look(everybody()));
    },
    heldBy: (flight, holder) => {
      let held = 0;
      for (const follower of flights.get(flight)?.followers.keys() ?? [])
        if (follower.holder === holder) held += 1;
      return held;
    },
    end: () => {
      for (const follower of everybody()) ended(follower);
    },
  };
}

/** Of one flight by its own row; of more, by those of their households: one question each. */
async function lastSeqs(records: Reads, which: readonly Followed[]): Promise<ReadonlyMap<string, number>> {
  const [first] = which;
  if (first && which.length === 1)
    return new Map([[first.flight, await lastSeq(records, first.household, first.flight)]]);
  const rows: (readonly [string, number])[] = [];
  for (const household of new Set(which.map((followed) => followed.household))) {
    for (const { id, seq } of await records.list("liveCount", household)) rows.push([id, seq]);
  }
  return new Map(rows);
}

const hubs = new WeakMap<object, Hub>();

/** The hub of a house in this process. */
export function hubOf(house: House): Hub {
  const hub = hubs.get(house) ?? createHub(house);
  hubs.set(house, hub);
  return hub;
}
