import type { Finding } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { RankPlot } from "../../plots/index.ts";
import { luckVerdict } from "./luck-words.ts";
import { rankedGlasses, ranksSentence } from "./ranked-glasses.ts";
import { TargetMark } from "../flights/target-mark.tsx";

/** Which glass was liked best, and whether the tasters agree more than luck would. */
export function Ranks({ finding }: { readonly finding: Finding }) {
  const ranked = rankedGlasses(finding);
  if (ranked.length === 0) return null;
  const { ranks } = finding;
  return (
    <Section title="Which was liked best">
      <RankPlot
        title={ranksSentence(ranked)}
        glasses={finding.flight.glassCount}
        rows={ranked.map((row) => ({
          key: String(row.glass),
          mean: row.mean,
          ranks: row.ranks,
          label: (
            <>
              <span className="name">{row.title}</span>
              {row.target && <TargetMark />}
            </>
          ),
        }))}
      />
      {ranks === null ? (
        <p>One ranking alone has nothing to agree with, so nothing can be said about luck.</p>
      ) : (
        <div className="luck">
          <p>
            <strong>{luckVerdict(ranks.chance.p)}</strong>: {ranks.chance.words}.
          </p>
          <details>
            <summary>The number and how it was reckoned</summary>
            <p>{ranks.sentence}</p>
            <dl className="finding-numbers">
              <div>
                <dt>Friedman’s statistic, ties counted</dt>
                <dd>
                  {Number(ranks.statistic.toFixed(2))} ({ranks.df} df)
                </dd>
              </div>
              <div>
                <dt>Kendall’s W, 0 no agreement, 1 full</dt>
                <dd>{ranks.kendallW.toFixed(2)}</dd>
              </div>
              <div>
                <dt>Sheets counted</dt>
                <dd>{ranks.sheetsCounted}</dd>
              </div>
            </dl>
            <p className="small soft">
              It says whether the rankings agree more than luck would, not by how much one glass is better.
            </p>
          </details>
          <p className="small soft">This is about the whole order, not about which is best.</p>
        </div>
      )}
    </Section>
  );
}
