import type { WordGapsFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawDumbbells, Figure } from "../../plots/index.ts";
import { Said } from "./said.tsx";

interface Props {
  readonly found: WordGapsFound | null;
  /** The taster's. */
  readonly name: string;
}

/** Words that the others wrote of the same glasses and this taster did not, and the other way round. */
export function WordGapsSection({ found, name }: Props) {
  if (found === null || found.missed.length + found.alone.length === 0) return null;
  return (
    <Section title="Blind spots, and words of their own">
      <Gaps
        found={found}
        gaps={found.missed}
        title={found.missedSaid}
        name={name}
        file="taster-blind-spots"
      />
      <Gaps found={found} gaps={found.alone} title={found.aloneSaid} name={name} file="taster-own-words" />
      <Said sentence={found.amountSaid} />
      <details className="evidence-how">
        <summary>How this was reckoned</summary>
        <p>{found.method}.</p>
      </details>
    </Section>
  );
}

const percent = (count: number, of: number): number => (of === 0 ? 0 : (100 * count) / of);
const upper = (label: string): string => label.charAt(0).toUpperCase() + label.slice(1);
const printP = (p: number | null): string =>
  p === null ? "too few to tell" : p < 0.001 ? "< 0.001" : String(Number(p.toPrecision(2)));

interface GapsProps {
  readonly found: WordGapsFound;
  readonly gaps: WordGapsFound["missed"];
  readonly title: string;
  readonly name: string;
  readonly file: string;
}

function Gaps({ found, gaps, title, name, file }: GapsProps) {
  if (gaps.length === 0) return null;
  const { glasses, otherGlasses, others } = found;
  return (
    <Figure
      title={title}
      name={file}
      note={`Per cent of the same glasses with a word of that kind. Dot: ${name} (${glasses} ${glasses === 1 ? "glass" : "glasses"}); ring: the others (${otherGlasses} by ${others === 1 ? "1 taster" : `${others} tasters`}).`}
      draw={(width) =>
        drawDumbbells(
          gaps.map(({ label, own, others: theirs }) => ({
            label: upper(label),
            one: percent(theirs, otherGlasses),
            other: percent(own, glasses),
            said: `${own} and ${theirs}`,
          })),
          width,
          [0, 100],
        )
      }
      table={{
        heads: [
          "Kind of word",
          "Such as",
          `${name}, of ${glasses}`,
          `The others, of ${otherGlasses}`,
          "Of the others who wrote it",
          "p by itself",
          "p allowing for all looked at",
        ],
        rows: gaps.map(({ label, words, own, others: theirs, othersWho, p, pTogether }) => [
          upper(label),
          words.join(", "),
          String(own),
          String(theirs),
          `${othersWho} of ${others}`,
          printP(p),
          printP(pTogether),
        ]),
      }}
    >
      <details className="evidence-how">
        <summary>Kind by kind</summary>
        <ul>
          {gaps.map(({ kind, sentence }) => (
            <li key={kind}>
              <Said sentence={sentence} />
            </li>
          ))}
        </ul>
      </details>
    </Figure>
  );
}
