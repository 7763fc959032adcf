import type { Door } from "@partsproof/house/protocol";
import { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { compress } from "hono/compress";
import { secureHeaders } from "hono/secure-headers";
import { guard } from "./guard.ts";
import { refused } from "./refused.ts";
import { webFiles } from "./web-files.ts";

/** As much as the house reads of one request; here it is cut off while it still arrives. */
const MAX_BODY_BYTES = 32 * 1024 * 1024;

/**
 * The house's door and the web app behind one address. Nothing of a request is logged: addresses and bodies hold
 * notes, guesses and tokens.
 *
 * @param webFolder the built web app; it may be missing, then only /api answers
 */
export function createServerApp(house: Door, webFolder: string): Hono {
  const app = new Hono();
  app.use(secureHeaders(HEADERS));
  app.use(guard);
  app.use(
    bodyLimit({
      maxSize: MAX_BODY_BYTES,
      onError: () =>
        refused(413, "Too large", {
          code: "body_too_large",
          what: "request body",
          limit: `at most ${MAX_BODY_BYTES} bytes`,
          received: "more",
        }),
    }),
  );
  app.use(compress());
  app.all("/api/*", async (c) => house(c.req.raw));
  app.route("/", webFiles(webFolder));
  return app;
}

const HEADERS: NonNullable<Parameters<typeof secureHeaders>[0]> = {
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    scriptSrc: ["'self'"],
    // React Aria places its overlays with style attributes.
    styleSrc: ["'self'", "'unsafe-inline'"],
    imgSrc: ["'self'", "data:", "blob:"],
    connectSrc: ["'self'"],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  referrerPolicy: "no-referrer",
  xFrameOptions: "DENY",
  // Only for https, which this server does not speak.
  strictTransportSecurity: false,
};
