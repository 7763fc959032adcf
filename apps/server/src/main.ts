import { startServer } from "./start.ts";

const NODE = 24;

if (Number(process.versions.node.split(".")[0]) < NODE) {
  console.error(`Parts & Proof requires Node ${NODE} or newer, got ${process.versions.node}`);
  process.exit(1);
}

try {
  const server = await startServer(process.env);
  console.log(server.says);
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
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
