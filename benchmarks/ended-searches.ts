import { setTimeout as wait } from "node:timers/promises";
import { openReckoner } from "@partsproof/house/reckoner";
import { answerHere } from "@partsproof/house/services";
import { searchThreads } from "../apps/server/src/search-threads.ts";
import { boundedTable } from "./bounded-table.ts";
import { middle } from "./middle.ts";
import { wideSearch } from "./wide-search.ts";

// How soon a search ends whose time is over or whose caller has gone, and how free this thread is while another searches.

const GIVEN_MS = 200;
/** As many steps go between two looks at the clock as a shelf of 400 takes some 100 ms for, and the first and last take their time. */
const LATE_MS = 400;
const LEFT_MS = 100;
const HELD_UP_MS = 50;
const ROUNDS = 5;

const medianOf = async (once: () => Promise<number>): Promise<number> => {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) times.push(await once());
  return middle(times);
};

const ask = (seconds: number, signal?: AbortSignal): Promise<Response> =>
  openReckoner()(
    new Request(`http://reckoner.bench/api/search?seconds=${seconds}`, {
      method: "POST",
      body: JSON.stringify(wideSearch(400)),
      ...(signal === undefined ? {} : { signal }),
    }),
  );

async function lateByTime(): Promise<number> {
  const from = performance.now();
  const answer = (await (await ask(GIVEN_MS / 1000)).json()) as { readonly provenOptimal: boolean };
  if (answer.provenOptimal) throw new Error("a search to end requires one that goes on, got a proof");
  return performance.now() - from - GIVEN_MS;
}

/** From the moment the caller goes. */
async function lateByLeaving(begin: (signal: AbortSignal) => Promise<unknown>): Promise<number> {
  const leaving = new AbortController();
  const asked = begin(leaving.signal).catch((error: unknown) => error);
  await wait(GIVEN_MS);
  const from = performance.now();
  leaving.abort();
  await asked;
  return performance.now() - from;
}

/** The longest this thread is held up while something goes on, by a beat of 5 ms. */
async function heldUp(during: () => Promise<unknown>): Promise<number> {
  let longest = 0;
  let last = performance.now();
  const beat = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  await during();
  clearInterval(beat);
  return longest;
}

/** How many bounds were missed. */
export async function benchEndedSearches(): Promise<number> {
  const threads = searchThreads();
  const question = { kind: "recipes", problem: wideSearch(200) } as const;
  const inThread = (signal: AbortSignal) => threads.answer(question, { seconds: 60, signal });
  try {
    const late = await medianOf(lateByTime);
    const left = await medianOf(() => lateByLeaving((signal) => ask(60, signal)));
    const leftThread = await medianOf(() => lateByLeaving(inThread));
    const beside = await heldUp(() => answerHere(question, { seconds: 2 }));
    const free = await medianOf(() => heldUp(() => threads.answer(question, { seconds: 1 })));
    return boundedTable(`searches ended, medians of ${ROUNDS}`, [
      { name: `past its ${GIVEN_MS} ms`, value: late, unit: "ms", most: LATE_MS },
      { name: "past its caller's leaving", value: left, unit: "ms", most: LEFT_MS },
      { name: "past its caller's leaving, in a thread", value: leftThread, unit: "ms", most: LEFT_MS },
      {
        name: "longest held up while a thread searches",
        value: free,
        unit: "ms",
        most: HELD_UP_MS,
        beside: `${beside.toFixed(0)} ms where this thread searches itself`,
      },
    ]);
  } finally {
    await threads.close();
  }
}
