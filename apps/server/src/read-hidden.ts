import { createInterface } from "node:readline";
import { Writable } from "node:stream";

/**
 * A line of standard input. From a terminal it is asked for, and what is typed is not shown; the question goes to
 * standard error, so that standard output holds results alone.
 *
 * @throws where standard input ends before a line does
 */
export function readHidden(question: string): Promise<string> {
  // Undefined where it is none; the types say otherwise.
  const terminal = process.stdin.isTTY;
  // readline echoes what is typed into its output; this one keeps nothing of it.
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  const lines = createInterface({ input: process.stdin, output: nowhere, terminal });
  // Only now: whoever answers at once shall not be shown either.
  if (terminal) process.stderr.write(question);
  return new Promise((resolve, reject) => {
    lines.once("line", (line) => {
      resolve(line);
      lines.close();
      if (terminal) process.stderr.write("\n");
    });
    lines.once("close", () => reject(new Error("a passphrase requires a line on standard input, got none")));
  });
}
