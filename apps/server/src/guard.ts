import type { MiddlewareHandler } from "hono";
import { isLoopback } from "./loopback.ts";
import { refused } from "./refused.ts";

const READS = new Set(["GET", "HEAD", "OPTIONS"]);

/**
 * Keeps other pages in this machine's browsers out. A name that an attacker made to point here comes with a foreign
 * Host; a form or script of another page comes with a foreign Origin. Programs without an Origin are let in.
 */
export const guard: MiddlewareHandler = async (c, next) => {
  const host = c.req.header("host") ?? null;
  if (host === null || !isLoopback(hostnameOf(host))) {
    return refused(403, "Not by this name", {
      code: "host_not_this_machine",
      what: "request",
      limit: "the host 127.0.0.1, localhost or [::1]",
      received: host,
    });
  }
  const origin = c.req.header("origin");
  if (!READS.has(c.req.method) && origin !== undefined && hostOf(origin) !== host.toLowerCase()) {
    return refused(403, "Not from another page", {
      code: "origin_not_own",
      what: "a request that changes something",
      limit: `the origin http://${host}`,
      received: origin,
    });
  }
  return next();
};

function hostnameOf(host: string): string {
  return host.startsWith("[") ? host.slice(1, host.indexOf("]")) : host.replace(/:\d*$/, "");
}

/** Host and port of an origin; null for `null` and for what is no address. */
function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
