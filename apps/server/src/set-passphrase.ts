import { createInterface } from "node:readline";
import { Writable } from "node:stream";
import { createClient } from "@partsproof/house/protocol";
import { openHouseFromEnvironment } from "./open-house.ts";

/** Reads the owner's passphrase from standard input, without showing it, and keeps it; everyone is signed out. */
export async function setPassphrase(env: NodeJS.ProcessEnv): Promise<string> {
  const passphrase = await readHidden("Owner's passphrase, at least 15 characters (it is not shown): ");
  const house = await openHouseFromEnvironment(env);
  try {
    await createClient(house.fetch, "http://house.invalid")("setPassphrase", { body: { passphrase } });
    return "The owner's passphrase is set; whoever was signed in is signed out.";
  } finally {
    await house.close();
  }
}

function readHidden(prompt: string): Promise<string> {
  // Undefined where it is none; the types say otherwise.
  const terminal = process.stdin.isTTY;
  if (terminal) process.stderr.write(prompt);
  // readline echoes what is typed into its output; this one keeps nothing of it.
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  const lines = createInterface({ input: process.stdin, output: nowhere, terminal });
  return new Promise((resolve, reject) => {
    lines.once("line", (line) => {
      resolve(line);
      lines.close();
      if (terminal) process.stderr.write("\n");
    });
    lines.once("close", () => reject(new Error("a passphrase requires a line on standard input, got none")));
  });
}
