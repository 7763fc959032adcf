import type { ClosenessFound } from "@partsproof/house/protocol";
import { listed } from "../../figures/index.ts";
import { Section } from "../../parts/index.ts";
import { RankPlot } from "../../plots/index.ts";
import { TargetMark } from "../flights/target-mark.tsx";
import { Luck } from "./luck.tsx";

interface ClosenessProps {
  readonly found: ClosenessFound;
  /** The rank each sheet gave a glass. */
  readonly ranksOf: (glass: number) => readonly { readonly taster: string; readonly rank: number }[];
}

/** Which came closest to the target, and where the hidden target itself was put. */
export function Closeness({ found, ranksOf }: ClosenessProps) {
  const { order, sheets, first, luck } = found;
  const [sheet] = sheets;
  const others = order.filter(({ target }) => !target);
  const best = Math.min(...others.map(({ place }) => place));
  const closest = others.filter(({ place }) => place === best).map(({ label }) => label);
  return (
    <Section title="How close to the target">
      {order.length > 0 && sheet !== undefined && (
        <RankPlot
          title={`Of the others, ${listed(closest)} came closest to ${found.target.label}`}
          glasses={sheet.of}
          rows={order.map((row) => ({
            key: String(row.glass),
            mean: row.meanRank,
            ranks: ranksOf(row.glass),
            label: (
              <>
                <span className="name">{row.label}</span>
                {row.target && <TargetMark />}
              </>
            ),
          }))}
        />
      )}
      {order.length === 0 && <p>{found.sentence}</p>}
      {sheets.length > 0 && (
        <p>
          Hidden among them, {found.target.label} itself was put first by {first} of {sheets.length}:{" "}
          {sheets.map(({ taster, rank, of }) => `${taster} put it ${placeOf(rank)} of ${of}`).join(", ")}.
        </p>
      )}
      {luck !== null && <Luck chance={luck} tail="this many put the target first, alone, or more" />}
    </Section>
  );
}

/** "1st"; a shared place as its mean: "2.5th". */
function placeOf(rank: number): string {
  const last = rank % 10;
  const teen = rank % 100 > 10 && rank % 100 < 14;
  return `${rank}${teen ? "th" : last === 1 ? "st" : last === 2 ? "nd" : last === 3 ? "rd" : "th"}`;
}
