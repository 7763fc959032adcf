/** Whether a host name, without port and brackets, can only be this machine. */
export function isLoopback(hostname: string): boolean {
  const name = hostname.toLowerCase();
  return name === "localhost" || name === "::1" || name === "[::1]" || /^127(\.\d{1,3}){3}$/.test(name);
}

/** An IPv4 address that arrived on an IPv6 socket, as itself (RFC 4291, 2.5.5.2). */
export const plainAddress = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, "");
