import { DAY_MS } from "@partsproof/core/quantity";
import { type Cell, is, not } from "./cell.ts";

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
/**
 * Days as tables count them: 1 is 1900-01-01 and a 29th of February 1900 that never was is counted, so that from March 1900 on day n is n days
 * after 1899-12-30. Source: ECMA-376 part 1, 18.17.4.1 (the 1900 date system), from memory; example there: 2.2 of 36526 is 2000-01-01.
 */
const DAY_ZERO = Date.UTC(1899, 11, 30);
/** 1970 to 2064: a smaller or larger bare number is no day on which somebody opened a bottle. */
const [FIRST, LAST] = [25_569, 60_000];

export type DateOrder = "dmy" | "mdy";

/** Which of day and month comes first, from the days that say it themselves; null where none does. */
export function dateOrder(texts: readonly string[]): DateOrder | null {
  for (const text of texts) {
    const found = /^(\d{1,2})[/-](\d{1,2})[/-]\d{2,4}$/u.exec(text.trim());
    if (found && Number(found[1]) > 12) return "dmy";
    if (found && Number(found[2]) > 12) return "mdy";
  }
  return null;
}

/** A day as YYYY-MM-DD (ISO 8601), or the words for yes and no: null then, with `true` for opened on a day not known. */
export function readDate(text: string, order: DateOrder | null): Cell<string | boolean> {
  const said = text.trim();
  if (/^(?:yes|y|x|true|open|opened|ja|offen|oui)$/iu.test(said)) return is(true);
  if (/^(?:no|n|false|sealed|closed|unopened|nein|zu|non)$/iu.test(said)) return is(false);
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/u.exec(said);
  if (iso) return day(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const points = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{2,4})$/u.exec(said);
  if (points) return day(full(points[3]!), Number(points[2]), Number(points[1]));
  const slashes = /^(\d{1,2})[/-](\d{1,2})[/-](\d{2,4})$/u.exec(said);
  if (slashes) {
    const [, a = "", b = "", year = ""] = slashes;
    if (order === null && a !== b)
      return not(
        "date_either",
        "a day with its month in letters, or the order of day and month told: this could be either",
      );
    const [d, m] = order === "mdy" ? [b, a] : [a, b];
    return day(full(year), Number(m), Number(d), true);
  }
  const named =
    /^(\d{1,2})[ .-]+([a-z]{3})[a-z]*[ .,-]+(\d{2,4})$/iu.exec(said) ??
    reordered(/^([a-z]{3})[a-z]*[ .]+(\d{1,2})[ ,]+(\d{4})$/iu.exec(said));
  if (named) {
    const month = MONTHS.indexOf(named[2]!.toLowerCase()) + 1;
    return month === 0 ? unreadable : day(full(named[3]!), month, Number(named[1]));
  }
  if (/^\d{5}(?:[.,]\d+)?$/u.test(said)) {
    const serial = Math.floor(Number(said.replace(",", ".")));
    if (serial >= FIRST && serial <= LAST) {
      const date = new Date(DAY_ZERO + serial * DAY_MS).toISOString().slice(0, 10);
      return is(date, `${date} (a table's day number)`);
    }
  }
  return unreadable;
}

const unreadable = not("date_unreadable", "a day such as 2024-03-31, 31.3.2024 or 31 Mar 2024");
const reordered = (found: RegExpExecArray | null): readonly string[] | null =>
  found === null ? null : [found[0], found[2]!, found[1]!, found[3]!];
const full = (year: string): number => (year.length <= 2 ? 2000 + Number(year) : Number(year));

function day(year: number, month: number, date: number, guessed = false): Cell<string | boolean> {
  const made = new Date(Date.UTC(year, month - 1, date));
  const real =
    made.getUTCFullYear() === year && made.getUTCMonth() === month - 1 && made.getUTCDate() === date;
  if (!real || year < 1900 || year > 2200) return not("date_none", "a day that there is");
  const iso = made.toISOString().slice(0, 10);
  return is(iso, guessed ? iso : undefined);
}
