import { printMass, printVolume } from "@partsproof/core/quantity";
import type { StatedStrength } from "@partsproof/house/protocol";

/** Strength as a label gives it: all the digits it was stated with. */
export const stated = ({ basis, value }: StatedStrength): string =>
  basis === "abv20" ? `${value} % vol` : `${value} proof`;

/** A strength that was computed. Null of an empty vessel. */
export const abv = (value: number | null, decimals = 1): string =>
  value === null ? "no strength" : `${value.toFixed(decimals)} % vol`;

export const proof = (value: number | null, decimals = 1): string =>
  value === null ? "no proof" : `${value.toFixed(decimals)} proof`;

/** Millilitres at 20 °C, to a tenth. */
export const ml = (value: number): string => printVolume(value, 1);

export const g = (value: number): string => printMass(value, 1);

export const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

/** Minor units (cents, pence) as money. */
export function money(minor: number, currency: string): string {
  const format = new Intl.NumberFormat("en-GB", { style: "currency", currency, currencyDisplay: "code" });
  const digits = format.resolvedOptions().maximumFractionDigits ?? 2;
  return `${(minor / 10 ** digits).toFixed(digits)} ${currency}`;
}

/** "2031-05-04 19:30 UTC"; null is a dash. */
export const instant = (at: string | null): string =>
  at === null ? "-" : `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`;

export const day = (at: string | null): string => (at === null ? "-" : at.slice(0, 10));

export const plural = (count: number, one: string, more = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;
