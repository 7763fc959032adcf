import type { Finding, FindingLine } from "../../protocol/index.ts";
import { keyRowOf, knownFlight, sheetsOf, type TasterNames, tasterNames } from "../flights/index.ts";
import { found } from "./found.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import type { House, Records } from "../ports.ts";
import { refuse } from "../refuse.ts";
import type { FlightRow } from "../rows.ts";

async function findingOf(records: Records, flight: FlightRow, names: TasterNames): Promise<Finding> {
  const key = (await keyRowOf(records, flight))?.opened;
  if (!key) throw new Error(`a revealed flight requires its opened key, flight ${flight.id} has none`);
  return found(flight, key, await sheetsOf(records, flight), names);
}

type Line = Pick<FindingLine, "tasters" | "headline">;

/**
 * Lines reckoned before, by flight. What is revealed never changes and ids are never given twice; but an exact
 * Friedman test of a large panel takes a second, too long for each flight of a list each time.
 */
const reckoned = new WeakMap<House, Map<string, Line>>();

async function lineOf(
  house: House,
  records: Records,
  flight: FlightRow,
  names: TasterNames,
): Promise<FindingLine> {
  const lines = reckoned.get(house) ?? new Map<string, Line>();
  reckoned.set(house, lines);
  let line = lines.get(flight.id);
  if (!line) {
    const { sheets, headline } = await findingOf(records, flight, names);
    line = { tasters: sheets.length, headline };
    lines.set(flight.id, line);
  }
  const { id: flightId, name, revealedAt, glassCount: glasses } = flight;
  return { flightId, name, revealedAt: revealedAt ?? "", glasses, ...line };
}

/** F12: 409 before the reveal, the same for every caller. */
export function needRevealed({ state }: FlightRow): void {
  if (state === "revealed") return;
  refuse(409, {
    code: "not_revealed",
    path: ["flight"],
    limit: "a flight that is revealed",
    received: state,
    message: `the finding requires a flight that is revealed, got one that is ${state}`,
  });
}

export const findingHandlers: Handlers<"getFinding" | "listFindings"> = {
  getFinding: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      needRevealed(flight);
      return findingOf(records, flight, await tasterNames(records, at.household));
    }),

  listFindings: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const names = await tasterNames(records, at.household);
      const page = await pageOf(
        query,
        (q) =>
          records.list("flight", at.household, { ...q, where: { state: "revealed" }, newestFirst: true }),
        (row: FlightRow) => row,
      );
      const items = [];
      for (const flight of page.items) items.push(await lineOf(house, records, flight, names));
      return { items, next: page.next };
    }),
};
