import type { FlightRecord } from "../../protocol/index.ts";
import { entriesOfFlight, keyRowOf, knownFlight, recordOf, sheetsOf } from "../flights/index.ts";
import type { Handlers } from "../handler.ts";

export const recordHandlers: Handlers<"getRecord"> = {
  /** P4: the promise at once, the closing when there is one, and all that is needed to check both after the reveal. */
  getRecord: ({ house, at }) =>
    house.store.transaction(async (records): Promise<FlightRecord> => {
      const flight = await knownFlight(records, at);
      const { commitment, closing, state } = flight;
      const opened = state === "revealed" ? ((await keyRowOf(records, flight))?.opened ?? null) : null;
      const record =
        opened &&
        recordOf(flight, opened, await sheetsOf(records, flight), await entriesOfFlight(records, flight));
      return {
        flightId: flight.id,
        commitment,
        closing: closing && { closedAt: closing.closedAt, hash: closing.hash },
        record,
      } as FlightRecord;
    }),
};
