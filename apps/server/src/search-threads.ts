import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import {
  HouseRefusal,
  type Question,
  type QuestionKind,
  type Questions,
  type Searching,
  type Watch,
} from "@partsproof/house/services";

export interface ThreadAsked {
  readonly question: Question;
  readonly seconds: number;
}
type Progress = Parameters<NonNullable<Watch["onProgress"]>>[0];
export type ThreadSaid =
  | { readonly kind: "progress"; readonly progress: Progress }
  | { readonly kind: "answer"; readonly answer: Questions[QuestionKind]["answer"] }
  | { readonly kind: "failed"; readonly stack: string };

export interface SearchThreads extends Searching {
  /** Ends every thread; what is still asked of them fails. */
  close(): Promise<void>;
}

/** One thread stays free for the house itself where there is more than one. */
const MOST_THREADS = Math.max(1, Math.min(2, availableParallelism() - 1));
const MOST_WAITING = 16;
/** What comes after the search itself, such as why there is no recipe, may go on for so long. */
const PATIENCE_S = 10;
const MOST_MEMORY_MB = 512;

interface Job {
  readonly asked: ThreadAsked;
  readonly watch: Watch;
  readonly done: (answer: never) => void;
  readonly failed: (error: Error) => void;
}

interface Running {
  readonly job: Job;
  /** The thread is no longer at it. */
  readonly over: () => void;
}

/** Searches in threads of their own, a few at a time, the others waiting their turn. A thread is kept for the next question. */
export function searchThreads(): SearchThreads {
  const idle: Worker[] = [];
  const busy = new Map<Worker, Running>();
  const waiting: Job[] = [];

  const next = (): void => {
    while (waiting.length > 0 && busy.size < MOST_THREADS) {
      const job = waiting.shift();
      if (job) run(job, idle.pop() ?? newThread());
    }
  };
  const leave = (job: Job): void => {
    const at = waiting.indexOf(job);
    if (at >= 0) waiting.splice(at, 1);
    for (const [worker, running] of busy) if (running.job === job) end(worker, running);
  };
  /** A thread in the midst of something cannot be told to stop; it is ended. */
  const end = (worker: Worker, running: Running): void => {
    void worker.terminate();
    running.over();
  };
  const run = (job: Job, worker: Worker): void => {
    const over = (): void => {
      clearTimeout(late);
      worker.off("message", onMessage).off("error", onError).unref();
      busy.delete(worker);
      next();
    };
    const onMessage = (said: ThreadSaid): void => {
      if (said.kind === "progress") return job.watch.onProgress?.(said.progress);
      idle.push(worker);
      over();
      if (said.kind === "answer") job.done(said.answer as never);
      else job.failed(new Error(`a search failed: ${said.stack}`));
    };
    const onError = (error: Error): void => {
      over();
      job.failed(error);
    };
    const running = { job, over };
    const late = setTimeout(
      () => {
        end(worker, running);
        job.failed(tooLong(job.asked.seconds));
      },
      (job.asked.seconds + PATIENCE_S) * 1000,
    );
    busy.set(worker, running);
    worker.on("message", onMessage).on("error", onError).ref();
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread's port has no origin; ends with that rule knowing worker_threads
    worker.postMessage(job.asked);
  };

  return {
    answer: <K extends QuestionKind>(question: Question<K>, watch: Watch) =>
      new Promise<Questions[K]["answer"]>((resolve, reject) => {
        const { signal } = watch;
        if (signal?.aborted === true) return reject(gone());
        if (waiting.length >= MOST_WAITING) return reject(tooManyWait());
        const settle =
          <T extends unknown[]>(finish: (...given: T) => void) =>
          (...given: T): void => {
            signal?.removeEventListener("abort", onAbort);
            finish(...given);
          };
        const asked = { question: question as Question, seconds: watch.seconds };
        const job: Job = { asked, watch, done: settle(resolve), failed: settle(reject) };
        const onAbort = (): void => {
          leave(job);
          job.failed(gone());
        };
        signal?.addEventListener("abort", onAbort);
        waiting.push(job);
        next();
      }),
    close: async () => {
      for (const job of waiting.splice(0)) job.failed(gone());
      const ended = [...idle.splice(0), ...busy.keys()].map((worker) => worker.terminate());
      for (const { job, over } of busy.values()) {
        over();
        job.failed(gone());
      }
      await Promise.all(ended);
    },
  };
}

function newThread(): Worker {
  const worker = new Worker(new URL("./search-thread.ts", import.meta.url), {
    execArgv: [],
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
  });
  // A process that has nothing else to do may end.
  worker.unref();
  return worker;
}

const gone = (): DOMException => new DOMException("whoever asked has gone", "AbortError");

function tooLong(seconds: number): HouseRefusal {
  const limit = `an answer within ${seconds} s`;
  const message = `the search requires ${limit}, got none: fewer bottles, parts or rules, or more seconds`;
  return new HouseRefusal(422, [
    { code: "search_too_long", path: ["seconds"], limit, received: seconds, message },
  ]);
}

function tooManyWait(): HouseRefusal {
  const limit = `at most ${MOST_WAITING} searches that wait`;
  const message = `the house requires ${limit}, got one more: ask again in a while`;
  return new HouseRefusal(
    429,
    [{ code: "too_many_searches", path: [], limit, received: MOST_WAITING + 1, message }],
    10,
  );
}
