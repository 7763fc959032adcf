import { isLoopback } from "./loopback.ts";

export interface Settings {
  readonly hostname: string;
  /** 0 for any free one. */
  readonly port: number;
}

const DEFAULT_PORT = 4480;

/**
 * Where to listen: PORT and HOST. This version listens to its own machine only, because the house asks nobody who
 * they are yet; listening on a network comes with an owner's passphrase in a later version.
 */
export function readSettings(env: NodeJS.ProcessEnv): Settings {
  const hostname = env["HOST"] || "127.0.0.1";
  if (!isLoopback(hostname)) {
    throw new Error(
      `HOST requires 127.0.0.1, localhost or ::1, got ${hostname}: ` +
        "this version has no owner's passphrase yet and so listens to its own machine only",
    );
  }
  const port = env["PORT"] || String(DEFAULT_PORT);
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) {
    throw new Error(`PORT requires a whole number from 0 to 65535 (0 for any free port), got ${port}`);
  }
  return { hostname, port: Number(port) };
}
