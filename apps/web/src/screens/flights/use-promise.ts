import { useEffect } from "react";
import { useAsk } from "../../api.ts";
import { storePromise } from "../../session/index.ts";

/** Stores on this phone, before the reveal, all 256 bits of what the house promises: the key's commitment, then the closing. */
export function usePromise(
  at: { readonly household: string; readonly flight: string },
  token: string | undefined,
): void {
  const asked = useAsk("getRecord", { at, ...(token === undefined ? {} : { token }) });
  const answer = asked.answer;
  useEffect(() => {
    // After the reveal it is too late: then a phone would only store what it is to check.
    if (answer === undefined || answer.record !== null) return;
    storePromise(at.flight, { commitment: answer.commitment, closing: answer.closing?.hash ?? null });
  }, [answer, at.flight]);
}
