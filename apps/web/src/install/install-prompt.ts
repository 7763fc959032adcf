/** Chromium's offer to install; other browsers have it in their menus only. */
interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}

let kept: InstallPrompt | null = null;
const listeners = new Set<() => void>();

export function watchInstallPrompt(): void {
  globalThis.addEventListener("beforeinstallprompt", (event) => {
    // Shown where somebody looks for it, not over the sheet.
    event.preventDefault();
    kept = event as InstallPrompt;
    for (const listener of listeners) listener();
  });
}

export const onInstallable = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The browser's own question; null where it has none to ask. */
export function promptInstall(): (() => void) | null {
  const prompt = kept;
  if (prompt === null) return null;
  return () => {
    kept = null;
    for (const listener of listeners) listener();
    void prompt.prompt();
  };
}
