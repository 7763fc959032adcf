import { luckVerdict, plainChance, shownP } from "@partsproof/core/sensory";
import { binomialTail, midranks, quotient } from "@partsproof/core/statistics";
import type { ClosenessFound, Finding } from "../../protocol/index.ts";
import type { FoundSheet } from "./found-sheet.ts";
import { shortFraction } from "./luck.ts";

/** Q14: the glasses by how close they were put, and where the hidden target was. Null where the question is another. */
export function foundCloseness(
  glasses: Finding["glasses"],
  sheets: readonly FoundSheet[],
): ClosenessFound | null {
  const targets = glasses.filter(({ target }) => target);
  const [target] = targets;
  if (!target) return null;
  const ranked = sheets.flatMap(({ shown, ranks }) => (ranks === null ? [] : [{ shown, ranks }]));
  const placed = ranked.map(({ shown: { sheetId, tasterId, taster }, ranks }) => ({
    sheetId,
    tasterId,
    taster,
    rank: Math.min(...targets.map(({ glass }) => ranks[glass] ?? glasses.length)),
    of: glasses.length,
  }));
  // A glass level with another shares a mean rank above 1: it did not come first.
  const first = placed.filter(({ rank }) => rank === 1).length;
  const chance = { numerator: BigInt(targets.length), denominator: BigInt(glasses.length) };
  const tail = binomialTail(placed.length, first, chance);
  const p = quotient(tail.numerator, tail.denominator);
  const places = midranks(glasses.map(({ meanRank }) => meanRank ?? 0));
  const method = `exact binomial law, one-sided, ${placed.length} ${placed.length === 1 ? "sheet" : "sheets"}, chance ${targets.length}/${glasses.length} a sheet; a tie is not first`;
  const luck =
    placed.length === 0
      ? null
      : {
          p,
          fraction: shortFraction(`${tail.numerator}/${tail.denominator}`),
          words: plainChance(p),
          method,
        };
  return {
    target: { nameId: target.nameId, label: target.label },
    order: glasses
      .flatMap(({ glass, label, pour, target: isTarget, meanRank }) =>
        meanRank === null
          ? []
          : [
              {
                glass,
                label: pour === "" ? label : `${label}, ${pour}`,
                target: isTarget,
                place: places[glass] ?? 0,
                meanRank,
              },
            ],
      )
      .toSorted((a, b) => a.place - b.place || a.glass - b.glass),
    sheets: placed,
    first,
    luck,
    sentence:
      luck === null
        ? "No locked sheet has a ranking, so nothing was found out."
        : `The hidden target was put first in ${first} of ${placed.length} sheets: that ${luckVerdict(p)} (${shownP(p)}, ${method}).`,
  };
}
