import type { Issue } from "@partsproof/house/protocol";
import type { Path } from "../parts/issues-at.ts";

interface Written {
  readonly format: Intl.NumberFormat;
  /** How many decimals the currency is written with: 2 for most, 0 for yen. */
  readonly digits: number;
}

/** By currency: making one takes longer than all it will ever write. */
const made = new Map<string, Written>();

function written(currency: string): Written {
  const before = made.get(currency);
  if (before !== undefined) return before;
  const style = { style: "currency", currency, currencyDisplay: "narrowSymbol" } as const;
  const format = new Intl.NumberFormat("en-GB", style);
  const one = { format, digits: format.resolvedOptions().maximumFractionDigits ?? 2 };
  made.set(currency, one);
  return one;
}

/** Whole or broken minor units as money: 4550 of USD is "US$45.50". */
export function printMoney(minor: number, currency: string): string {
  const { format, digits } = written(currency);
  return format.format(minor / 10 ** digits);
}

/** Minor units as a plain number for a text box: 4550 of USD is "45.50". */
export function moneyAsTyped(minor: number | null, currency: string): string {
  if (minor === null) return "";
  const { digits } = written(currency);
  return (minor / 10 ** digits).toFixed(digits);
}

/** Reads "45", "45.50" or "45,50" as whole minor units; an empty text is null, no price known. */
export function readMoney(
  text: string,
  currency: string,
  path: Path,
): { readonly ok: true; readonly minor: number | null } | { readonly ok: false; readonly issue: Issue } {
  const typed = text.trim();
  if (typed === "") return { ok: true, minor: null };
  const { digits } = written(currency);
  const shape = digits === 0 ? /^\d{1,9}$/ : new RegExp(`^\\d{1,7}(?:[.,]\\d{1,${digits}})?$`);
  if (shape.test(typed)) {
    const [whole = "0", part = ""] = typed.replace(",", ".").split(".");
    return { ok: true, minor: Number(whole) * 10 ** digits + Number(part.padEnd(digits, "0") || 0) };
  }
  const example = digits === 0 ? "45" : `45.${"5".padEnd(digits, "0")}`;
  const limit = `an amount such as ${example} ${currency}`;
  const message = `price requires ${limit}, got "${typed}"`;
  return { ok: false, issue: { code: "price_unreadable", path: [...path], limit, received: typed, message } };
}
