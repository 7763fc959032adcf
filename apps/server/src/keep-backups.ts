import { join } from "node:path";
import { backUp, readBackups } from "./back-up.ts";
import type { OpenedHouse } from "./open-house.ts";

/** Looks so often whether a backup is due: a machine that slept is not late by a day. */
const LOOK_MS = 15 * 60_000;

export interface KeptBackups {
  /** For the lines at the start; null where none are kept. */
  readonly says: string | null;
  /** After the one that is being written. */
  stop(): Promise<void>;
}

/** Backs up at the start and whenever one is due. One that fails is told and tried again; the house goes on. */
export function keepBackups(house: OpenedHouse, env: NodeJS.ProcessEnv): KeptBackups {
  const settings = readBackups(env);
  if (settings === null) return { says: null, stop: async () => {} };
  const folder = join(house.dataFolder, "backups");
  let running = Promise.resolve();
  const look = (): void => {
    running = running.then(async () => {
      try {
        await backUp(house.fetch, folder, settings, new Date());
      } catch (error) {
        console.error(`A backup into ${folder} failed:`, error instanceof Error ? error.message : error);
      }
    });
  };
  look();
  const timer = setInterval(look, LOOK_MS);
  timer.unref();
  return {
    says: `Backups: ${folder}, every ${settings.hours} h, the last ${settings.keep} of each household`,
    stop: () => {
      clearInterval(timer);
      return running;
    },
  };
}
