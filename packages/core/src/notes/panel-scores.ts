import { type Draft, type Mention } from "./mention.ts";

const SCORE = /^(?:\d(?:\.\d)?|10)$/;
const LEAST = 2;

/** "malty 4, fruity (pear) 6, smoky 0": a panel's numbers behind flavours, on the scale of 0 to 10. One alone is something else. */
export function panelScores(draft: Draft): void {
  const found: (readonly [Mention, number])[] = [];
  for (const mention of draft.mentions) {
    const score = scoreAfter(draft, mention);
    if (score !== null) found.push([mention, score]);
  }
  // "smoke: 0"
  for (const [mention, strength] of found) if (strength === 0) mention.gone = true;
  if (found.length < LEAST) return;
  // "1. toffee 2. smoke 3. salt": what is counted, not how strong.
  if (found.every(([, score], n) => n === 0 || score === (found[n - 1]?.[1] ?? 0) + 1)) return;
  for (const [mention, strength] of found)
    if (strength !== 0) mention.degrees.push({ strength, amplify: false });
}

function scoreAfter({ items }: Draft, { last }: Mention): number | null {
  let n = last + 1;
  if (items[n]?.mark === "comma" || items[n]?.mark === "colon") n++;
  const [item, next] = [items[n], items[n + 1]];
  if (item === undefined || !SCORE.test(item.words)) return null;
  const closed = next === undefined || next.mark !== "";
  return closed ? Number(item.words) : null;
}
