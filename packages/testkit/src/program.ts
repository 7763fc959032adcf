import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** Where the server or the command line begins: as `npm start` and `npm run cli` run it where `npm test` has put that ready, else its sources. */
export function programOf(name: "server" | "cli"): string {
  const built = process.env["PARTSPROOF_PROGRAMS"];
  if (built !== undefined) return join(built, `${name}.mjs`);
  return fileURLToPath(new URL(`../../../apps/${name}/src/main.ts`, import.meta.url));
}
