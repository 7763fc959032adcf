import type { PourList } from "../../protocol/index.ts";
import type { z } from "zod";
import { pouredGlasses, unsealedKey } from "./flight-key.ts";
import { aDayAfter, changed, keepFlight, keyRowOf, knownFlight, needState, sheetsOf } from "./flight-rows.ts";
import { closeJoiningsOf, needPourer } from "./guests.ts";
import type { Handlers } from "../handler.ts";
import { happened } from "../live/index.ts";
import type { Records } from "../ports.ts";
import type { FlightRow } from "../rows.ts";
import { seatedNames, showFlight } from "./shown-flight.ts";
import { needToken } from "./tokens.ts";
import { trail } from "../trail/index.ts";

/** The taster of a flight poured alone is the one who knows that it is poured. */
async function needWhoPoured(records: Records, flight: FlightRow, token: string | null): Promise<void> {
  if (flight.pouring !== "alone") return needPourer(records, flight, token);
  const [sheet] = await sheetsOf(records, flight);
  await needToken(token, sheet?.tokenHash ?? null);
}

export const pouringHandlers: Handlers<"getPourList" | "markPoured" | "callOffFlight"> = {
  getPourList: ({ house, at, token }) =>
    house.store.transaction(async (records): Promise<z.infer<typeof PourList>> => {
      const flight = await knownFlight(records, at);
      await needPourer(records, flight, token);
      if (flight.state !== "pouring") needState(flight, "the pour list", "tasting");
      const key = await unsealedKey(house, flight, await keyRowOf(records, flight));
      const sheets = await sheetsOf(records, flight);
      const names = await seatedNames(records, sheets);
      const vessels = await records.list("vessel", flight.householdId);
      const labels = new Map(vessels.map(({ id, label }) => [id, label]));
      const vesselIdOf = (glass: number): string => key.glasses[glass]?.vesselId ?? "";
      return {
        flightId: flight.id,
        pourMl: flight.pourMl,
        totals: [...pouredGlasses(key)].map(([vesselId, glasses]) => ({
          vesselId,
          label: labels.get(vesselId) ?? "",
          ml: flight.pourMl * glasses,
        })),
        tasters: sheets.map((sheet) => ({
          taster: names.get(sheet.tasterId) ?? "",
          glasses: key.codes
            .filter(({ sheetId }) => sheetId === sheet.id)
            .map(({ code, glass, set }) => ({
              set: set ?? null,
              // 0 for "R", which is no glass of the sheet's own (Q12).
              position: sheet.order.indexOf(code) + 1,
              code,
              vesselId: vesselIdOf(glass),
              label: labels.get(vesselIdOf(glass)) ?? "",
            })),
        })),
      };
    }),

  markPoured: ({ house, at, token }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      await needWhoPoured(records, flight, token);
      needState(flight, "saying that the glasses are poured", "pouring");
      const now = house.clock.now();
      const poured = changed(flight, now, { state: "tasting", pouredAt: now.toISOString() });
      await keepFlight(records, poured);
      await happened(records, house, flight, "poured");
      return showFlight(records, poured);
    }),

  callOffFlight: ({ house, at, token, caller }) =>
    house.store.transaction(async (records) => {
      const flight = await knownFlight(records, at);
      const now = house.clock.now();
      if (!aDayAfter(flight.createdAt, now)) await needToken(token, flight.hostTokenHash);
      needState(flight, "calling a flight off", "pouring");
      const key = await keyRowOf(records, flight);
      if (key) await records.remove("flightKey", flight.householdId, key.id);
      const calledOff = changed(flight, now, { state: "called off", holds: [] });
      await keepFlight(records, calledOff);
      await closeJoiningsOf(records, house, flight);
      await happened(records, house, flight, "called off");
      await trail(records, house, "flight called off", {
        caller,
        household: at.household,
        flight: flight.id,
      });
      return showFlight(records, calledOff);
    }),
};
