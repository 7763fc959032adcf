import type { HttpBindings } from "@hono/node-server";
import type { Caller } from "@partsproof/house/services";
import { isLoopback, plainAddress } from "./loopback.ts";
import { hostnameOf } from "./host-names.ts";

/** What a proxy adds to what it passes on: then the connection is the proxy's and not the caller's. */
const PASSED_ON = [
  "forwarded",
  "via",
  "x-forwarded-for",
  "x-forwarded-host",
  "x-forwarded-proto",
  "x-real-ip",
];

export interface Reached {
  /** The address at which the table reaches the house through a proxy; nobody is `here` then. */
  readonly origin: string | null;
  /** Whether this server itself speaks HTTPS. */
  readonly tls: boolean;
}

/** Whether a browser reaches the house by HTTPS, by itself or through a proxy. */
export const speaksHttps = ({ origin, tls }: Reached): boolean =>
  tls || (origin?.startsWith("https:") ?? false);

/**
 * Where a request comes from. `here` only for a connection of this machine to itself, under a name of this machine,
 * that nobody passed on. With a proxy in front everything comes from this machine, so then nothing is taken for it.
 */
export function callerOf(request: Request, env: Partial<HttpBindings> | undefined, reached: Reached): Caller {
  const { origin } = reached;
  const remote = env?.incoming?.socket.remoteAddress;
  const address = remote === undefined ? null : plainAddress(remote);
  const secure = speaksHttps(reached);
  const fromHere = address !== null && isLoopback(address);
  const here =
    origin === null &&
    fromHere &&
    isLoopback(hostnameOf(request.headers.get("host") ?? "")) &&
    !PASSED_ON.some((name) => request.headers.has(name));
  return here
    ? { from: "here", address: null, secure }
    : {
        from: "network",
        address: origin !== null && fromHere ? (behindProxy(request) ?? address) : address,
        secure,
      };
}

/**
 * The last hop a proxy of this machine tells of: what it saw itself. From anywhere else the header is the caller's own
 * word, and would be a new address for every try.
 */
const behindProxy = (request: Request): string | null =>
  request.headers.get("x-forwarded-for")?.split(",").at(-1)?.trim().slice(0, 45) || null;
