const LOOPBACK = new Set(["127.0.0.1", "localhost", "::1"]);

/** Whether a host name, without port and brackets, can only be this machine. */
export function isLoopback(hostname: string): boolean {
  return LOOPBACK.has(hostname.toLowerCase());
}
