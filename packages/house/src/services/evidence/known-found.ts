import { luckVerdict, shownP } from "@partsproof/core/sensory";
import { knownShare, matchLaw, poolLaws } from "@partsproof/core/statistics";
import type { KnownFound } from "../../protocol/index.ts";
import { luckOf } from "../findings/index.ts";
import type { House } from "../ports.ts";
import { countedOf, plural } from "./counted.ts";
import { keptFor } from "./kept.ts";
import type { NamedSheet } from "./mix-ups-found.ts";

const LEVEL = 0.95;
const percent = (share: number): string => `${Math.round(share * 100)} %`;

/**
 * W4: glasses named right, how far luck goes, and the share truly known; null where nothing was named.
 *
 * @param of count the glasses of this name alone
 * @param looked of how many such pages this is one, and what they are of: whoever looks at all of them finds the luckiest
 */
export function knownFound(
  house: House,
  sheets: readonly NamedSheet[],
  of?: string,
  looked: { readonly count: number; readonly what: string } = { count: 1, what: "" },
): KnownFound | null {
  const own = sheets.flatMap(({ truth, guesses, offer, flightId, tasterId }) => {
    const glasses = truth.flatMap((name, i) => {
      const guess = guesses[i] ?? null;
      return guess === null || (of !== undefined && name !== of) ? [] : [{ name, right: guess === name }];
    });
    if (glasses.length === 0) return [];
    const rows: Record<string, number> = {};
    for (const { name } of glasses) rows[name] = (rows[name] ?? 0) + 1;
    const right = glasses.filter((glass) => glass.right).length;
    return [{ flightId, tasterId, rows, columns: offer, right, guessed: glasses.length }];
  });
  if (own.length === 0) return null;
  const guessed = own.reduce((sum, sheet) => sum + sheet.guessed, 0);
  const right = own.reduce((sum, sheet) => sum + sheet.right, 0);
  const evidence = own.map(({ rows, columns, right: r }) => [
    Object.entries(rows).map(([name, count]) => [count, columns[name] ?? 0]),
    Object.values(columns),
    r,
  ]);
  const { luck, share, low, high } = keptFor(house, "known", evidence, () => {
    const law = poolLaws(own.map(({ rows, columns }) => matchLaw({ rows, columns })));
    const method = `exact law of names given out at random, one-sided, ${plural(own.length, "sheet")} taken as independent`;
    const known = knownShare(own, LEVEL);
    return {
      luck: luckOf(law, right, method),
      share: known.share,
      low: known.interval.low,
      high: known.interval.high,
    };
  });
  const pTogether = Math.min(1, luck.p * looked.count);
  const paid =
    looked.count > 1
      ? `; ${shownP(pTogether)}, allowing for all ${looked.count} ${looked.what} looked at`
      : "";
  return {
    counted: countedOf(own),
    guessed,
    right,
    luck,
    pTogether,
    share,
    low,
    high,
    level: LEVEL,
    sentence: `${right} of ${plural(guessed, "glass", "glasses")} ${guessed === 1 ? "was" : "were"} named right: that ${right === 0 ? "shows nothing" : luckVerdict(pTogether)} (${shownP(luck.p)}${paid}). Truly known: about ${percent(share)}, ${percent(low)} to ${percent(high)}.`,
    method: `${luck.method}; share known: exact tails turned round, 95 %, every glass as likely to be known${looked.count > 1 ? `; p for all ${looked.what} by Bonferroni's rule` : ""}`,
  };
}
