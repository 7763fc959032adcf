import type { KnownFound, MixUpsFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawBoard, drawIntervals, Figure } from "../../plots/index.ts";
import { countedWords } from "./counted-words.ts";
import { Said } from "./said.tsx";

interface Props {
  readonly title: string;
  readonly known: KnownFound | null;
  readonly mixUps: MixUpsFound | null;
  readonly name: string;
  /** What was guessed: "glasses", or one whiskey. */
  readonly what: string;
}

const percent = (x: number): string => `${Math.round(x * 100)} %`;

/** How many were named right, how many truly known, and who was taken for whom. */
export function MixUpsSection({ title, known, mixUps, name, what }: Props) {
  if (known === null && mixUps === null) return null;
  return (
    <Section title={title}>
      {known !== null && (
        <Figure
          title={
            known.low > 0
              ? `Some of ${what} were very likely known: anything from ${percent(known.low)} to ${percent(known.high)} fits`
              : `${known.right} of ${known.guessed} named right; it may be that all were guessed`
          }
          name={`${name}-known`}
          note={`Share of ${what} truly known, the rest luck. Dot: most likely; line: 95 %. ${countedWords(known.counted, "sheet")}.`}
          draw={(width) =>
            drawIntervals(
              [
                {
                  label: "Truly known, %",
                  value: known.share * 100,
                  low: known.low * 100,
                  high: known.high * 100,
                  said: percent(known.share),
                },
              ],
              width,
              [0, 100],
            )
          }
          table={{
            heads: ["", "Named right", "Of", "Truly known", "95 % from", "to"],
            rows: [
              [
                "All",
                String(known.right),
                String(known.guessed),
                percent(known.share),
                percent(known.low),
                percent(known.high),
              ],
            ],
          }}
        >
          <Said sentence={known.sentence} />
          <details className="evidence-how">
            <summary>How this was reckoned</summary>
            <p>{known.method}.</p>
          </details>
        </Figure>
      )}
      {mixUps !== null && mixUps.names.length > 1 && (
        <Figure
          title={mixUps.sentence}
          name={`${name}-mix-ups`}
          note={`Down: what was poured; across: what it was called, by the same numbers. Filled dots are right. ${countedWords(mixUps.counted, "sheet")}.`}
          draw={(width) =>
            drawBoard(
              mixUps.names.map(({ label }) => label),
              mixUps.board,
              width,
            )
          }
          table={{
            heads: ["Was poured", ...mixUps.names.map(({ label }, i) => `called ${i + 1} ${label}`)],
            rows: mixUps.names.map(({ label }, i) => [
              `${i + 1} ${label}`,
              ...(mixUps.board[i] ?? []).map(String),
            ]),
          }}
        >
          <div className="evidence-said">
            {mixUps.pairs.length > 0 && (
              <details className="evidence-how">
                <summary>Pair by pair</summary>
                <ul>
                  {mixUps.pairs.map(({ one, other, sentence }) => (
                    <li key={`${one} ${other}`}>
                      <Said sentence={sentence} />
                    </li>
                  ))}
                </ul>
                <p>{mixUps.method}.</p>
              </details>
            )}
          </div>
        </Figure>
      )}
    </Section>
  );
}
