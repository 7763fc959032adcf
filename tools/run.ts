import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { onLeaving } from "./leaving.ts";
import { environment, root } from "./place.ts";

export interface RunOptions {
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
  /** Called with every line of standard output, which is still passed on. */
  readonly onLine?: (line: string) => void;
  /** Takes all that it prints, which is then not shown. */
  readonly onText?: (text: string) => void;
}

export interface Ran {
  readonly ok: boolean;
  /** How it ended: "exit 1", "signal SIGKILL" or why it could not start. */
  readonly ending: string;
  readonly seconds: number;
}

/** Run a program in front of the reader's eyes and wait for it. It is ended when we are. Never throws. */
export const run = (program: string, args: readonly string[], options: RunOptions = {}): Promise<Ran> => {
  const started = performance.now();
  const { promise, resolve } = Promise.withResolvers<Ran>();
  const child = spawn(program, args, {
    cwd: options.cwd ?? root,
    env: environment(options.env),
    stdio: [
      "inherit",
      options.onLine || options.onText ? "pipe" : "inherit",
      options.onText ? "pipe" : "inherit",
    ],
  });
  if (options.onText)
    for (const stream of [child.stdout, child.stderr]) stream?.setEncoding("utf8").on("data", options.onText);
  const forget = onLeaving(async () => {
    child.kill("SIGTERM");
    await promise;
  });
  const end = (ok: boolean, ending: string): void => {
    forget();
    resolve({ ok, ending, seconds: (performance.now() - started) / 1000 });
  };
  if (child.stdout && options.onLine) {
    const { onLine } = options;
    createInterface({ input: child.stdout }).on("line", (line) => {
      console.log(line);
      onLine(line);
    });
  }
  child.on("error", (error) => end(false, `could not start: ${error.message}`));
  child.on("close", (code, signal) => end(code === 0, signal ? `signal ${signal}` : `exit ${code}`));
  return promise;
};
