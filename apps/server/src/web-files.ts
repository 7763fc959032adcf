import { join } from "node:path";
import { serveStatic } from "@hono/node-server/serve-static";
import { type Context, Hono } from "hono";
import { refused } from "./refused.ts";

/**
 * The built web app. Names in assets/ carry a hash of their content, so they may be kept for ever; everything else is
 * asked for again. Any address without a file is a place inside the app and gets its page.
 */
export function webFiles(folder: string): Hono {
  const app = new Hono();
  app.get("/assets/*", serveStatic({ root: folder, onFound: keep("public, max-age=31536000, immutable") }));
  app.get("/assets/*", (c) => noFile(c));
  app.get("*", serveStatic({ root: folder, onFound: keep("no-cache") }));
  app.get("*", serveStatic({ path: join(folder, "index.html"), onFound: keep("no-cache") }));
  app.all("*", (c) => noFile(c));
  return app;
}

const keep =
  (cacheControl: string) =>
  (_path: string, c: Context): void =>
    c.header("cache-control", cacheControl);

function noFile(c: Context): Response {
  return refused(404, "Not here", {
    code: "unknown_address",
    what: "address",
    limit: "a place of the web app or of /api",
    received: `${c.req.method} ${c.req.path}`,
  });
}
