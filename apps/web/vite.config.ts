import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";

/** Files beside the built ones that the app needs without a network. */
const PUBLIC = ["/index.html", "/mark.svg", "/app.webmanifest", "/icons/icon-192.png", "/icons/icon-512.png"];

/** Letters of other scripts are fetched when they are met. */
const isKept = (file: string): boolean =>
  /\.(?:js|css)$/.test(file) || (file.endsWith(".woff2") && /-latin-(?!ext)/.test(file));

/** Writes the service worker with the list of what it keeps, named by its content: a new build is a new list. */
function serviceWorker(): Plugin {
  return {
    name: "service-worker",
    apply: "build",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const built = Object.keys(bundle).filter(isKept);
        const files = [...PUBLIC, ...built.map((file) => `/${file}`).toSorted()];
        const source = readFileSync(new URL("service-worker.js", import.meta.url), "utf8");
        const page = Object.values(bundle).find(({ fileName }) => fileName === "index.html");
        const hash = createHash("sha256")
          .update(source)
          .update(files.join())
          .update(page?.type === "asset" ? page.source : "");
        this.emitFile({
          type: "asset",
          fileName: "service-worker.js",
          source: source
            .replace("__VERSION__", hash.digest("hex").slice(0, 16))
            .replace("__FILES__", JSON.stringify(files)),
        });
      },
    },
  };
}

/** What the page on HTTPS shows of it is the guide's own text; only that page's chunk gets it. */
const guide = readFileSync(new URL("../../docs/guide/at-the-table.md", import.meta.url), "utf8");

export default defineConfig({
  define: { TABLE_GUIDE: JSON.stringify(guide) },
  plugins: [react(), serviceWorker()],
  resolve: {
    alias: {
      "@stdlib/assert-has-generator-support": fileURLToPath(new URL("has-generators.cjs", import.meta.url)),
    },
  },
  build: {
    manifest: true,
    target: "es2023",
    outDir: "dist",
    assetsInlineLimit: 0,
    // Together in one chunk, so that zod is told before any schema is made of it: the content policy allows no eval.
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: "zod", test: /node_modules\/zod\/|no-eval/ }] } },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4480" } },
});
