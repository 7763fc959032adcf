import { Hono } from "hono";
import { z } from "zod";
import { Id, type RouteName, routes } from "../protocol/index.ts";
import type { Asked, Handler, Handlers, House } from "../services/index.ts";
import { openApi } from "./openapi.ts";
import { needKeepable } from "./keepable.ts";
import { problem, unreadable } from "./problem.ts";

const MAX_BODY_BYTES = 32 * 1024 * 1024;

/**
 * The house behind HTTP: one Hono route for each line of the table that has a handler, in its order.
 *
 * @param house null where the handlers ask nothing of it
 */
export function createApp(house: House | null, handlers: Partial<Handlers>): Hono {
  const app = new Hono();
  app.get("/api/openapi.json", (c) => c.json(openApi()));
  for (const name of Object.keys(routes) as RouteName[]) {
    const route = routes[name];
    if (handlers[name] === undefined) continue;
    app.on(route.method, route.path, async (c) => {
      try {
        const asked = await read(name, c.req.raw, c.req.param(), house);
        const answer = await (handlers[name] as Handler<RouteName>)(asked);
        if (route.status === 204) return new Response(null, { status: 204 });
        return c.json(answer as object, route.status, { "cache-control": "no-store" });
      } catch (error) {
        return problem(error);
      }
    });
  }
  app.notFound((c) =>
    problem(
      unreadable(
        404,
        "unknown_route",
        ["path"],
        "a route of /api/openapi.json",
        `${c.req.method} ${c.req.path}`,
        "address",
      ),
    ),
  );
  return app;
}

async function read(
  name: RouteName,
  request: Request,
  params: Readonly<Record<string, string>>,
  house: House | null,
): Promise<Asked<RouteName>> {
  const route = routes[name];
  for (const [key, value] of Object.entries(params)) {
    if (!Id.safeParse(value).success) {
      throw unreadable(404, `unknown_${key}`, [key], `the id of a ${key} of this household`, value, key);
    }
  }
  const query = route.query ? readQuery(route.query, new URL(request.url)) : undefined;
  const body = route.body ? route.body.parse(await json(request), { reportInput: true }) : undefined;
  const bearer = /^Bearer ([0-9a-f]{64})$/.exec(request.headers.get("authorization") ?? "");
  return {
    house,
    at: { household: "", ...params },
    query,
    body,
    token: bearer?.[1] ?? null,
  } as Asked<RouteName>;
}

function readQuery(schema: z.ZodType, url: URL): unknown {
  const asked = Object.fromEntries(url.searchParams);
  needKeepable(asked);
  return schema.parse(asked, { reportInput: true });
}

async function json(request: Request): Promise<unknown> {
  const bytes = await request.arrayBuffer();
  if (bytes.byteLength > MAX_BODY_BYTES) {
    throw unreadable(
      413,
      "body_too_large",
      [],
      `at most ${MAX_BODY_BYTES} bytes`,
      bytes.byteLength,
      "request body",
    );
  }
  let sent: unknown;
  try {
    // Fatal, so that bytes that are no text are refused and not replaced.
    sent = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    const start = new TextDecoder().decode(bytes.slice(0, 120));
    throw unreadable(400, "json_unreadable", [], "JSON (RFC 8259)", start, "request body");
  }
  needKeepable(sent);
  return sent;
}
