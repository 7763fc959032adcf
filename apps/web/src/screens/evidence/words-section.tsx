import type { ScoresFound, WordsFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawDumbbells, Figure } from "../../plots/index.ts";

interface Props {
  readonly words: WordsFound | null;
  readonly scores?: ScoresFound | null;
  readonly title: string;
  /** What the words were said of, and what they are set beside. */
  readonly here: string;
  readonly elsewhere: string;
  readonly name: string;
}

const percent = (count: number, of: number): number => (of === 0 ? 0 : (100 * count) / of);

/** The words used more here than elsewhere, as counted; and the scores. */
export function WordsSection({ words, scores = null, title, here, elsewhere, name }: Props) {
  const [first, second] = words?.words ?? [];
  if (scores === null && first === undefined) return null;
  return (
    <Section title={title}>
      {scores !== null && <p>{scores.sentence}</p>}
      {words !== null && first !== undefined && (
        <Figure
          title={`“${first.word}”${second === undefined ? " was" : ` and “${second.word}” were`} said more often ${here} than ${elsewhere}; counted, not tested`}
          name={`${name}-words`}
          note={`Per cent of glasses with the word. Dot: ${here} (${words.glasses} glasses); ring: ${elsewhere} (${words.otherGlasses}). ${words.said}`}
          draw={(width) =>
            drawDumbbells(
              words.words.map(({ word, here: own, elsewhere: other }) => ({
                label: word,
                one: percent(other, words.otherGlasses),
                other: percent(own, words.glasses),
                said: `${own} and ${other}`,
              })),
              width,
              [0, 100],
            )
          }
          table={{
            heads: [
              "Word",
              `Glasses ${here}, of ${words.glasses}`,
              `Glasses ${elsewhere}, of ${words.otherGlasses}`,
            ],
            rows: words.words.map(({ word, here: own, elsewhere: other }) => [
              word,
              String(own),
              String(other),
            ]),
          }}
        />
      )}
    </Section>
  );
}
