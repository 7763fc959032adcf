import { DAY_MS } from "@partsproof/core/quantity";
/** After a day a lost host's token holds nothing up any more (services, F6 and F11). */
export function aDaySince(instant: string | null, now: number): boolean {
  return instant !== null && now - Date.parse(instant) >= DAY_MS;
}
