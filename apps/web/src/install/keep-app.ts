import { watchInstallPrompt } from "./install-prompt.ts";

/** Lets the browser keep the built files, so that a page opened once opens again without a network. */
export async function keepApp(): Promise<void> {
  watchInstallPrompt();
  // On plain HTTP there is no such thing; while developing it would keep yesterday's files.
  if (
    !globalThis.isSecureContext ||
    !("serviceWorker" in navigator) ||
    import.meta.env.MODE === "development"
  )
    return;
  // Refused by a setting or for want of room: the app works all the same.
  await navigator.serviceWorker.register("/service-worker.js").catch(() => undefined);
}
