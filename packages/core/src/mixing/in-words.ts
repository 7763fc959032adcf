import type { MixingLaw } from "./learn-mixing.ts";

/** "14 to 1"; beyond what anybody could mean by odds, only that it is more. */
function oddsInWords(odds: number): string {
  const MOST = 1000;
  return odds > MOST ? `more than ${MOST} to 1` : `${Math.floor(odds)} to 1`;
}

/**
 * What mixes tell of one attribute, in a sentence.
 *
 * @example mixingInWords("smoke", law) // "smoke: the strongest part rules, 14 to 1 over the mean, from 9 blends"
 */
export function mixingInWords(attribute: string, { law, exponent, mixes, odds, power }: MixingLaw): string {
  const from = `from ${mixes} ${mixes === 1 ? "blend" : "blends"}`;
  if (law === "mean") {
    const against = 1 / Math.max(odds.power, odds.strongest);
    const ahead =
      against >= 2
        ? `${oddsInWords(against)} over what is likeliest else`
        : against >= 0.5
          ? "though another law is about as likely"
          : `though another law is likelier, ${oddsInWords(1 / against)}: not sure enough to go by`;
    return `${attribute}: the mean of the parts, ${ahead}, ${from}`;
  }
  const over = `${oddsInWords(odds[law])} over the mean, ${from}`;
  if (law === "strongest") return `${attribute}: the strongest part rules, ${over}`;
  const which = exponent > 1 ? "strong parts count more" : "weak parts count more";
  return `${attribute}: ${which} than their share (exponent ${exponent.toFixed(1)}, ${power.low.toFixed(1)} to ${power.high.toFixed(1)}), ${over}`;
}
