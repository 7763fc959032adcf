import type { PlayedFlight } from "../../protocol/index.ts";
import type { FlightEvidence } from "../evidence/index.ts";

/** T3: how a name did, flight by flight, oldest first. Only what is revealed is evidence. */
export function playedIn(flights: readonly FlightEvidence[], nameId: string): PlayedFlight[] {
  return flights
    .filter(({ glasses }) => glasses.some((glass) => glass.nameId === nameId))
    .map((flight) => played(flight, nameId));
}

function played(flight: FlightEvidence, nameId: string): PlayedFlight {
  const ours = (glass: number): boolean => flight.glasses[glass]?.nameId === nameId;
  const orders = flight.sheets
    .flatMap(({ placed }) => placed.map(({ ranking }) => ranking))
    .filter((ranking) => ranking.flat().length > 1 && ranking.flat().some(ours));
  const ranks = orders.map((ranking) => mean(ranksOf(ranking, ours)));
  const first = sum(orders.map((ranking) => share(ranking[0] ?? [], ours)));
  const firstByLuck = sum(orders.map((ranking) => share(ranking.flat(), ours)));
  const meanOf = orders.length === 0 ? null : mean(orders.map((ranking) => ranking.flat().length));
  const scores = flight.sheets.flatMap(({ order, scores: given }) =>
    order.flatMap((glass, i) => (ours(glass) && typeof given[i] === "number" ? [given[i]] : [])),
  );
  const meanRank = ranks.length === 0 ? null : mean(ranks);
  const { flightId, name, revealedAt, question } = flight;
  return {
    flightId,
    name,
    revealedAt,
    question,
    orders: orders.length,
    first,
    firstByLuck,
    meanRank,
    meanOf,
    meanScore: scores.length === 0 ? null : mean(scores),
    said: said(orders.length, first, firstByLuck, meanRank, meanOf, question === "how_close"),
  };
}

/** Places of our glasses, 1 the best; glasses that are level share theirs. */
function ranksOf(ranking: readonly (readonly number[])[], ours: (glass: number) => boolean): number[] {
  let before = 0;
  return ranking.flatMap((tie) => {
    const rank = before + (tie.length + 1) / 2;
    before += tie.length;
    return tie.filter(ours).map(() => rank);
  });
}

const share = (glasses: readonly number[], ours: (glass: number) => boolean): number =>
  glasses.length === 0 ? 0 : glasses.filter(ours).length / glasses.length;
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
const mean = (numbers: readonly number[]): number => sum(numbers) / numbers.length;
const few = (x: number): string => String(Number(x.toFixed(1)));

function said(
  orders: number,
  first: number,
  byLuck: number,
  rank: number | null,
  of: number | null,
  close: boolean,
): string {
  if (rank === null || of === null) return "poured, but in no order of glasses";
  const sheets = orders === 1 ? "one order" : `${orders} orders`;
  const best = close ? "closest" : "first";
  return `place ${few(rank)} of ${few(of)} in the mean of ${sheets}; ${best} in ${few(first)}, ${few(byLuck)} by luck alone`;
}
