import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { programs } from "./programs.ts";

// `npm run cli`: the command line of the sources as they are now.
await import(pathToFileURL(join(await programs(), "cli.mjs")).href);
