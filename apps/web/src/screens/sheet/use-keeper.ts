import type { Sheet } from "@partsproof/house/protocol";
import { useEffect, useMemo, useSyncExternalStore } from "react";
import { api } from "../../api.ts";
import { keep, kept } from "../../session/index.ts";
import { Keeper, type Keeping, type Unsaved } from "./keeper.ts";

const unsavedKey = (sheetId: string): string => `unsaved.${sheetId}`;

function unsavedOf(sheetId: string): Unsaved | null {
  try {
    return JSON.parse(kept(unsavedKey(sheetId)) ?? "null") as Unsaved | null;
  } catch {
    return null;
  }
}

/** A keeper for the sheet on this page; saves at once when the page goes out of sight. */
export function useKeeper(sheet: Sheet, household: string, token: string): [Keeping, Keeper] {
  const keeper = useMemo(() => {
    const at = { household, flight: sheet.flightId, sheet: sheet.id };
    return new Keeper({
      sheet,
      send: (body) => api("editSheet", { at, token, body }),
      reread: () => api("getSheet", { at, token }),
      store: (unsaved) => keep(unsavedKey(sheet.id), unsaved === null ? null : JSON.stringify(unsaved)),
      unsaved: unsavedOf(sheet.id),
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
    document.addEventListener("visibilitychange", hidden);
    return () => {
      document.removeEventListener("visibilitychange", hidden);
      void keeper.flush();
      keeper.stop();
    };
  }, [keeper]);
  return [useSyncExternalStore(keeper.subscribe, keeper.see), keeper];
}
