import type { Door } from "@partsproof/house/protocol";
import { NotReached } from "./not-reached.ts";
import type { Sessions } from "./sessions.ts";

/** A house that is running somewhere, in the owner's session where there is one: kept and sent as a browser does. */
export function overNetwork(address: string, sessions: Sessions): Door {
  const { origin } = new URL(address);
  return async (request) => {
    const headers = new Headers(request.headers);
    const cookie = sessions.of(origin);
    if (cookie !== null) headers.set("cookie", cookie);
    // A house sends nobody elsewhere; whoever does shall not be given a passphrase or a session.
    const answer = await fetch(new Request(request, { headers, redirect: "error" })).catch(
      (error: unknown) => {
        const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
        const why = cause instanceof Error ? cause.message : String(cause);
        throw new NotReached("house_unreachable", ["house"], "a house that answers", address, why);
      },
    );
    sessions.heard(origin, answer.headers.getSetCookie());
    return answer;
  };
}
