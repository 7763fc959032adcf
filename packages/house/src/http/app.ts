import { Hono } from "hono";
import { z } from "zod";
import { Id, OWN_HEADER, type RouteName, routes, type StreamName } from "../protocol/index.ts";
import {
  admitted,
  type Asked,
  type Caller,
  type Handler,
  type Handlers,
  HERE,
  type House,
  hubOf,
  type Knock,
  type SessionCookie,
  type StreamHandlers,
  type Who,
} from "../services/index.ts";
import { bytesOf } from "./body-bytes.ts";
import { cookieHeader, sessionIn } from "./cookie.ts";
import { eventStream } from "./event-stream.ts";
import { openApi } from "./openapi.ts";
import { needKeepable } from "./keepable.ts";
import { problem, unreadable } from "./problem.ts";

/**
 * D10: how much is read of a request, by who sends it. A stranger's is a ticket or a passphrase, a guest's a sheet with
 * every field full; whole households come from their owner.
 */
const MOST_BODY_BYTES: Readonly<Record<Who["kind"], number>> = {
  stranger: 16 * 1024,
  guest: 4 * 1024 * 1024,
  owner: 32 * 1024 * 1024,
  here: 32 * 1024 * 1024,
};
const READS = new Set(["GET", "HEAD"]);
/** What a taster writes tells the others nothing (L1), and is written most. */
const TELLS_NOTHING: ReadonlySet<RouteName | StreamName> = new Set(["addEntry", "editSheet"]);

/** What came with a request besides itself; hono hands it to the routes. */
interface Bindings {
  readonly caller?: Caller;
}

/**
 * The house behind HTTP: one Hono route for each line of the table that has a handler, in its order.
 *
 * @param house null where the handlers ask nothing of it
 */
export function createApp(
  house: House | null,
  handlers: Partial<Handlers>,
  streams: Partial<StreamHandlers> = {},
): Hono<{ Bindings: Bindings }> {
  const app = new Hono<{ Bindings: Bindings }>();
  app.get("/api/openapi.json", (c) => c.json(openApi()));
  for (const name of Object.keys(routes) as (RouteName | StreamName)[]) {
    const route = routes[name];
    const handler = (handlers as Partial<Record<string, Handler<RouteName>>>)[name];
    const stream = (streams as Partial<Record<string, StreamHandlers[StreamName]>>)[name];
    if (handler === undefined && stream === undefined) continue;
    app.on(route.method, route.path, async (c) => {
      try {
        const caller = c.env?.caller ?? HERE;
        const cookies: SessionCookie[] = [];
        const knock = knockOf(name, c.req.raw, c.req.param(), caller);
        const who = house === null ? ({ kind: "here" } as const) : await admitted(house, knock);
        const asked = {
          ...(await read(name, c.req.raw, c.req.param(), MOST_BODY_BYTES[who.kind])),
          house,
          caller,
          who,
          token: knock.token,
          // Asked for by what takes long; every other request is spared the making of one.
          get signal() {
            return c.req.raw.signal;
          },
          session: knock.session,
          lastEventId: lastEventId(c.req.raw),
          setCookie: (cookie: SessionCookie) => void cookies.push(cookie),
        };
        if (stream !== undefined) {
          const feed = await stream(asked as unknown as Asked<StreamName>);
          // Nobody would ever read, or let go of, the body of an answer to HEAD.
          return c.req.raw.method === "HEAD" ? new Response(null) : eventStream(feed);
        }
        const answer = await handler?.(asked as unknown as Asked<RouteName>);
        if (house !== null && !READS.has(route.method) && !TELLS_NOTHING.has(name)) nudge(house, asked.at);
        const headers = { "cache-control": "no-store" };
        const response =
          route.status === 204
            ? new Response(null, { status: 204, headers })
            : route.media === "application/json"
              ? jsonAnswer(answer, route.status, headers)
              : new Response(answer as unknown as string, {
                  status: route.status,
                  headers: { ...headers, "content-type": `${route.media}; charset=utf-8` },
                });
        for (const cookie of cookies) response.headers.append("set-cookie", cookieHeader(cookie, caller));
        return response;
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

const encoder = new TextEncoder();

/** With its length, which says whether it is worth compressing. */
function jsonAnswer(answer: unknown, status: number, headers: Readonly<Record<string, string>>): Response {
  const body = encoder.encode(JSON.stringify(answer));
  const { length } = body;
  return new Response(body, {
    status,
    headers: { ...headers, "content-type": "application/json", "content-length": String(length) },
  });
}

/** L2: whoever follows the flight that was asked for is told at once. */
function nudge(house: House, at: Readonly<Record<string, string>>): void {
  if (at["flight"] !== undefined) hubOf(house).nudge(at["flight"]);
}

function knockOf(
  name: RouteName | StreamName,
  request: Request,
  at: Readonly<Record<string, string>>,
  caller: Caller,
): Knock {
  const bearer = /^Bearer ([0-9a-f]{64})$/.exec(request.headers.get("authorization") ?? "");
  return {
    route: routes[name],
    at,
    caller,
    token: bearer?.[1] ?? null,
    session: sessionIn(request, caller),
    own: request.headers.has(OWN_HEADER),
  };
}

function lastEventId(request: Request): number | null {
  const given = request.headers.get("last-event-id") ?? "";
  return /^\d{1,12}$/.test(given) ? Number(given) : null;
}

async function read(
  name: RouteName | StreamName,
  request: Request,
  params: Readonly<Record<string, string>>,
  mostBytes: number,
): Promise<Pick<Asked<RouteName>, "at" | "query" | "body">> {
  const route = routes[name];
  for (const [key, value] of Object.entries(params)) {
    if (!Id.safeParse(value).success) {
      throw unreadable(404, `unknown_${key}`, [key], `the id of a ${key} of this household`, value, key);
    }
  }
  const query = route.query ? readQuery(route.query, new URL(request.url)) : undefined;
  const body = route.body
    ? route.body.parse(await json(request, mostBytes), { reportInput: true })
    : undefined;
  return { at: { household: "", ...params }, query, body } as Pick<Asked<RouteName>, "at" | "query" | "body">;
}

function readQuery(schema: z.ZodType, url: URL): unknown {
  const asked = Object.fromEntries(url.searchParams);
  needKeepable(asked);
  return schema.parse(asked, { reportInput: true });
}

async function json(request: Request, mostBytes: number): Promise<unknown> {
  const bytes = await bytesOf(request, mostBytes);
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
