import type { Ticket } from "@partsproof/house/protocol";
import { drawKey, keep, kept } from "../../session/index.ts";

const LINK = /^#([0-9a-f]{64})$/;

/** The ticket that stands behind the `#` of a join link. */
export function ticketInAddress(hash: string): Ticket | null {
  const link = LINK.exec(hash)?.[1];
  return link === undefined ? null : { kind: "link", link };
}

/** A code as typed, without what does not matter in it; null while it cannot be one. */
export function ticketTyped(typed: string): Ticket | null {
  const code = typed.replaceAll(/[\s-]/g, "").toUpperCase();
  return /^[0-9A-Z]{8}$/.test(code) ? { kind: "code", code } : null;
}

/** This device's key for a ticket, the same each time, so that a joining whose answer was lost is the same joining. */
export function keyFor(ticket: Ticket): string {
  const name = `joining.${ticket.kind === "link" ? ticket.link : ticket.code}`;
  const key = kept(name) ?? drawKey();
  keep(name, key);
  return key;
}
