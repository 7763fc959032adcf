import type { Refusal } from "@partsproof/house/protocol";
import "./states.css";

/** Said on a page that shows what it last knew, while the house cannot be reached. */
export function OutOfReach({ refusal }: { readonly refusal: Refusal | null }) {
  if (refusal === null || (refusal.status !== 0 && refusal.status < 500)) return null;
  return (
    <p className="out-of-reach" role="status">
      The house cannot be reached. This is how it last stood on this device.
    </p>
  );
}
