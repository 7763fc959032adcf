import { HARD_TO_PUT_DOWN_TO_LUCK, luckVerdict } from "@partsproof/core/sensory";
import type { TasterFinding } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { Section } from "../../parts/index.ts";
import { drawDumbbells, Figure } from "../../plots/index.ts";
import type { ScreenProps } from "../screen.ts";
import { ApartSection } from "./apart-section.tsx";
import { oneDigit } from "./counted-words.ts";
import { ConfidenceSection } from "./confidence-section.tsx";
import { EvidencePage } from "./evidence-page.tsx";
import { MixUpsSection } from "./mix-ups-section.tsx";
import { RestsOn } from "./rests-on.tsx";
import { Said } from "./said.tsx";
import { WordGapsSection } from "./word-gaps-section.tsx";
import { WordsSection } from "./words-section.tsx";

/** One taster over time: what they have shown, and what not. */
export default function TasterFindingPage({ params }: ScreenProps) {
  const { household = "", taster = "" } = params;
  const asked = useAsk("getTasterFinding", { at: { household, taster } });
  return (
    <EvidencePage
      asked={asked}
      waiting="what is known of the taster"
      household={household}
      lead={({ name, flights }) =>
        `${name}, in ${flights.length === 1 ? "1 revealed flight" : `${flights.length} revealed flights`}. It speaks of this taster only.`
      }
    >
      {(found) => (
        <>
          {(found.canTell.length > 0 || found.cannotTell.length > 0) && (
            <div className="evidence-tells">
              <Section title="Has shown">
                <Lines of={found.canTell} none="Nothing is shown yet that is clear of luck." />
              </Section>
              <Section title="Has not shown">
                <Lines of={found.cannotTell} none="Nothing was asked that they did not show." />
                <p className="soft small">
                  Not to have shown it is not to be unable: a few sheets show little.
                </p>
              </Section>
            </div>
          )}
          <Guesses found={found} />
          <MixUpsSection
            title="Truly known, and mixed up"
            known={found.known}
            mixUps={found.mixUps}
            name="taster"
            what="their glasses"
          />
          <ConfidenceSection found={found.confidence} />
          <Repeats found={found} />
          <ApartSection apart={found.apart} name="taster" />
          <WordsSection
            words={found.words}
            title="Favourite words"
            here={`by ${found.name}`}
            elsewhere="by the others at the table"
            name="taster"
          />
          <WordGapsSection found={found.wordGaps} name={found.name} />
          <RestsOn flights={found.flights} household={household} />
        </>
      )}
    </EvidencePage>
  );
}

const Lines = ({ of, none }: { readonly of: readonly string[]; readonly none: string }) =>
  of.length === 0 ? (
    <p className="soft">{none}</p>
  ) : (
    <ul>
      {of.map((sentence) => (
        <li key={sentence}>
          <Said sentence={sentence} />
        </li>
      ))}
    </ul>
  );

function Guesses({ found: { guesses, drift } }: { readonly found: TasterFinding }) {
  if (guesses.length === 0) return null;
  const above = guesses.filter(({ right, byLuck }) => right > byLuck).length;
  return (
    <Section title="Guesses over time">
      <Figure
        title={`More right than luck gives on average in ${above} of ${guesses.length} ${guesses.length === 1 ? "flight" : "flights"}`}
        name="taster-guesses"
        note="Glasses named right, oldest flight first. Dot: right; ring: what luck gives on average. One flight by itself says little."
        draw={(width) =>
          drawDumbbells(
            guesses.map(({ name, right, byLuck, guessed }) => ({
              label: name,
              one: byLuck,
              other: right,
              said: `${right} of ${guessed}`,
            })),
            width,
            [0, Math.max(...guesses.map(({ guessed }) => guessed))],
          )
        }
        table={{
          heads: ["Flight", "Revealed", "Right", "Of", "By luck"],
          rows: guesses.map(({ name, revealedAt, right, guessed, byLuck }) => [
            name,
            printDay(revealedAt),
            String(right),
            String(guessed),
            oneDigit(byLuck),
          ]),
        }}
      />
      <p>
        {drift?.sentence ??
          `${guesses.length === 1 ? "1 flight is" : `${guesses.length} flights are`} too few to show whether guesses get better or worse, even when every one is in order.`}
      </p>
    </Section>
  );
}

function Repeats({ found: { repeats, orders } }: { readonly found: TasterFinding }) {
  if (repeats === null && orders === null) return null;
  const most = Math.max(2, ...(repeats?.pairs.map(({ of }) => of) ?? []));
  return (
    <Section title="Agreement with themselves">
      {repeats !== null && (
        <Figure
          title={
            repeats.leastP >= HARD_TO_PUT_DOWN_TO_LUCK
              ? `${repeats.pairs.length === 1 ? "1 pair of pours is" : `${repeats.pairs.length} pairs of pours are`} too few to show steadiness`
              : repeats.luck.p < HARD_TO_PUT_DOWN_TO_LUCK
                ? "The same whiskey poured twice was put nearer than luck would have it"
                : `Putting the same whiskey so near itself ${luckVerdict(repeats.luck.p)}`
          }
          name="taster-repeats"
          note="The two places given to one whiskey poured twice, joined: the shorter the line, the steadier. 1 is best."
          draw={(width) =>
            drawDumbbells(
              repeats.pairs.map(({ name, label, first, second }) => ({
                label: `${label}, ${name}`,
                one: first,
                other: second,
                said: `${first} and ${second}`,
              })),
              width,
              [1, most],
            )
          }
          table={{
            heads: ["Whiskey", "Flight", "One pour", "The other", "Of"],
            rows: repeats.pairs.map(({ label, name, first, second, of }) => [
              label,
              name,
              String(first),
              String(second),
              String(of),
            ]),
          }}
        >
          <Said sentence={repeats.sentence} />
        </Figure>
      )}
      {orders !== null && <Said sentence={orders.sentence} />}
    </Section>
  );
}
