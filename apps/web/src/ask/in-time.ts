import { Refusal } from "@partsproof/house/protocol";

/** A house at home answers in well under a second; a phone far from the router in a few. */
const PATIENCE_MS = 10_000;

/**
 * Asks, and waits no longer than that. A network that swallows what is sent gives no answer and no error either, for as
 * long as the system keeps trying, which is minutes; the house is then as good as out of reach.
 *
 * @throws {Refusal} of status 0, as for any house that cannot be reached
 */
export async function inTime<T>(ask: (signal: AbortSignal) => Promise<T>, ms = PATIENCE_MS): Promise<T> {
  const signal = AbortSignal.timeout(ms);
  try {
    return await ask(signal);
  } catch (error) {
    if (!signal.aborted || error instanceof Refusal) throw error;
    const limit = `an answer of the house within ${ms / 1000} s`;
    const message = `the house requires to be reached over the network, got no answer in ${ms / 1000} s`;
    throw new Refusal(0, [{ code: "house_unreachable", path: [], limit, received: null, message }]);
  }
}
