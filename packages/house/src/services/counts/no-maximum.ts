import type { NoMaximum } from "@partsproof/core/statistics";
import type { CountsReason } from "../../protocol/index.ts";

/** Why no most likely worths exist, with the names. */
export function toldNoMaximum({ code, ahead, behind }: NoMaximum, items: readonly string[]): CountsReason {
  const names = (some: readonly number[]): string[] => some.map((item) => items[item] ?? "");
  const list = (some: readonly number[]): string => {
    const shown = names(some.slice(0, 6)).join(", ");
    return some.length > 6 ? `${shown} and ${some.length - 6} more` : shown;
  };
  const messages: Readonly<Record<NoMaximum["code"], () => string>> = {
    never_compared: () =>
      `${list(ahead)} and ${list(behind)} were never compared, not even through others: nothing says how far apart they are`,
    always_ahead: () =>
      `none of ${list(ahead)} was ever behind any of ${list(behind)}: the most likely distance between them has no bound`,
    runs_away: () =>
      "the worths and what ties or the order of serving do cannot be told apart: the likelihood rises without end or stays level",
  };
  return {
    code,
    message: messages[code](),
    ...(ahead.length + behind.length === 0 ? {} : { ahead: names(ahead), behind: names(behind) }),
  };
}
