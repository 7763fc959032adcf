import type { ApartFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { oneDigit } from "./counted-words.ts";

/** Open ends are drawn to here; a d′ above it is told right nearly every time. */
const FAR = 5;

/** Whether two were told apart, and how far apart they taste. */
export function ApartSection({
  apart,
  name,
}: {
  readonly apart: readonly ApartFound[];
  readonly name: string;
}) {
  if (apart.length === 0) return null;
  const measured = apart.filter(({ dPrime, high, low }) => dPrime !== null || high !== null || low > 0);
  const clear = apart.filter(({ pTogether }) => pTogether < 0.05);
  const title =
    clear.length === 0
      ? "No two were shown to taste apart"
      : `${clear.map(({ one, other }) => `${one} and ${other}`).join("; ")} can be told apart`;
  return (
    <Section title="Told apart in sets">
      {measured.length > 0 && (
        <Figure
          title={title}
          name={`${name}-apart`}
          note={`How far apart two taste, d′: 0 not at all, 1 told a little, 3 told nearly always. Dot: most likely; line: 95 %, drawn to ${FAR} where it has no end.`}
          draw={(width) =>
            drawIntervals(
              measured.map(({ one, other, dPrime, low, high }) => ({
                label: `${one} and ${other}`,
                value: Math.min(FAR, dPrime ?? FAR),
                low: Math.min(FAR, low),
                high: Math.min(FAR, high ?? FAR),
                said: dPrime === null ? "no end" : oneDigit(dPrime),
              })),
              width,
              [0, FAR],
            )
          }
          table={{
            heads: ["The two", "Method", "Right", "Of", "d′", "95 % from", "to"],
            rows: measured.map(({ one, other, standard, right, answered, dPrime, low, high }) => [
              `${one} and ${other}`,
              standard,
              String(right),
              String(answered),
              dPrime === null ? "no end" : oneDigit(dPrime),
              oneDigit(low),
              high === null ? "no end" : oneDigit(high),
            ]),
          }}
        />
      )}
      <ul className="evidence-said">
        {apart.map(({ one, other, method, sentence }) => (
          <li key={`${method} ${one} ${other}`}>
            <p>{sentence}</p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
