import { hostname } from "node:os";

/** The name in a Host header, without its port. */
export function hostnameOf(host: string): string {
  return host.startsWith("[") ? host.slice(1, host.indexOf("]")) : host.replace(/:\d*$/, "");
}

/** Names by which this machine is known at home: its own, and that in multicast DNS (RFC 6762). */
export function machineNames(): readonly string[] {
  const own = hostname().toLowerCase();
  return own === "" ? [] : [own, own.endsWith(".local") ? own : `${own.split(".")[0]}.local`];
}
