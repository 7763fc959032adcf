import { join } from "node:path";
import { serveStatic } from "@hono/node-server/serve-static";
import { type Context, Hono } from "hono";
import { refused } from "./refused.ts";

/** Names in assets/ carry a hash of their content. */
const KEEP_FOR_EVER = "public, max-age=31536000, immutable";
const ASK_AGAIN = "no-cache";

/** The built web app. Any address without a file is a place inside the app and gets its page. */
export function webFiles(folder: string): Hono {
  const app = new Hono();
  app.use(async (c, next) => {
    await next();
    if (c.res.ok) c.header("cache-control", c.req.path.startsWith("/assets/") ? KEEP_FOR_EVER : ASK_AGAIN);
  });
  app.get("*", serveStatic({ root: folder }));
  app.all("/assets/*", unknown);
  app.get("*", serveStatic({ path: join(folder, "index.html") }));
  app.all("*", unknown);
  return app;
}

function unknown(c: Context): Response {
  return refused(404, "Not here", {
    code: "unknown_address",
    what: "address",
    limit: "a place of the web app or of /api",
    received: `${c.req.method} ${c.req.path}`,
  });
}
