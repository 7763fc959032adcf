import type { WordsFound } from "../../protocol/index.ts";
import type { FlightEvidence, SheetEvidence } from "./flight-evidence.ts";

/** Words shown, and how often one must have been said to be shown. */
const MOST_WORDS = 8;
const LEAST_SAID = 2;

type Count = readonly [times: number, of: number];

/** How far a word stands out: the likelihood ratio of two shares against one, negative where it is said less here. Orders, tests nothing. */
function standsOut([here, glasses]: Count, [elsewhere, others]: Count): number {
  const share = (here + elsewhere) / (glasses + others);
  const part = (times: number, of: number): number =>
    (times === 0 ? 0 : times * Math.log(times / (of * share))) +
    (times === of ? 0 : (of - times) * Math.log((of - times) / (of * (1 - share))));
  const less = here * others < elsewhere * glasses;
  return (less ? -1 : 1) * (part(here, glasses) + (others === 0 ? 0 : part(elsewhere, others)));
}

/** W7: words of the vocabulary said of some glasses more than of the others, counted once a glass and not tested; null where none were. */
export function wordsFound(
  flights: readonly FlightEvidence[],
  isHere: (nameId: string, sheet: SheetEvidence) => boolean,
): WordsFound | null {
  const [here, elsewhere] = [new Map<string, number>(), new Map<string, number>()];
  const glasses = { here: 0, elsewhere: 0 };
  for (const flight of flights) {
    for (const sheet of flight.sheets) {
      sheet.order.forEach((glass, i) => {
        const words = sheet.written()[i]?.words;
        if (words === undefined) return;
        const own = isHere(flight.glasses[glass]?.nameId ?? "", sheet);
        glasses[own ? "here" : "elsewhere"] += 1;
        const counts = own ? here : elsewhere;
        for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
      });
    }
  }
  if (glasses.here === 0) return null;
  const stands = (word: string, times: number): number =>
    standsOut([times, glasses.here], [elsewhere.get(word) ?? 0, glasses.elsewhere]);
  return {
    glasses: glasses.here,
    otherGlasses: glasses.elsewhere,
    words: [...here]
      .filter(([word, times]) => times >= LEAST_SAID && stands(word, times) > 0)
      .toSorted(([a, m], [b, n]) => stands(b, n) - stands(a, m) || n - m || (a < b ? -1 : 1))
      .slice(0, MOST_WORDS)
      .map(([word, times]) => ({ word, here: times, elsewhere: elsewhere.get(word) ?? 0 })),
    said: "Counted once a glass and not tested: among so many words some stand out by luck.",
  };
}
