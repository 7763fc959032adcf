import { createApp } from "./http/index.ts";
import type { Door } from "./protocol/index.ts";
import { allHandlers, type House } from "./services/index.ts";

export interface OpenHouse {
  /** The one door: everything talks to the household's data through it. */
  readonly fetch: Door;
  close(): Promise<void>;
}

/**
 * Opens a house over a store. The same function serves the Node server, the CLI in its own process and,
 * later, a service worker; so nothing below it uses a built-in of Node.
 *
 * @param house its store, clock, source of random bytes, and the 32-byte key that seals flights
 */
export function openHouse(house: House): OpenHouse {
  const app = createApp(house, allHandlers);
  return { fetch: async (request) => app.fetch(request), close: () => house.store.close() };
}
