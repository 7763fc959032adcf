/** How often a transaction is tried again before it is given up. */
const MOST_TIMES = 60;
const LONGEST_PAUSE_MS = 200;

/** Codes of a transaction that was refused for its neighbours' sake and may be run again as it is. */
const MAY_RUN_AGAIN = new Set([
  "40001", // PostgreSQL: serialization failure
  "40P01", // PostgreSQL: deadlock
  "SQLITE_BUSY", // another process holds the file
  "SQLITE_BUSY_SNAPSHOT",
  "SQLITE_BUSY_TIMEOUT",
]);

/**
 * Runs a transaction until it is not in anybody's way. Those that must run again wait in one line, so that a crowd
 * of writers thins out instead of breaking each other over and over.
 */
export function inLine(): <T>(attempt: () => Promise<T>) => Promise<T> {
  let line: Promise<unknown> = Promise.resolve();
  return async <T>(attempt: () => Promise<T>): Promise<T> => {
    try {
      return await attempt();
    } catch (error) {
      if (!mayRunAgain(error)) throw error;
    }
    const turn = line.then(() => again(attempt));
    line = turn.catch(() => undefined);
    return await turn;
  };
}

async function again<T>(attempt: () => Promise<T>): Promise<T> {
  for (let time = 1; ; time++) {
    const pause = Math.min(2 ** time, LONGEST_PAUSE_MS) * Math.random();
    await new Promise<void>((resolve) => setTimeout(resolve, pause));
    try {
      return await attempt();
    } catch (error) {
      if (!mayRunAgain(error)) throw error;
      if (time === MOST_TIMES) {
        throw new Error(
          `transaction requires to be out of others' way in ${MOST_TIMES + 1} attempts, got refused each time`,
          { cause: error },
        );
      }
    }
  }
}

function mayRunAgain(error: unknown): boolean {
  return error instanceof Error && "code" in error && MAY_RUN_AGAIN.has(String(error.code));
}
