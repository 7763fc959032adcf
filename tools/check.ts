import { leave } from "./leaving.ts";
import { staticChecks } from "./static-checks.ts";
import { Tally } from "./tally.ts";

// `npm run check`: types, lint, format and dead code, without running anything.
const tally = new Tally();
await tally.checkTogether(staticChecks);
await leave();
tally.close();
