import { existsSync, globSync, statSync } from "node:fs";
import { join } from "node:path";
import { root } from "./place.ts";
import { type Ran, run } from "./run.ts";

const webFolder = join(root, "apps", "web");
export const webDist = join(webFolder, "dist");

/** Everything that can change what the build produces. */
const sources = [
  "apps/web/*.{html,ts,js,json}",
  "docs/guide/at-the-table.md",
  "apps/web/{src,public}/**/*",
  "packages/{core,house}/package.json",
  "packages/{core,house}/src/**/*",
  "package-lock.json",
];

/** True when the built web app is missing or older than any of its sources. */
export const webIsStale = (): boolean => {
  const page = join(webDist, "index.html");
  if (!existsSync(page)) return true;
  const built = statSync(page).mtimeMs;
  return globSync(sources, { cwd: root }).some((path) => statSync(join(root, path)).mtimeMs > built);
};

/** Build the web app, with the manifest that `web-size.ts` reads. Tests, too, look at what people get: vitest says "test". */
export const buildWeb = (): Promise<Ran> =>
  run("vite", ["build", "--manifest"], { cwd: webFolder, env: { NODE_ENV: "production" } });
