import { HARD_TO_PUT_DOWN_TO_LUCK, luckVerdict, plainOdds, shownP } from "@partsproof/core/sensory";
import { type CountLaw, countLaw, midranks, poolLaws } from "@partsproof/core/statistics";
import type { TasterFinding } from "../../protocol/index.ts";
import { keptLaw, keptOf, luckOf } from "../findings/index.ts";
import { plural } from "./counted.ts";
import type { FlightEvidence } from "./flight-evidence.ts";

/** Of two glasses put among `size` at random: how much nearer they stand than they could, in places. */
const nearness = (size: number): CountLaw =>
  countLaw(Array.from({ length: size - 1 }, (_, near) => BigInt(2 * (near + 1))));

/** Two pours of one name in one ranking: how far apart they were put, beside two put at random; null where there were none. */
export function repeatsFound(flights: readonly FlightEvidence[], taster: string): TasterFinding["repeats"] {
  const pairs = flights.flatMap((flight) =>
    flight.sheets
      .filter(({ tasterId, placed }) => tasterId === taster && placed.length === 1)
      .flatMap(({ placed: [one] }) => {
        if (one === undefined) return [];
        const glasses = one.ranking.flat();
        const ranks = midranks(glasses.map((glass) => one.ranking.findIndex((tie) => tie.includes(glass))));
        const byName = Map.groupBy(
          glasses.map((glass, i) => ({ name: flight.glasses[glass]?.nameId ?? "", rank: ranks[i] ?? 0 })),
          ({ name }) => name,
        );
        return [...byName].flatMap(([name, [a, b, ...more]]) =>
          a === undefined || b === undefined || more.length > 0
            ? []
            : [
                {
                  flightId: flight.flightId,
                  name: flight.name,
                  revealedAt: flight.revealedAt,
                  label: flight.labels.get(name) ?? "",
                  first: a.rank,
                  second: b.rank,
                  of: glasses.length,
                },
              ],
        );
      }),
  );
  if (pairs.length === 0) return null;
  const law = poolLaws(pairs.map(({ of }) => nearness(of)));
  // Level glasses count as neighbours: a tie is an easier thing to say than an order.
  const near = pairs.reduce(
    (sum, { first, second, of }) => sum + of - 1 - Math.max(1, Math.ceil(Math.abs(first - second))),
    0,
  );
  const method = `exact law of two places at random, one-sided, ${plural(pairs.length, "pair")} of pours, level counts as next to each other`;
  const luck = luckOf(law, near, method);
  const leastP = law.pAtLeast(pairs.reduce((sum, { of }) => sum + of - 2, 0));
  const put = `The same whiskey poured twice was put ${pairs.map(({ first, second }) => `${first} and ${second}`).join("; ")}`;
  return {
    pairs,
    leastP,
    luck: { ...luck, words: `${plainOdds(luck.p)} would put them as near by luck` },
    sentence:
      leastP < HARD_TO_PUT_DOWN_TO_LUCK
        ? `${put}: so near that it ${luckVerdict(luck.p)} (${shownP(luck.p)}, ${method}).`
        : `${put} (${shownP(luck.p)}, ${method}). ${tooFewPairs({ pairs, leastP })}`,
  };
}

/** What is said where even the nearest that all pairs could have been put would not be clear of luck. */
export const tooFewPairs = ({
  pairs,
  leastP,
}: Pick<NonNullable<TasterFinding["repeats"]>, "pairs" | "leastP">): string =>
  `Whether they put the same whiskey near itself ${plural(pairs.length, "pair")} cannot show, however near (${shownP(leastP)}).`;

/** The same of orders: where even every pair put the same way again would not be clear of luck. */
export const tooFewOrders = ({
  pairs,
  leastP,
}: Pick<NonNullable<TasterFinding["orders"]>, "pairs" | "leastP">): string =>
  `Whether they put the same glasses in the same order again ${plural(pairs, "pair")} cannot show, however alike (${shownP(leastP)}).`;

/** The same glasses put in order twice: pairs put the same way again, all flights pooled; null where there were none. */
export function ordersFound(flights: readonly FlightEvidence[], taster: string): TasterFinding["orders"] {
  const own = flights
    .filter(({ question }) => question === "agree_with_myself")
    .flatMap(({ sheets, glasses }) =>
      sheets.flatMap(({ tasterId, placed: [first, second] }) =>
        tasterId !== taster || first === undefined || second === undefined
          ? []
          : [{ size: glasses.length, kept: keptOf(first.ranking.flat(), second.ranking.flat()) }],
      ),
    );
  if (own.length === 0) return null;
  const kept = own.reduce((sum, one) => sum + one.kept, 0);
  const pairs = own.reduce((sum, { size }) => sum + (size * (size - 1)) / 2, 0);
  const method = `exact law of pairs turned round, one-sided, ${plural(own.length, "sheet")}`;
  const law = poolLaws(own.map(({ size }) => keptLaw(size)));
  const luck = luckOf(law, kept, method);
  const leastP = law.pAtLeast(pairs);
  const put = `${kept} of ${plural(pairs, "pair")} ${pairs === 1 ? "was" : "were"} put the same way again`;
  return {
    kept,
    pairs,
    leastP,
    luck: { ...luck, words: `${plainOdds(luck.p)} would keep as many pairs by luck` },
    sentence:
      leastP < HARD_TO_PUT_DOWN_TO_LUCK
        ? `${put}: that ${luckVerdict(luck.p)} (${shownP(luck.p)}, ${method}).`
        : `${put} (${shownP(luck.p)}, ${method}). ${tooFewOrders({ pairs, leastP })}`,
  };
}
