import { createApp } from "./http/index.ts";
import { allHandlers, allStreams, type Caller, type House, hubOf } from "./services/index.ts";

export interface OpenHouse {
  /**
   * The one door: everything talks to the household's data through it.
   *
   * @param caller where the request comes from; left out by whoever opened the house in their own process
   */
  readonly fetch: (request: Request, caller?: Caller) => Promise<Response>;
  /** Ends every stream of live events, so that a server can stop. */
  hush(): void;
  close(): Promise<void>;
}

/**
 * Opens a house over a store. The same function serves the Node server, the CLI in its own process and,
 * later, a service worker; so nothing below it uses a built-in of Node.
 *
 * @param house its store, clock, source of random bytes, and the 32-byte key that seals flights
 */
export function openHouse(house: House): OpenHouse {
  const app = createApp(house, allHandlers, allStreams);
  const hush = (): void => hubOf(house).end();
  return {
    fetch: async (request, caller) => app.fetch(request, caller === undefined ? {} : { caller }),
    hush,
    close: () => {
      hush();
      return house.store.close();
    },
  };
}
