import { createClient, Refusal } from "@partsproof/house/protocol";

/** The house over the network; an unreachable one is a refusal like any other, with status 0. */
async function overNetwork(request: Request): Promise<Response> {
  try {
    return await fetch(request);
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
