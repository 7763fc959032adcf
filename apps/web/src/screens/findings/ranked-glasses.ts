import type { Finding } from "@partsproof/house/protocol";

export interface RankedGlass {
  readonly glass: number;
  readonly title: string;
  readonly target: boolean;
  readonly mean: number;
  /** By sheet with a ranking that counts. */
  readonly ranks: readonly { readonly taster: string; readonly rank: number }[];
}

/** "Skerry Rye", or "Skerry Rye (first pour)" where it was poured more than once. */
export function glassTitle({ label, pour }: Finding["glasses"][number]): string {
  return pour === "" ? label : `${label} (${pour})`;
}

/** The rank that each sheet with a ranking gave a glass. */
export function ranksOfGlass(
  finding: Finding,
  glass: number,
): readonly { readonly taster: string; readonly rank: number }[] {
  return finding.sheets.flatMap((sheet) => {
    const rank = sheet.glasses.find((one) => one.glass === glass)?.rank ?? null;
    return rank === null ? [] : [{ taster: sheet.taster, rank }];
  });
}

/** The glasses that were ranked, best mean rank first; none where nobody ranked. */
export function rankedGlasses(finding: Finding): readonly RankedGlass[] {
  return finding.glasses
    .flatMap((one) =>
      one.meanRank === null
        ? []
        : [
            {
              glass: one.glass,
              title: glassTitle(one),
              target: one.target,
              mean: one.meanRank,
              ranks: ranksOfGlass(finding, one.glass),
            },
          ],
    )
    .toSorted((a, b) => a.mean - b.mean || a.glass - b.glass);
}

/** What the ranks say in a sentence: the title of their plot. */
export function ranksSentence(ranked: readonly RankedGlass[]): string {
  const [best] = ranked;
  if (best === undefined) return "Nobody ranked the glasses";
  const leaders = ranked.filter(({ mean }) => mean === best.mean);
  const sheets = best.ranks.length;
  const mean = Number(best.mean.toFixed(2));
  if (leaders.length === ranked.length) return "No glass stood above another";
  if (leaders.length > 2) return `${leaders.length} glasses share the best mean rank, ${mean}`;
  const names = leaders.map(({ title }) => title).join(" and ");
  if (sheets === 1) {
    const taster = best.ranks[0]?.taster ?? "The one taster";
    return `${taster} ranked ${names} ${leaders.length > 1 ? "level at the top" : "first"}`;
  }
  return leaders.length > 1
    ? `${names} share the best mean rank: ${mean} over ${sheets} sheets`
    : `${names} has the best mean rank: ${mean} over ${sheets} sheets`;
}
