import { networkInterfaces } from "node:os";
import { renderUnicodeCompact } from "uqr";
import { isLoopback } from "./loopback.ts";
import type { Settings } from "./settings.ts";

const EVERY_ADDRESS = new Set(["0.0.0.0", "::", "[::]"]);

/** Addresses of this machine on its networks: the home ones (RFC 1918) first, IPv6 last. */
function ownAddresses(): readonly string[] {
  const found = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ internal, address }) => !internal && !/^fe80:/i.test(address));
  const rank = (address: string): number => {
    if (address.includes(":")) return 2;
    return /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.)/.test(address) ? 0 : 1;
  };
  return found.map(({ address }) => address).toSorted((a, b) => rank(a) - rank(b));
}

const urlOf = (scheme: string, hostname: string, port: number): string =>
  `${scheme}://${hostname.includes(":") ? `[${hostname}]` : hostname}:${port}`;

/** This machine's own way in. */
export function hereAddress({ hostname, tls }: Settings, port: number): string {
  const own = hostname === "::" ? "::1" : hostname === "0.0.0.0" ? "127.0.0.1" : hostname;
  return urlOf(tls === null ? "http" : "https", own, port);
}

/** Where phones at the table reach the house; the first is the one to show. */
export function tableAddresses({ hostname, origin, tls }: Settings, port: number): readonly string[] {
  if (origin !== null) return [origin];
  if (isLoopback(hostname)) return [];
  const names = EVERY_ADDRESS.has(hostname) ? ownAddresses() : [hostname];
  return names
    .filter((name) => hostname !== "0.0.0.0" || !name.includes(":"))
    .map((name) => urlOf(tls === null ? "http" : "https", name, port));
}

/** A square code (ISO/IEC 18004) for a terminal. */
export const squareCode = (text: string): string => renderUnicodeCompact(text, { ecc: "M", border: 2 });
