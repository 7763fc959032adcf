import { type Cell, is, not, plainNumber } from "./cell.ts";

/** Signs of money and the currencies that write them (ISO 4217). Common practice, no source. */
const SIGNS: readonly (readonly [string, readonly string[]])[] = [
  ["€", ["EUR"]],
  ["£", ["GBP"]],
  ["¥", ["JPY", "CNY"]],
  ["kr", ["SEK", "NOK", "DKK", "ISK"]],
  ["$", ["USD", "CAD", "AUD", "NZD", "SGD", "HKD"]],
  ["zł", ["PLN"]],
  ["₹", ["INR"]],
];
const MOST_MINOR = 100_000_000;

/** A price in whole minor units of the household's one currency; another currency's sign or code is refused, never converted. */
export function readPrice(text: string, currency: string): Cell<number> {
  const said = text.trim();
  const code = /(?:^|[\s\d])([A-Z]{3})(?:$|[\s\d])/u.exec(said)?.[1];
  if (code !== undefined && code !== currency) return other(currency);
  const lower = said.toLowerCase();
  const sign = SIGNS.find(([mark]) => lower.includes(mark));
  if (sign && !sign[1].includes(currency)) return other(currency);
  const value = amount(said.replaceAll(/[A-Za-z€£¥$₹ł]|\.-|,-/gu, "").trim());
  if (value === null || value < 0) return not("price_unreadable", "a price such as 45, 45,90 or 1.234,50");
  const minor = Math.round(value * 10 ** digitsOf(currency));
  return minor <= MOST_MINOR ? is(minor) : not("price_out_of_range", `at most ${MOST_MINOR} minor units`);
}

/** No price has three decimals: "1,234" is a thousand and more. */
function amount(text: string): number | null {
  return /^[1-9]\d{0,2}[.,]\d{3}$/u.test(text) ? Number(text.replace(/[.,]/u, "")) : plainNumber(text);
}

const other = (currency: string) =>
  not("currency_other", `a price in ${currency}, the household's one currency`);

export const digitsOf = (currency: string): number =>
  new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
