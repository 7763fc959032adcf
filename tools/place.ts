import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The root of the repository, without a trailing slash. */
export const root = fileURLToPath(new URL("..", import.meta.url)).replace(/[/\\]$/, "");

/** An environment in which our own node_modules/.bin (and so our own Node) comes first. */
export const environment = (extra: Readonly<Record<string, string>> = {}): NodeJS.ProcessEnv => ({
  ...process.env,
  PATH: [join(root, "node_modules", ".bin"), process.env["PATH"] ?? ""].join(delimiter),
  ...extra,
});
