import type { WeighedFlight } from "@partsproof/house/protocol";
import { Section } from "../../parts/index.ts";
import { drawMap, Figure } from "../../plots/index.ts";
import { glassMarks } from "./glass-marks.ts";
import { twoDigits } from "./counted-words.ts";

interface Props {
  readonly map: WeighedFlight["map"];
  readonly wordTests: WeighedFlight["wordTests"];
  /** The names of the mix-ups, which have the numbers. */
  readonly numbered: readonly { readonly key: string }[] | undefined;
  readonly name: string;
}

const printP = (p: number): string => (p < 0.001 ? "< 0.001" : String(Number(p.toPrecision(2))));

/** Where the words put the glasses, and whether any word goes with some of them. */
export function MapSection({ map, wordTests, numbered, name }: Props) {
  if (map === null && wordTests === null) return null;
  const marks = glassMarks(map?.items ?? [], numbered);
  const items = (map?.items ?? []).map((item, i) => ({ ...item, mark: marks[i] ?? "" }));
  return (
    <Section title="What the words say">
      {wordTests !== null && <p>{wordTests.sentence}</p>}
      {map !== null && (
        <Figure
          title={map.sentence}
          name={`${name}-map`}
          note={`Glasses that were described alike lie near each other${numbered === undefined ? "" : "; numbers as among the mix-ups"}; the ellipse says where each might lie had others of this kind tasted (95 %). Where ellipses overlap the map tells nothing of the two; where they do not, it is still a picture and no proof. It shows ${Math.round(map.shown * 100)} % of what differs.`}
          draw={(width) => drawMap(items, width)}
          table={{
            heads: ["Glass", "Across", "Up", "Ellipse, half length", "Half width"],
            rows: items.map(({ mark, label, x, y, ellipse }) => [
              `${mark} ${label}`,
              twoDigits(x),
              twoDigits(y),
              ellipse === null ? "none" : twoDigits(ellipse.along),
              ellipse === null ? "none" : twoDigits(ellipse.across),
            ]),
          }}
        >
          <details className="evidence-how">
            <summary>How this was reckoned</summary>
            <p>{map.method}.</p>
            {wordTests !== null && (
              <ul>
                {wordTests.words.map(({ word, said, p, pTogether, method }) => (
                  <li key={word}>
                    “{word}”:{" "}
                    {said
                      .filter(({ tasters }) => tasters > 0)
                      .map(({ label, tasters }) => `${label} ${tasters}`)
                      .join(", ")}
                    ; p = {printP(p)}, allowing for all words looked at {printP(pTogether)}, {method}.
                  </li>
                ))}
              </ul>
            )}
          </details>
        </Figure>
      )}
    </Section>
  );
}
