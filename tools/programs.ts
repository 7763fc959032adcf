import { createHash } from "node:crypto";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./place.ts";

/** What runs outside the browser, by where it begins. The thread stands beside the server that starts it. */
const entries = {
  server: "apps/server/src/main.ts",
  cli: "apps/cli/src/main.ts",
  "search-thread": "apps/server/src/search-thread.ts",
};
const sources = ["packages/core/src", "packages/house/src", "apps/server/src", "apps/cli/src"];
const kept = join(root, "dist", "programs");
/** Left whole: they look for native parts of themselves. */
const APART = ["better-sqlite3", "pg"];
/** Others may still run from what was built for the sources before these. */
const OLD_MS = 24 * 3_600_000;

/**
 * The folder with `server.mjs` and `cli.mjs`, a few files each in place of some 1 500 modules: Node reads them in a fifth of
 * the time. It is named after the sources as they are now, and built if there is none (docs/decisions/0017-programs-in-few-files.md).
 */
export async function programs(): Promise<string> {
  const folder = join(kept, nameOfSources());
  if (!existsSync(folder)) await build(folder);
  return folder;
}

function nameOfSources(): string {
  const hash = createHash("sha256").update(`${root} ${process.version}`);
  for (const path of ["package-lock.json", ...sources.flatMap(filesIn)]) {
    const { mtimeMs, size } = statSync(join(root, path));
    hash.update(`\n${path} ${mtimeMs} ${size}`);
  }
  return hash.digest("hex").slice(0, 16);
}

const filesIn = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && one.name.endsWith(".ts") && !one.name.endsWith(".test.ts"))
    .map(({ parentPath, name }) => join(parentPath, name).slice(root.length + 1))
    .toSorted();

/** Built aside and put in place whole, so that two that build at once do not meet. */
async function build(folder: string): Promise<void> {
  const { rolldown } = await import("rolldown");
  mkdirSync(kept, { recursive: true });
  for (const name of readdirSync(kept)) {
    const old = join(kept, name);
    if (Date.now() - statSync(old).mtimeMs > OLD_MS) rmSync(old, { recursive: true, force: true });
  }
  const aside = mkdtempSync(join(kept, "building-"));
  const bundle = await rolldown({
    cwd: root,
    input: entries,
    platform: "node",
    external: APART,
    plugins: [{ name: "own-places", transform: (code, id) => ownPlaces(code, id) }],
  });
  await bundle.write({ dir: aside, entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" });
  await bundle.close();
  try {
    renameSync(aside, folder);
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
}

/** A thread is started from the file built for it; anything else that a source finds from its own place is found from there. */
function ownPlaces(code: string, id: string): string | null {
  if (!code.includes("import.meta.url") || id.includes("node_modules")) return null;
  const thread = /new Worker\(new URL\("\.\/([\w-]+)\.ts", import\.meta\.url\)/g;
  const HERE = "import.meta\u0000url";
  return code
    .replaceAll(thread, (_, name: string) => `new Worker(new URL("./${name}.mjs", ${HERE})`)
    .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href))
    .replaceAll(HERE, "import.meta.url");
}
