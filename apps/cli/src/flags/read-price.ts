import type { Issue } from "@partsproof/house/protocol";
import { issueAt } from "./bad-input.ts";

/** How many decimals a currency is written with: 2 for most, 0 for yen. */
function minorDigits(currency: string): number {
  const format = new Intl.NumberFormat("en-GB", { style: "currency", currency });
  return format.resolvedOptions().maximumFractionDigits ?? 2;
}

/** "45" or "45.50" as whole minor units (cents, pence) of the household's currency; nothing is rounded. */
export function minorUnits(text: string, currency: string): number | Issue {
  const digits = minorDigits(currency);
  const shape = digits === 0 ? /^\d{1,8}$/ : new RegExp(`^\\d{1,6}(?:[.,]\\d{1,${digits}})?$`);
  const typed = text.trim();
  if (!shape.test(typed)) {
    const example = digits === 0 ? "45" : `45.${"0".repeat(digits)}`;
    return issueAt(["price"], "price_unreadable", `an amount such as ${example} ${currency}`, text);
  }
  const [whole = "0", part = ""] = typed.replace(",", ".").split(".");
  return Number(whole) * 10 ** digits + Number(part.padEnd(digits, "0") || 0);
}
