import { setPassphrase } from "./set-passphrase.ts";
import { readFlags } from "./settings.ts";
import { startServer } from "./start.ts";

const NODE = 24;

if (Number(process.versions.node.split(".")[0]) < NODE) {
  console.error(`Parts & Proof requires Node ${NODE} or newer, got ${process.versions.node}`);
  process.exit(1);
}

try {
  const asked = readFlags(process.argv.slice(2), process.env);
  if (asked.setPassphrase) console.log(await setPassphrase(asked.env));
  else await listen(asked.env);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

async function listen(env: NodeJS.ProcessEnv): Promise<void> {
  const server = await startServer(env);
  let stopping: Promise<void> | undefined;
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
    // Not `once`: a terminal and npm may both deliver it, and the second must not cut the first short.
    process.on(signal, () => {
      stopping ??= server.stop().catch((error: unknown) => {
        console.error("The house did not close cleanly:", error);
        process.exitCode = 1;
      });
    });
  }
  // Whoever reads this may end us at once: we are ready for that first.
  console.log(server.says);
}
