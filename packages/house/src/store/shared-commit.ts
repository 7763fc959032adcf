import { type Kysely, sql } from "kysely";
import type { Database } from "./query.ts";
import { immediate } from "./transaction.ts";

type Work<T> = (db: Kysely<Database>) => Promise<T>;

/** How many transactions share a commit at most, and for how long one waits for more. */
const MOST_TOGETHER = 64;
const LONGEST_MS = 10;

interface Job {
  readonly work: Work<unknown>;
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
}

type Outcome = { readonly job: Job } & (
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly error: unknown }
);

/**
 * SQLite: transactions that wait for each other share one commit, for it is the commit that takes long. Each runs in a
 * savepoint of its own, whole or not at all, one after the other; all are answered when the commit is on the disk.
 */
export function sharedCommits(db: Kysely<Database>): <T>(work: Work<T>) => Promise<T> {
  const waiting: Job[] = [];
  let running = false;

  const run = async (): Promise<void> => {
    running = true;
    try {
      while (waiting.length > 0) await db.connection().execute((connection) => together(connection, waiting));
    } catch (error) {
      // No connection is to be had: the store was closed.
      for (const { reject } of waiting.splice(0)) reject(error);
    } finally {
      running = false;
    }
  };

  return <T>(work: Work<T>) =>
    new Promise<T>((resolve, reject) => {
      waiting.push({ work, resolve: resolve as Job["resolve"], reject });
      if (!running) void run();
    });
}

async function together(connection: Kysely<Database>, waiting: Job[]): Promise<void> {
  const outcomes: Outcome[] = [];
  const began = performance.now();
  try {
    await sql`begin immediate`.execute(connection);
    for (let job = waiting.shift(); job !== undefined; job = waiting.shift()) {
      outcomes.push(await apart(connection, job));
      if (outcomes.length === MOST_TOGETHER || performance.now() - began > LONGEST_MS) break;
    }
    await sql`commit`.execute(connection);
  } catch (error) {
    await sql`rollback`.execute(connection).catch(() => undefined);
    return outcomes.length === 0
      ? waiting.shift()?.reject(error)
      : oneByOne(
          connection,
          outcomes.map(({ job }) => job),
        );
  }
  for (const outcome of outcomes) {
    if (outcome.ok) outcome.job.resolve(outcome.value);
    else outcome.job.reject(outcome.error);
  }
}

/** Its failure undoes its own writes only. Throws where SQLite has given up the whole transaction, as on a full disk. */
async function apart(connection: Kysely<Database>, job: Job): Promise<Outcome> {
  await sql`savepoint one`.execute(connection);
  let outcome: Outcome;
  try {
    outcome = { job, ok: true, value: await job.work(connection) };
  } catch (error) {
    outcome = { job, ok: false, error };
  }
  if (!outcome.ok) await sql`rollback to one`.execute(connection);
  await sql`release one`.execute(connection);
  return outcome;
}

/** The commit was refused, for a row that names none say: whose it is shows when each has a commit of its own. */
async function oneByOne(connection: Kysely<Database>, jobs: readonly Job[]): Promise<void> {
  for (const { work, resolve, reject } of jobs) await immediate(connection, work).then(resolve, reject);
}
