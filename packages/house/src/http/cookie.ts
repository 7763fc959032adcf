import type { Caller, SessionCookie } from "../services/index.ts";

/** Over HTTPS the name itself promises Secure, no Domain and the whole site (RFC 6265bis, 4.1.3.2). */
const nameFor = ({ secure }: Caller): string => (secure ? "__Host-partsproof" : "partsproof");

/** D4: no script reads it, no other site sends it. */
export function cookieHeader({ token, maxAgeS }: SessionCookie, caller: Caller): string {
  return [
    `${nameFor(caller)}=${token ?? ""}`,
    "Path=/",
    `Max-Age=${maxAgeS}`,
    "HttpOnly",
    "SameSite=Strict",
    ...(caller.secure ? ["Secure"] : []),
  ].join("; ");
}

/** The session's token in a request's cookies; null where none is, or what is there cannot be one. */
export function sessionIn(request: Request, caller: Caller): string | null {
  for (const cookie of (request.headers.get("cookie") ?? "").split(";")) {
    const [name, value = ""] = cookie.trim().split("=", 2);
    if (name === nameFor(caller) && /^[0-9a-f]{64}$/.test(value)) return value;
  }
  return null;
}
