import type { Sheet } from "@partsproof/house/protocol";
import { useEffect, useMemo, useSyncExternalStore } from "react";
import { api, inTime } from "../../api.ts";
import { drawKey, kept, storeReceipt } from "../../session/index.ts";
import { paperKey } from "../flights/paths.ts";
import { keepSheet } from "./kept-sheet.ts";
import { Keeper, type Keeping } from "./keeper.ts";
import { outboxOf, storeOutbox } from "./outbox.ts";

/** A keeper for the sheet on this page; sends at once when the page goes out of sight or the network comes back. */
export function useKeeper(sheet: Sheet, household: string, token: string): [Keeping, Keeper] {
  const keeper = useMemo(() => {
    const at = { household, flight: sheet.flightId, sheet: sheet.id };
    const typedBy = kept(paperKey(sheet.id));
    return new Keeper({
      sheet,
      ...(typedBy === null ? {} : { typedBy }),
      send: async (body) => {
        const answer = await inTime((signal) => api("addEntry", { at, token, body, signal }));
        // What opens without a network must know all that this phone has sent, or it would take it for another device's.
        await keepSheet(answer.sheet);
        return answer;
      },
      reread: () => inTime((signal) => api("getSheet", { at, token, signal })),
      load: () => outboxOf(sheet.id),
      store: (outbox) => storeOutbox(sheet.id, outbox),
      drawKey,
      accepted: ({ number, hash }) => {
        if (hash !== null) storeReceipt(sheet.flightId, { sheet: sheet.id, entry: number, hash });
      },
    });
    // One keeper a sheet and token; later answers for the sheet are offered to it.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [sheet.id, household, token]);
  useEffect(() => keeper.offer(sheet), [keeper, sheet]);
  useEffect(() => {
    keeper.start();
    const hidden = (): void => {
      if (document.visibilityState === "hidden") void keeper.flush();
    };
    const online = (): void => void keeper.flush();
    document.addEventListener("visibilitychange", hidden);
    globalThis.addEventListener("online", online);
    return () => {
      document.removeEventListener("visibilitychange", hidden);
      globalThis.removeEventListener("online", online);
      void keeper.flush();
      keeper.stop();
    };
  }, [keeper]);
  return [useSyncExternalStore(keeper.subscribe, keeper.see), keeper];
}
