import type { HttpBindings } from "@hono/node-server";
import type { MiddlewareHandler } from "hono";
import type { Reached } from "./caller.ts";
import { hostnameOf, machineNames } from "./host-names.ts";
import { isLoopback, plainAddress } from "./loopback.ts";
import { refused } from "./refused.ts";

const READS = new Set(["GET", "HEAD", "OPTIONS"]);
/** Sent by browsers; programs do not send it (W3C Fetch Metadata). */
const OWN_SITES = new Set(["same-origin", "none"]);

/**
 * Keeps other pages out, whatever they carry. A name that an attacker made to point here comes with a foreign Host; a
 * form or script of another page comes with a foreign Origin or says so in Sec-Fetch-Site. Programs are let in.
 */
export function guardOf(reached: Reached, network: boolean): MiddlewareHandler<{ Bindings: HttpBindings }> {
  const names = new Set(network ? machineNames() : []);
  const behind = reached.origin === null ? null : new URL(reached.origin);
  const scheme = reached.tls ? "https" : "http";
  if (behind) names.add(behind.hostname);

  /** A name of this machine, or the very address that the connection came in on. */
  const isOurs = (name: string, env: Partial<HttpBindings> | undefined): boolean => {
    if (isLoopback(name) || names.has(name.toLowerCase())) return true;
    const local = env?.incoming?.socket.localAddress;
    return network && local !== undefined && plainAddress(local) === name.toLowerCase();
  };

  return async (c, next) => {
    const host = c.req.header("host") ?? null;
    if (host === null || !isOurs(hostnameOf(host), c.env)) {
      return refused(403, "Not by this name", {
        code: "host_not_this_machine",
        what: "request",
        limit: network ? "a name or address of this machine" : "the host 127.0.0.1, localhost or [::1]",
        received: host,
      });
    }
    const origin = c.req.header("origin");
    const writes = !READS.has(c.req.method);
    if (writes && origin !== undefined && !isOwn(origin, behind?.origin ?? `${scheme}://${host}`)) {
      return refused(403, "Not from another page", {
        code: "origin_not_own",
        what: "a request that changes something",
        limit: `the origin ${behind?.origin ?? `${scheme}://${host}`}`,
        received: origin,
      });
    }
    const site = c.req.header("sec-fetch-site");
    if (site !== undefined && !OWN_SITES.has(site) && (writes || c.req.path.startsWith("/api/"))) {
      return refused(403, "Not from another page", {
        code: "site_not_own",
        what: "request",
        limit: "a page of this house",
        received: site,
      });
    }
    return next();
  };
}

/**
 * The same scheme, host and port as were asked for; behind a proxy, the address it is reached at. The scheme too: on
 * their default ports a page of http://table is not one of https://table.
 */
function isOwn(origin: string, own: string): boolean {
  return URL.canParse(origin) && URL.canParse(own) && new URL(origin).origin === new URL(own).origin;
}
