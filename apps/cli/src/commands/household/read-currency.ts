import type { Reading } from "@partsproof/core/quantity";
import { Currency } from "@partsproof/house/protocol";

/** Three letters of ISO 4217, whatever their case. */
export function readCurrency(text: string): Reading<string> {
  const code = text.trim().toUpperCase();
  if (Currency.safeParse(code).success) return { ok: true, value: code };
  const limit = "three letters of ISO 4217, such as USD";
  const message = `currency requires ${limit}, got "${text}"`;
  return { ok: false, issue: { code: "currency_unreadable", limit, received: text, message } };
}
