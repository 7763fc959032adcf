import type { WorthsFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawIntervals, drawRibbons, Figure } from "../../plots/index.ts";
import { countedWords, oneDigit, share, twoDigits } from "./counted-words.ts";
import { Said } from "./said.tsx";

interface WorthsProps {
  readonly worths: WorthsFound;
  /** What is said beside the pairs. */
  readonly besides?: readonly string[];
  readonly title: string;
  /** Of the files. */
  readonly name: string;
}

type Item = WorthsFound["items"][number];
/** A place, or places, that it is in with at least this probability. */
const SURE = 0.9;

function sum(ranks: readonly number[]): number {
  return ranks.reduce((all, p) => all + p, 0);
}

/** The fewest first places that hold it with SURE. */
function firstPlaces({ label, ranks }: Item): string {
  const places = ranks.findIndex((_, i) => sum(ranks.slice(0, i + 1)) >= SURE) + 1;
  const p = share(sum(ranks.slice(0, places)));
  if (places === ranks.length - 1 && places > 1) return `${label} is not last with probability ${p}`;
  return places === 1
    ? `${label} is in place 1 with probability ${p}`
    : `${label} is in one of the first ${places} places with probability ${p}`;
}

function lastPlaces({ label, ranks }: Item): string {
  const places = ranks.findIndex((_, i) => sum(ranks.slice(ranks.length - i - 1)) >= SURE) + 1;
  const p = share(sum(ranks.slice(ranks.length - places)));
  // One of the last two of three is no more than not the first.
  if (places === ranks.length - 1 && places > 1) return `${label} is not in place 1 with probability ${p}`;
  return places === 1
    ? `${label} is last with probability ${p}`
    : `${label} in one of the last ${places} with ${p}`;
}

/** Who is ahead, how sure that is, and what place each may be in. */
export function WorthsSection({ worths, besides = [], title, name }: WorthsProps) {
  const { items, closeTo } = worths;
  const more = closeTo === null ? "liked more" : `closer to ${closeTo}`;
  const rests = `${countedWords(worths.counted, "ranking")}.`;
  const [last] = items.toReversed();
  const [lead] = items;
  return (
    <Section title={title}>
      <Figure
        title={worths.best.sentence}
        name={`${name}-worths`}
        note={`Log worth, further right is ${more}; 0.7 more is about two to one in a pair. Dot: expected; line: 95 % of what is believed${items.some(({ target }) => target) ? "; ring: the target" : ""}. ${rests}`}
        draw={(width) =>
          drawIntervals(
            items.map(({ label, worth, low, high, target }) => ({
              label,
              value: worth,
              low,
              high,
              said: oneDigit(worth),
              ring: target,
            })),
            width,
          )
        }
        table={{
          heads: [
            "What was poured",
            "Log worth",
            "95 % from",
            "to",
            "First, probability",
            "Expected place",
            "Rankings",
          ],
          rows: items.map(({ label, worth, low, high, ranks, expectedRank, rankings }) => [
            label,
            twoDigits(worth),
            twoDigits(low),
            twoDigits(high),
            share(ranks[0] ?? 0),
            oneDigit(expectedRank),
            String(rankings),
          ]),
        }}
      />
      <div className="evidence-said">
        <ul>
          {worths.pairs.map(({ other, sentence }) => (
            <li key={other}>
              <Said sentence={sentence} />
            </li>
          ))}
          {besides.map((sentence) => (
            <li key={sentence}>
              <Said sentence={sentence} />
            </li>
          ))}
        </ul>
        <p className="soft">
          {worths.pairsSaid} Rankings each stands in:{" "}
          {items.map(({ label, rankings }) => `${label} ${rankings}`).join("; ")}.
        </p>
      </div>
      <Figure
        title={`${lead === undefined ? "" : firstPlaces(lead)}; ${last === undefined ? "" : lastPlaces(last)}`}
        name={`${name}-places`}
        note={`Places, 1 is ${closeTo === null ? "best" : "closest"}; the thicker a ribbon at a place, the more probable that place. ${rests}`}
        draw={(width) =>
          drawRibbons(
            items.map(({ label, ranks, expectedRank }) => ({ label, ranks, said: oneDigit(expectedRank) })),
            width,
          )
        }
        table={{
          heads: ["What was poured", ...items.map((_, i) => `Place ${i + 1}`)],
          rows: items.map(({ label, ranks }) => [label, ...ranks.map(share)]),
        }}
      />
      <details className="evidence-how">
        <summary>How this was reckoned</summary>
        <p>{worths.placesSaid}</p>
        {worths.tastersSaid !== null && <p>{worths.tastersSaid}</p>}
        <p>
          {worths.method}. Drawing leaves each probability unsure by {worths.drawingError.toFixed(3)} at most
          (one standard error).
        </p>
      </details>
    </Section>
  );
}
