import type { Handlers } from "./handler.ts";

export const healthHandlers: Handlers<"health"> = {
  /** Reads the database, so that a house that cannot is not told to be well. */
  health: async ({ house }) => {
    await house.store.transaction((records) => records.households({ limit: 1 }));
    return { ok: true, database: house.store.database };
  },
};
