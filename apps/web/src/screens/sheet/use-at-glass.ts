import { useEffect } from "react";
import { api } from "../../api.ts";

/** Tells the table which glass is in hand, by its place in this taster's row; nothing hangs on its getting through. */
export function useAtGlass(
  at: { readonly household: string; readonly flight: string; readonly sheet: string },
  token: string,
  position: number | null,
): void {
  const { household, flight, sheet } = at;
  useEffect(() => {
    // Whoever leafs through the glasses is at none of them.
    const timer = setTimeout(() => {
      void api("atGlass", { at: { household, flight, sheet }, token, body: { position } }).catch(
        () => undefined,
      );
    }, 800);
    return () => clearTimeout(timer);
  }, [household, flight, sheet, token, position]);
}
