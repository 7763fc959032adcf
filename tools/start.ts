import { spawn } from "node:child_process";
import { join } from "node:path";
import { NODE_FLAGS } from "../apps/server/src/node-flags.ts";
import { environment } from "./place.ts";
import { programs } from "./programs.ts";
import { buildWeb, webIsStale } from "./web.ts";

// `npm start`: build the web app if its sources changed, then run the server.

if (webIsStale()) {
  console.log("Building the web app; this is needed once after every change.");
  const built = await buildWeb();
  if (!built.ok) {
    console.error(`The web app could not be built (${built.ending}); the lines above say why.`);
    process.exit(1);
  }
}

const main = join(await programs(), "server.mjs");

const server = spawn(process.execPath, [...NODE_FLAGS, main, ...process.argv.slice(2)], {
  env: environment(),
  stdio: "inherit",
});
// A terminal sends Ctrl-C to both of us; a supervisor's signal reaches only this process, so it is passed on.
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
  process.on(signal, () => server.kill(signal));
}
server.on("error", (error) => {
  console.error(`The server could not start: ${error.message}`);
  process.exitCode = 1;
});
server.on("exit", (code, signal) => {
  process.exitCode = code ?? (signal === "SIGINT" || signal === "SIGTERM" ? 0 : 1);
});
