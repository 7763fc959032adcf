import "./states.css";

/** Shown while `what` is fetched; appears late enough not to flash. */
export function Busy({ what }: { readonly what: string }) {
  return (
    <p className="busy" aria-live="polite">
      <span className="busy-glass" aria-hidden="true" />
      Fetching {what} …
    </p>
  );
}
