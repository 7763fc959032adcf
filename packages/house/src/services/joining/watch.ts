import type { LiveMessage, LiveState, Watched } from "../../protocol/index.ts";
import {
  type Doors,
  designOf,
  knownFlight,
  needToken,
  roleAt,
  seatedNames,
  sheetsOf,
} from "../flights/index.ts";
import { hashToken } from "../ids.ts";
import type { Asked, Handlers, LiveFeed, StreamHandlers, Who } from "../handler.ts";
import { limitsOf } from "../limits/index.ts";
import { eventsOf, type Follower, happened, hubOf, lastSeq } from "../live/index.ts";
import type { House, Reads, Records } from "../ports.ts";
import { refuse, tooMany } from "../refuse.ts";
import type { FlightRow } from "../rows.ts";
import { sessionStands } from "../sessions/index.ts";

/** L7: a phone has a page or two open; a token that holds more than this is in other hands, or a page runs wild. */
const MOST_STREAMS = 20;
const STREAM_PAUSE_MS = 15_000;

/** J8: a watcher is told who sits where and who has locked, not where they are. */
const tellsGlasses = (who: Who): boolean => who.kind !== "guest" || who.role !== "watcher";

const wantsOf = (who: Who): Follower["wants"] =>
  tellsGlasses(who) ? () => true : ({ what }) => what !== "at a glass";

async function standing(records: Records, flight: FlightRow, who: Who, seq: number): Promise<LiveState> {
  const sheets = await sheetsOf(records, flight);
  const names = await seatedNames(records, sheets);
  const events = await eventsOf(records, flight.householdId, flight.id);
  const last = (what: string, sheetId: string | null): number | null =>
    events.findLast((event) => event.what === what && event.sheetId === sheetId)?.number ?? null;
  return {
    kind: "state",
    seq,
    state: flight.state as LiveState["state"],
    seats: sheets.map((sheet) => ({
      sheetId: sheet.id,
      taster: names.get(sheet.tasterId) ?? "",
      state: sheet.state as LiveState["seats"][number]["state"],
      position: tellsGlasses(who) && sheet.state === "open" ? last("at a glass", sheet.id) : null,
    })),
    opened: last("glass opened", null) ?? 0,
  };
}

/** L3: what a stream begins with: the events missed, or how the table stands where they are not all kept. */
async function begun(records: Records, flight: FlightRow, { who, lastEventId }: Asked<"followFlight">) {
  const seq = await lastSeq(records, flight.householdId, flight.id);
  if (lastEventId !== null && lastEventId <= seq) {
    const missed = (await eventsOf(records, flight.householdId, flight.id)).filter(
      (event) => event.seq > lastEventId,
    );
    if (missed.length === seq - lastEventId) return { first: missed.filter(wantsOf(who)), seq };
  }
  return { first: [await standing(records, flight, who, seq)], seq };
}

/** L5: looked at again while the stream stands. */
const mayFollow =
  (flight: Doors, who: Who, token: string | null, { clock }: Pick<House, "clock">) =>
  async (records: Reads): Promise<boolean> => {
    if (who.kind === "here") return true;
    if (who.kind === "owner") return sessionStands(records, who.sessionId, clock.now());
    if (who.kind === "stranger" || token === null) return false;
    const role = await roleAt(records, flight, token);
    return role?.role === who.role;
  };

/**
 * What a stream keeps for as long as it stands is what is given here. In the scope of its request it would keep the request, the
 * answer and the flight's whole row too, and there are thousands of streams.
 */
function feedOf(house: House, follower: Omit<Follower, "sink">, begins: readonly LiveMessage[]): LiveFeed {
  let first = begins;
  return {
    open: (sink) => {
      for (const message of first) sink.send(message);
      first = [];
      return hubOf(house).follow({ ...follower, sink });
    },
  };
}

export const followHandlers: StreamHandlers = {
  followFlight: async (asked) => {
    const { house, at, who, token } = asked;
    const holder = who.kind === "guest" && token !== null ? await hashToken(token) : null;
    if (holder !== null && hubOf(house).heldBy(at["flight"] ?? "", holder) >= MOST_STREAMS)
      tooMany("one more stream of events", STREAM_PAUSE_MS);
    const { flight, first, seq } = await house.store.transaction(async (records) => {
      const known = await knownFlight(records, at);
      return { flight: known, ...(await begun(records, known, asked)) };
    });
    const { id, householdId, hostTokenHash, pourerTokenHash } = flight;
    const doors = { id, householdId, hostTokenHash, pourerTokenHash };
    const may = mayFollow(doors, who, token, house);
    const wants = wantsOf(who);
    return feedOf(house, { household: householdId, flight: id, sent: seq, holder, wants, may }, first);
  },
};

/** J8: how many sets there are, and not what is asked of them. */
function layoutOf(flight: FlightRow): Watched["layout"] {
  const { method, setsEach, glassesEach } = designOf(flight);
  return { method, setsEach, glassesEach };
}

export const watchHandlers: Handlers<"watchFlight" | "atGlass" | "openGlass"> = {
  watchFlight: ({ house, at }) =>
    house.store.transaction(async (records): Promise<Watched> => {
      const flight = await knownFlight(records, at);
      const sheets = await sheetsOf(records, flight);
      const names = await seatedNames(records, sheets);
      return {
        flightId: flight.id,
        flightName: flight.name,
        state: flight.state as Watched["state"],
        layout: layoutOf(flight),
        seats: sheets.map(({ tasterId, state, lockedAt }) => ({
          taster: names.get(tasterId) ?? "",
          state: state as Watched["seats"][number]["state"],
          lockedAt,
        })),
      };
    }),

  atGlass: ({ house, at, body, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const sheet = await records.find("sheet", at.household, at["sheet"] ?? "");
      await needToken(token, sheet?.flightId === flight.id ? sheet.tokenHash : null);
      if (!sheet || sheet.state !== "open" || flight.state !== "tasting") return undefined;
      const wait = limitsOf(house).glassTurned(sheet.id, house.clock.now().getTime());
      if (wait > 0) tooMany("turning to another glass", wait);
      const number = body.position;
      if (number !== null && number > sheet.order.length) {
        refuse(422, {
          code: "position_too_large",
          path: ["position"],
          limit: `at most ${sheet.order.length}`,
          received: number,
          message: `a glass in hand requires a position of at most ${sheet.order.length}, got ${number}`,
        });
      }
      await happened(records, house, flight, "at a glass", { sheetId: sheet.id, number });
      return undefined;
    }),

  /** L4. The glasses of the finding open together; what they say anybody may read by then. */
  openGlass: ({ house, at, body, token, who }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      if (who.kind === "guest") await needToken(token, flight.hostTokenHash);
      if (flight.state !== "revealed") {
        refuse(409, {
          code: "not_revealed",
          path: ["flight"],
          limit: "a flight that is revealed",
          received: flight.state,
          message: `opening a glass requires a flight that is revealed, got one that is ${flight.state}`,
        });
      }
      await happened(records, house, flight, "glass opened", { number: body.count });
      return undefined;
    }),
};
