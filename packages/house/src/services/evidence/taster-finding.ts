import { identification, luckVerdict, shownP } from "@partsproof/core/sensory";
import { kendallTau } from "@partsproof/core/statistics";
import type { TasterFinding } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import type { TasterRow } from "../rows.ts";
import { apartFound } from "./apart-found.ts";
import { confidenceFound } from "./confidence-found.ts";
import { labelsOf, linesOf } from "./evidence-lines.ts";
import type { FlightEvidence } from "./flight-evidence.ts";
import { knownFound } from "./known-found.ts";
import { mixUpsFound, namedSheets } from "./mix-ups-found.ts";
import { ordersFound, repeatsFound, tooFewOrders, tooFewPairs } from "./repeats-found.ts";
import { wordGapsFound } from "./word-gaps-found.ts";
import { wordsFound } from "./words-found.ts";

/** Flights with guesses below which a drift is not looked for: of 4 even every one in order has p = 2/4!, 0.083. */
const FEWEST_FOR_DRIFT = 5;
const CLEAR = 0.05;

/** One taster over time: what they have shown, what not, and their words. */
export function tasterFinding(
  house: House,
  taster: TasterRow,
  all: readonly FlightEvidence[],
): TasterFinding {
  const flights = all.filter(({ sheets }) => sheets.some(({ tasterId }) => tasterId === taster.id));
  const labels = labelsOf(flights);
  const sheets = namedSheets(flights, undefined, ({ tasterId }) => tasterId === taster.id);
  const guessers = new Set(namedSheets(all).map(({ tasterId }) => tasterId));
  const known = knownFound(house, sheets, undefined, {
    count: Math.max(1, guessers.size),
    what: "tasters",
  });
  const mixUps = mixUpsFound(house, sheets, labels);
  const repeats = repeatsFound(flights, taster.id);
  const orders = ordersFound(flights, taster.id);
  const apart = apartFound(flights, labels, { taster: taster.id });
  const guesses = sheets.map((sheet) => {
    const flight = flights.find(({ flightId }) => flightId === sheet.flightId);
    const { right, guessed, law } = identification(sheet);
    return {
      flightId: sheet.flightId,
      name: flight?.name ?? "",
      revealedAt: flight?.revealedAt ?? "",
      guessed,
      right,
      byLuck: law.mean,
    };
  });
  const wordGaps = wordGapsFound(house, taster, flights);
  const found = { known, mixUps, repeats, orders, apart, wordGaps };
  return {
    tasterId: taster.id,
    name: taster.name,
    headline: headlineOf(taster.name, found, flights.length),
    flights: linesOf(flights),
    guesses,
    drift: driftOf(guesses),
    confidence: confidenceFound(house, taster, flights),
    ...found,
    words: wordsFound(flights, (_, sheet) => sheet.tasterId === taster.id),
    ...tells(found, guessers.size),
  };
}

type Found = Pick<TasterFinding, "known" | "mixUps" | "repeats" | "orders" | "apart" | "wordGaps">;

function driftOf(guesses: TasterFinding["guesses"]): TasterFinding["drift"] {
  if (guesses.length < FEWEST_FOR_DRIFT) return null;
  const above = guesses.map(({ right, guessed, byLuck }) => (right - byLuck) / guessed);
  const { tau, p, method } = kendallTau(
    guesses.map((_, i) => i),
    above,
  );
  const how = `${shownP(p)}, Kendall's tau ${tau === null ? "none" : tau.toFixed(2).replace("-", "−")}, two-sided, ${method}, ${guesses.length} flights`;
  const way = (tau ?? 0) > 0 ? "more right" : "fewer right";
  return {
    tau,
    p,
    sentence:
      p < CLEAR
        ? `Later guesses are ${way} than earlier ones (${how}).`
        : `Whether the guesses get better or worse with time cannot be said (${how}).`,
  };
}

function tells(
  { known, mixUps, repeats, orders, apart, wordGaps }: Found,
  tasters: number,
): Pick<TasterFinding, "canTell" | "cannotTell"> {
  const [canTell, cannotTell]: [string[], string[]] = [[], []];
  if (known !== null) {
    const count = `${known.right} of ${known.guessed}`;
    const allowing = tasters > 1 ? `, allowing for all ${tasters} tasters looked at` : "";
    if (known.pTogether < CLEAR)
      canTell.push(`Names glasses better than luck: ${count} right (${shownP(known.pTogether)}${allowing}).`);
    else
      cannotTell.push(
        `Has not shown to name glasses better than luck: ${count} right (${shownP(known.pTogether)}${allowing}).`,
      );
  }
  for (const { one, other, right, answered, pTogether } of apart) {
    const count = `${right} of ${answered} (${shownP(pTogether)})`;
    if (pTogether < CLEAR) canTell.push(`Tells ${one} from ${other}: ${count}.`);
    else cannotTell.push(`Has not shown to tell ${one} from ${other}: ${count}.`);
  }
  const label = new Map(mixUps?.names.map((name) => [name.key, name.label]));
  for (const { one, other, pTogether } of mixUps?.pairs ?? []) {
    if (pTogether < CLEAR)
      cannotTell.push(
        `Takes ${label.get(one) ?? ""} and ${label.get(other) ?? ""} for each other (${shownP(pTogether)}).`,
      );
  }
  for (const { label, pTogether } of wordGaps?.missed ?? []) {
    if (pTogether !== null && pTogether < CLEAR)
      cannotTell.push(
        `Leaves out ${label}, which the others write of in the same glasses (${shownP(pTogether)}, allowing for all ${wordGaps?.looked} kinds of words looked at).`,
      );
  }
  const tooFew = repeats !== null && repeats.leastP >= CLEAR;
  if (tooFew) cannotTell.push(tooFewPairs(repeats));
  const tooFewAgain = orders !== null && orders.leastP >= CLEAR;
  if (tooFewAgain) cannotTell.push(tooFewOrders(orders));
  for (const [what, one] of [
    ["puts the same whiskey poured twice near itself", tooFew ? null : repeats],
    ["puts the same glasses in the same order again", tooFewAgain ? null : orders],
  ] as const) {
    if (one === null) continue;
    const sentence = `${what} (${shownP(one.luck.p)}).`;
    if (one.luck.p < CLEAR) canTell.push(sentence.charAt(0).toUpperCase() + sentence.slice(1));
    else cannotTell.push(`Has not shown that they ${sentence.replace("puts", "put")}`);
  }
  return { canTell, cannotTell };
}

function headlineOf(name: string, { known, apart, repeats, orders }: Found, flights: number): string {
  if (flights === 0) return `${name} has locked no sheet of a revealed flight yet`;
  if (known !== null) {
    const count = `${name} named ${known.right} of ${known.guessed} glasses right`;
    return known.right === 0 ? count : `${count}, which ${luckVerdict(known.pTogether)}`;
  }
  return (
    apart[0]?.sentence ??
    repeats?.sentence ??
    orders?.sentence ??
    `${name} has guessed nothing and told nothing apart yet`
  );
}
