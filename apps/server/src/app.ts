import type { HttpBindings } from "@hono/node-server";
import type { Caller } from "@partsproof/house/services";
import { Hono } from "hono";
import { compress } from "hono/compress";
import { bodyWithin } from "./body-within.ts";
import { callerOf, type Reached } from "./caller.ts";
import { guardOf } from "./guard.ts";
import { headersFor } from "./headers.ts";
import { webFiles } from "./web-files.ts";

/** As much as the house reads of one request; here it is cut off while it still arrives. */
const MAX_BODY_BYTES = 32 * 1024 * 1024;

/**
 * Answers below this go as they are. Compressing one takes zlib 256 KiB whatever its length (zconf.h: "(1 << (windowBits+2))
 * +  (1 << (memLevel+9))") and a turn of a thread, while the taster waits; a sheet as JSON is two or three packets.
 */
const LEAST_COMPRESSED_BYTES = 8 * 1024;

export interface ServerApp extends Reached {
  readonly house: (request: Request, caller: Caller) => Promise<Response>;
  /** The built web app; it may be missing, then only /api answers. */
  readonly webFolder: string;
  /** Whether anybody but this machine can reach it. */
  readonly network: boolean;
}

/**
 * The house's door and the web app behind one address. Nothing of a request is logged: addresses and bodies hold
 * notes, guesses and tokens.
 */
export function createServerApp(server: ServerApp): Hono<{ Bindings: HttpBindings }> {
  const { house, webFolder, network } = server;
  const app = new Hono<{ Bindings: HttpBindings }>();
  app.use(headersFor(server));
  app.use(guardOf(server, network));
  app.use(bodyWithin(MAX_BODY_BYTES));
  app.use("/api/*", compress({ threshold: LEAST_COMPRESSED_BYTES }));
  app.all("/api/*", async (c) => house(c.req.raw, callerOf(c.req.raw, c.env, server)));
  app.use(compress());
  app.route("/", webFiles(webFolder));
  return app;
}
