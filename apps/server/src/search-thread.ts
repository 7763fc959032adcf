import { parentPort } from "node:worker_threads";
import { answerHere } from "@partsproof/house/services";
import type { ThreadAsked, ThreadSaid } from "./search-threads.ts";

// What a thread of search-threads.ts runs: one question after another. It is ended by whoever no longer wants an answer.

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread's port has no origin; ends with that rule knowing worker_threads
const said = (message: ThreadSaid): void => parentPort?.postMessage(message);

async function answer({ question, seconds }: ThreadAsked): Promise<void> {
  try {
    const onProgress = (progress: object): void => said({ kind: "progress", progress: progress as never });
    said({ kind: "answer", answer: await answerHere(question, { seconds, onProgress }) });
  } catch (error) {
    said({ kind: "failed", stack: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
}

parentPort?.on("message", (asked: ThreadAsked) => void answer(asked));
