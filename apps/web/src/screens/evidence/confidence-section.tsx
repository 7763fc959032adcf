import { HARD_TO_PUT_DOWN_TO_LUCK } from "@partsproof/core/sensory";
import type { ConfidenceFound } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { Said } from "./said.tsx";

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** How well confidence fits what came true. */
export function ConfidenceSection({ found }: { readonly found: ConfidenceFound | null }) {
  if (found === null) return null;
  const { guesses, right, said, p, groups } = found;
  const shown = p < HARD_TO_PUT_DOWN_TO_LUCK;
  return (
    <Section title="How sure, and how right">
      <Figure
        title={
          shown
            ? `${percent(said)} sure on average, ${percent(right / guesses)} right: ${said > right / guesses ? "too sure" : "not sure enough"}`
            : `${percent(said)} sure on average, ${percent(right / guesses)} right: too few to say whether that fits`
        }
        name="taster-confidence"
        note="Of the glasses named with that confidence, how many per cent were right. Dot: as counted; line: 95 %, exact. Confidence fits where the line holds the row's own number."
        draw={(width) =>
          drawIntervals(
            groups.map(({ sure, right: hit, of, low, high }) => ({
              label: `${sure} % sure`,
              value: (100 * hit) / of,
              low: 100 * low,
              high: 100 * high,
              said: `${hit} of ${of}`,
            })),
            width,
            [0, 100],
          )
        }
        table={{
          heads: ["Sure", "Right", "Of", "Share right", "95 % from", "to"],
          rows: groups.map(({ sure, right: hit, of, low, high }) => [
            `${sure} %`,
            String(hit),
            String(of),
            percent(hit / of),
            percent(low),
            percent(high),
          ]),
        }}
      >
        <Said sentence={found.fitSaid} />
        <Said sentence={found.surerSaid} />
        <p>{found.scoreSaid}</p>
        <details className="evidence-how">
          <summary>How this was reckoned</summary>
          <p>{found.method}.</p>
        </details>
      </Figure>
    </Section>
  );
}
