import { constants } from "node:os";

type Task = () => void | Promise<void>;

const tasks = new Set<Task>();
let leaving: Promise<void> | undefined;

/** Run what was registered, newest first. Calling it again waits for the first call. */
export const leave = (): Promise<void> => {
  leaving ??= (async () => {
    for (const task of [...tasks].toReversed()) {
      try {
        await task();
      } catch (error) {
        console.error(error);
      }
    }
    tasks.clear();
    leaving = undefined;
  })();
  return leaving;
};

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

let listening = false;

const listen = (): void => {
  listening = true;
  for (const signal of signals) {
    // Not `once`: a terminal and npm may both deliver the signal, and the second must not cut the tidying short.
    process.on(signal, () => {
      void leave().finally(() => process.exit(128 + constants.signals[signal]));
    });
  }
};

/** Register something to undo when this process ends, by `leave()` or by a signal. Returns a way to take it back. */
export const onLeaving = (task: Task): (() => void) => {
  if (!listening) listen();
  tasks.add(task);
  return () => void tasks.delete(task);
};
