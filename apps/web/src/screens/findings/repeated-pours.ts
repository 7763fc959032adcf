import type { Finding } from "@partsproof/house/protocol";

export interface RepeatedPour {
  readonly label: string;
  readonly pairs: readonly { readonly taster: string; readonly first: number; readonly second: number }[];
}

/** Names poured exactly twice, with the two ranks that each taster gave them. */
export function repeatedPours(finding: Finding): readonly RepeatedPour[] {
  const byName = Map.groupBy(finding.glasses, ({ nameId }) => nameId);
  return [...byName.values()].flatMap((pours) => {
    const [one, two] = pours;
    if (pours.length !== 2 || one === undefined || two === undefined) return [];
    const pairs = finding.sheets.flatMap((sheet) => {
      const rankOf = (glass: number): number | null =>
        sheet.glasses.find((tasted) => tasted.glass === glass)?.rank ?? null;
      const first = rankOf(one.glass);
      const second = rankOf(two.glass);
      return first === null || second === null ? [] : [{ taster: sheet.taster, first, second }];
    });
    return pairs.length === 0 ? [] : [{ label: one.label, pairs }];
  });
}

/** How far apart the two pours landed, in a sentence: the title of the plot. */
export function repeatSentence({ label, pairs }: RepeatedPour): string {
  const gaps = pairs.map(({ first, second }) => Math.abs(first - second));
  const least = Math.min(...gaps);
  const most = Math.max(...gaps);
  const places = (n: number): string => (n === 1 ? "1 place" : `${n} places`);
  if (most === 0) return `Two pours of ${label} got the same rank`;
  const apart = least === most ? `${places(most)} apart` : `${least} to ${places(most)} apart`;
  return `Two pours of ${label} landed ${apart}`;
}
