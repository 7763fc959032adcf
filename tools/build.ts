import { leave } from "./leaving.ts";
import { reportWebSize } from "./web-size.ts";
import { buildWeb } from "./web.ts";

// `npm run build`: the web app is the only thing that needs a build (docs/decisions/0003-node-24.md).
const built = await buildWeb();
const small = built.ok && reportWebSize();
if (built.ok && !small) console.error("The first load is larger than its limit.");
await leave();
process.exitCode = small ? 0 : 1;
