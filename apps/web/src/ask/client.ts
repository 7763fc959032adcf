import { createClient, Refusal } from "@partsproof/house/protocol";

/** The house over the network; an unreachable one is a refusal like any other, with status 0. */
async function overNetwork(request: Request): Promise<Response> {
  try {
    const answer = await fetch(request);
    // All of it here: an answer that breaks off, as when the house is ended in the middle of it, is none.
    const body = await answer.arrayBuffer();
    return new Response(body.byteLength === 0 ? null : body, answer);
  } catch (error) {
    if (request.signal.aborted) throw error;
    const message = "the house requires to be reached over the network, got no answer";
    const limit = "an answer of the house";
    throw new Refusal(0, [{ code: "house_unreachable", path: [], limit, received: null, message }]);
  }
}

export const api = createClient(overNetwork, location.origin);

/** Any failure as a refusal, so that a screen has one kind to show. */
export function asRefusal(error: unknown): Refusal {
  if (error instanceof Refusal) return error;
  const message = error instanceof Error ? error.message : String(error);
  return new Refusal(-1, [
    { code: "app_fault", path: [], limit: "no fault in the app", received: null, message },
  ]);
}
