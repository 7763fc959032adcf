import type { CDPSession } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/**
 * The longest task of the page's main thread while something is done, in ms of the thread's own processor time: what else runs on the
 * machine does not count, what Chromium slows it by does.
 */
export async function processorTime(session: CDPSession, work: () => Promise<void>): Promise<number> {
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) => {
    events.push(...(value as unknown as TraceEvent[]));
  });
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { includedCategories: ["toplevel", "disabled-by-default-devtools.timeline"] },
  });
  await work();
  const { promise, resolve } = Promise.withResolvers<void>();
  session.once("Tracing.tracingComplete", () => resolve());
  await session.send("Tracing.end");
  await promise;
  const main = new Set(
    events
      .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
      .map(({ pid, tid }) => `${pid}:${tid}`),
  );
  const tasks = events.filter(
    ({ name, ph, pid, tid }) => ph === "X" && name.endsWith("RunTask") && main.has(`${pid}:${tid}`),
  );
  if (tasks.length === 0) throw new Error("the measurement requires tasks of the page, got none");
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}
