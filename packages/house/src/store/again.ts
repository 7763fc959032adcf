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
 * Runs a transaction until it is in nobody's way: first among its neighbours, then, once it had to give way, alone.
 * Otherwise short transactions would break a long one over and over, for as long as there are any.
 */
export async function untilDone<T>(attempt: (alone: boolean) => Promise<T>): Promise<T> {
  for (let time = 0; ; time++) {
    try {
      return await attempt(time > 0);
    } catch (error) {
      if (!mayRunAgain(error)) throw error;
      if (time === MOST_TIMES) {
        throw new Error(
          `transaction requires to be out of others' way in ${MOST_TIMES + 1} attempts, got refused each time`,
          { cause: error },
        );
      }
    }
    const pause = Math.min(2 ** time, LONGEST_PAUSE_MS) * Math.random();
    await new Promise<void>((resolve) => setTimeout(resolve, pause));
  }
}

function mayRunAgain(error: unknown): boolean {
  return error instanceof Error && "code" in error && MAY_RUN_AGAIN.has(String(error.code));
}
