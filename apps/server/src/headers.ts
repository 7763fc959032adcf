import type { MiddlewareHandler } from "hono";
import { secureHeaders } from "hono/secure-headers";
import { type Reached, speaksHttps } from "./caller.ts";
import { hostnameOf } from "./host-names.ts";
import { isLoopback } from "./loopback.ts";

/**
 * What every answer says to a browser. Two of the headers are heeded only by a page that the browser can trust to be
 * the house's (Secure Contexts, 3.1: HTTPS or loopback); anywhere else it ignores them and warns of each page.
 */
export function headersFor(reached: Reached): MiddlewareHandler {
  const trusted = secureHeaders(EVERYWHERE);
  const plain = secureHeaders({
    ...EVERYWHERE,
    crossOriginOpenerPolicy: false,
    originAgentCluster: false,
  });
  const https = speaksHttps(reached);
  return (c, next) => {
    const heeded = https || isLoopback(hostnameOf(c.req.header("host") ?? ""));
    return (heeded ? trusted : plain)(c, next);
  };
}

const EVERYWHERE: NonNullable<Parameters<typeof secureHeaders>[0]> = {
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    imgSrc: ["'self'", "data:", "blob:"],
    connectSrc: ["'self'"],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  referrerPolicy: "no-referrer",
  xFrameOptions: "DENY",
  permissionsPolicy: { camera: ["self"], microphone: ["self"], geolocation: [], payment: [], usb: [] },
  // Not even over HTTPS: a home's certificate lapses, and the table must then still reach the house by plain HTTP.
  strictTransportSecurity: false,
};
