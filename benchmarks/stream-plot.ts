import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "rolldown";
import { boundedTable } from "./bounded-table.ts";
import { timed } from "./timed.ts";

// Ten years of a kept-up bottle as a figure of the web app: 400 points of eight layers, put together as the build does.

const MOST_MS = 50;

/** How many bounds were missed. */
export async function benchStreamPlot(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "partsproof-bench-"));
  try {
    const file = join(folder, "drawn.mjs");
    await build({
      input: fileURLToPath(new URL("ten-years-drawn.ts", import.meta.url)),
      platform: "node",
      moduleTypes: { ".css": "empty" },
      transform: { define: { "process.env.NODE_ENV": '"production"' } },
      logLevel: "warn",
      output: { file, format: "esm", codeSplitting: false },
    });
    const { drawn, outlined } = (await import(
      pathToFileURL(file).href
    )) as typeof import("./ten-years-drawn.ts");
    const cases = [
      { name: "drawn", size: 1, run: drawn },
      { name: "outlined", size: 1, run: outlined },
    ];
    const [whole = Number.NaN, outlines = Number.NaN] = timed(cases, 51).map((ns) => ns / 1e6);
    const beside = `${outlines.toFixed(2)} ms of it outlines`;
    return boundedTable("figure of a kept-up bottle, median", [
      { name: "400 points of eight layers", value: whole, unit: "ms", most: MOST_MS, beside },
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
