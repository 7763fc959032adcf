import { drawNonce, hex } from "@partsproof/core/sealing";
import { drawnMarks } from "./alone-marks.ts";
import { born } from "../birth.ts";
import { chanceOf } from "./chance.ts";
import { asksFrom, checkDraft } from "./flight-draft.ts";
import { designFrom } from "./design.ts";
import { drawnGlasses, drawnLayout } from "./drawn-layout.ts";
import { sealKey } from "./flight-key.ts";
import { knownFlight, sheetsOf } from "./flight-rows.ts";
import type { Asked, Handlers } from "../handler.ts";
import { hashToken, newToken } from "../ids.ts";
import { knownHousehold } from "../known.ts";
import { offerOf } from "./offer.ts";
import { pageOf } from "../pages.ts";
import { promiseOf } from "./promise.ts";
import type { House } from "../ports.ts";
import type { FlightKeyRow, FlightRow, SheetRow, TasterRow } from "../rows.ts";
import { type Shelf, shelfState } from "../shelf/index.ts";
import { showFlight, shownFlight, toldToTaster, tasterNames } from "./shown-flight.ts";

const MARKS = "ABCDEFGHIJ";

interface Set {
  readonly flight: FlightRow;
  /** One for each seat, named by whoever takes it. */
  readonly seated: readonly TasterRow[];
  readonly sheets: readonly SheetRow[];
  readonly key: FlightKeyRow | null;
}

/** Draws everything that is drawn for a flight whose draft has been checked. */
async function drawn(
  { house, at, body }: Asked<"addFlight">,
  shelf: Shelf,
  hashes: { readonly host: string; readonly pourer: string | null },
): Promise<Set> {
  const alone = body.pouring === "alone";
  const seated = Array.from(
    { length: body.seats },
    (_, i): TasterRow => ({
      ...born(house, at.household),
      name: `Seat ${i + 1}`,
      guest: true,
    }),
  );
  const tasterIds = [...body.tasterIds, ...seated.map(({ id }) => id)];
  const chance = chanceOf(house);
  const glasses = drawnGlasses(body, shelf, chance);
  const head = born(house, at.household);
  // Ids drawn in one millisecond sort by their random tail: sorted here, the sheets stand as the host named them.
  const heads = tasterIds.map(() => born(house, at.household)).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const sheetIds = heads.map(({ id }) => id);
  // The nonce first: drawn after the codes it could be chosen to suit them.
  const nonce = alone ? null : drawNonce(chance);
  const layout = alone ? null : drawnLayout(body, shelf, glasses, sheetIds, chance);
  const key = layout?.key ?? null;
  const marked = alone ? drawnMarks(body, glasses, chance) : null;
  const places = (marked?.glasses ?? []).map((_, i) => String(i + 1));
  const design = designFrom(body, shelf, (layout ?? marked)?.said ?? []);
  const references = design.reference ? Math.max(1, design.setsEach) : 0;
  const flight: FlightRow = {
    ...head,
    name: body.name,
    pouring: body.pouring,
    state: "pouring",
    question: body.question,
    design,
    glassCount: design.glassesEach + references,
    pourMl: body.pourMl,
    ...offerOf(shelf, asksFrom(body, shelf)),
    targetNameId: body.targetNameId,
    pourer: body.pourer,
    marks: (marked?.glasses ?? []).map((glass, i) => ({
      mark: MARKS.charAt(i),
      nameId: glass.nameId,
      label: shelf.vessels.get(glass.vesselId)?.label ?? "",
      vesselId: glass.vesselId,
    })),
    hostTokenHash: hashes.host,
    pourerTokenHash: hashes.pourer,
    pouredAt: null,
    revealedAt: null,
    commitment: key && nonce ? promiseOf(house, head.id, key, nonce) : null,
    closing: null,
  };
  return {
    flight,
    seated,
    sheets: heads.map((own, i) => ({
      ...own,
      flightId: flight.id,
      tasterId: tasterIds[i] ?? "",
      state: "free",
      tokenHash: null,
      order: layout?.orders[i] ?? places,
      notes: [],
      guesses: [],
      ranking: null,
      undersides: null,
      lockedAt: null,
      entries: 0,
      answers: [],
      strengths: [],
      typedBy: null,
    })),
    key: key && {
      ...born(house, at.household),
      flightId: flight.id,
      sealed: await sealKey(house, flight.id, { ...key, ...(nonce ? { nonce: hex(nonce) } : {}) }),
      opened: null,
    },
  };
}

async function newTokens(house: House, alone: boolean) {
  const hostToken = newToken(house);
  const pourerToken = alone ? null : newToken(house);
  const hashes = {
    host: await hashToken(hostToken),
    pourer: pourerToken === null ? null : await hashToken(pourerToken),
  };
  return { hostToken, pourerToken, hashes };
}

export const flightHandlers: Handlers<"listFlights" | "addFlight" | "getFlight"> = {
  listFlights: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const names = await tasterNames(records, at.household);
      const page = await pageOf(
        query,
        (q) => records.list("flight", at.household, { ...q, newestFirst: true }),
        (row: FlightRow) => row,
      );
      const items = [];
      for (const row of page.items) items.push(shownFlight(row, await sheetsOf(records, row), names));
      return { items, next: page.next };
    }),

  addFlight: async (asked) => {
    const { house, at, body } = asked;
    const { hostToken, pourerToken, hashes } = await newTokens(house, body.pouring === "alone");
    return house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const shelf = await shelfState(records, at.household);
      const names = await tasterNames(records, at.household);
      checkDraft(body, shelf, names);
      const { flight, seated, sheets, key } = await drawn(asked, shelf, hashes);
      for (const taster of seated) await records.insert("taster", taster);
      await records.insert("flight", flight);
      for (const sheet of sheets) await records.insert("sheet", sheet);
      if (key) await records.insert("flightKey", key);
      const seats = new Map([...names, ...seated.map(({ id, name }) => [id, name] as const)]);
      return { flight: shownFlight(flight, sheets, seats), hostToken, pourerToken };
    });
  },

  getFlight: ({ house, at, who }) =>
    house.store.transaction(async (records) => {
      const flight = await showFlight(records, await knownFlight(records, at));
      return who.kind === "guest" && who.role === "taster" ? toldToTaster(flight) : flight;
    }),
};
