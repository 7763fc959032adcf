import type { MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { refused } from "./refused.ts";

const WITHOUT_BODY = new Set(["GET", "HEAD"]);

/**
 * Refuses a body longer than that. HTTP itself holds a body to the length it states, so that only one which states none is
 * counted: to ask a request of Node for its body makes of it a whole request of the Fetch standard, with streams and
 * an end to be watched for. Of every open stream of events that was kept for as long as it stood.
 */
export function bodyWithin(most: number): MiddlewareHandler {
  const tooLarge = () =>
    refused(413, "Too large", {
      code: "body_too_large",
      what: "request body",
      limit: `at most ${most} bytes`,
      received: "more",
    });
  const counted = bodyLimit({ maxSize: most, onError: tooLarge });
  return async (c, next) => {
    if (WITHOUT_BODY.has(c.req.method)) return next();
    const stated = c.req.header("content-length");
    if (stated === undefined || c.req.header("transfer-encoding") !== undefined) return counted(c, next);
    return Number(stated) > most ? tooLarge() : next();
  };
}
