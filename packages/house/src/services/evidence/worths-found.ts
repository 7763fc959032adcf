import {
  type BeliefSense,
  BELIEF_WORDS,
  bestWords,
  betterWords,
  shownProbability,
} from "@partsproof/core/sensory";
import {
  PLACE_EFFECTS,
  pooledWorths,
  repeatableRng,
  type WorthBeliefs,
  worthBeliefs,
} from "@partsproof/core/statistics";
import type { WorthsFound } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { countedOf, plural } from "./counted.ts";
import { keptFor } from "./kept.ts";
import { type KeyedRanking, rankedSetOf } from "./rankings-of.ts";

interface Asked {
  readonly rankings: readonly KeyedRanking[];
  readonly labels: ReadonlyMap<string, string>;
  /** Only these are shown and set beside each other; all by default. */
  readonly among?: (key: string) => boolean;
  /** What the page is about: its pairs are shown, else those of the front runner. */
  readonly about?: string;
  /** Where the order was one of closeness: to what. */
  readonly closeTo?: string | null;
  readonly target?: string | null;
}

/** Beyond so many rankings of so many things the posterior is as good as normal, and drawing by importance is slow. */
const FEW_RANKINGS = 24;
const FEW_ITEMS = 12;
const DRAWS = { importance: 8000, mode: 4000 };

interface Beliefs {
  readonly common: WorthBeliefs;
  readonly differ: number | null;
  readonly method: string;
}

/** The beliefs, reckoned once for the same rankings. In the digest things and tasters are numbers: a restored household finds the same. */
function believed(
  house: House,
  rankings: readonly KeyedRanking[],
  keys: readonly string[],
  among: readonly number[],
): Beliefs {
  const tasters = [...new Set(rankings.map(({ tasterId }) => tasterId))];
  const numbers = new Map(keys.map((key, i) => [key, i]));
  const evidence = [
    keys.length,
    among,
    rankings.map(({ tasterId, ranking }) => [
      tasters.indexOf(tasterId),
      ranking.map((tie) => tie.map(({ key, place }) => [numbers.get(key), place])),
    ]),
  ];
  return keptFor(house, "worths", evidence, (start): Beliefs => {
    const rng = repeatableRng(start);
    const sets = rankings.map((one) => rankedSetOf(one, numbers));
    const once = tasters.length === rankings.length;
    const model = "Plackett and Luce's model of rankings, ties kept, weak normal prior";
    if (once && among.length === keys.length && rankings.length <= FEW_RANKINGS && keys.length <= FEW_ITEMS) {
      return {
        common: worthBeliefs(sets, keys.length, { rng, extras: PLACE_EFFECTS, draws: DRAWS.importance }),
        differ: null,
        method: `${model}, one ranking a taster, ${DRAWS.importance} draws by importance`,
      };
    }
    const judged = sets.map((set, i) => ({ judge: tasters.indexOf(rankings[i]?.tasterId ?? ""), set }));
    const { common, spread } = pooledWorths(judged, keys.length, {
      rng,
      extras: PLACE_EFFECTS,
      draws: DRAWS.mode,
      among,
    });
    const alike = spread.find(({ sd }) => sd === 0)?.probability ?? 0;
    return {
      common,
      differ: tasters.length > 1 ? 1 - alike : null,
      method: `${model}, tasters' own differences averaged over, taken as normal around its mode, ${DRAWS.mode} draws`,
    };
  });
}

const drawingError = (p: number, { effective }: WorthBeliefs): number => Math.sqrt((p * (1 - p)) / effective);
const signed = (x: number): string => `${x < 0 ? "−" : ""}${Math.abs(x).toFixed(1)}`;

function placesSaid({ extra }: WorthBeliefs): string {
  const clear = extra.flatMap(({ mean, interval }, i) =>
    interval.low > 0 || interval.high < 0
      ? [`${i === 0 ? "first" : "last"} ${mean > 0 ? "helps" : "harms"} a glass`]
      : [],
  );
  const numbers = extra
    .map(
      ({ mean, interval }, i) =>
        `${i === 0 ? "first" : "last"} ${signed(mean)} (95 % ${signed(interval.low)} to ${signed(interval.high)})`,
    )
    .join(", ");
  return clear.length > 0
    ? `Being served ${clear.join(", and ")}: on the log worth ${numbers}. It is taken out.`
    : `Whether being served first or last helps or harms a glass cannot be said from this: on the log worth ${numbers}. It is taken out all the same.`;
}

/** The number of pairs in which the words call one of them better. */
function pairsSaid(pairs: WorthsFound["pairs"], common: WorthBeliefs): string {
  const least = BELIEF_WORDS.at(-1)?.from ?? 0.6;
  const called = pairs.filter(({ probability }) => {
    const p = Math.max(probability, 1 - probability);
    return p - 2 * drawingError(p, common) >= least;
  });
  const wrong = called.reduce((sum, { probability }) => sum + Math.min(probability, 1 - probability), 0);
  const all = plural(pairs.length, "pair is", "pairs are");
  return called.length === 0
    ? `${all} looked at and all are shown; in none is one called the better.`
    : `${all} looked at and all are shown. Of the ${called.length} in which one is called better, ${wrong.toFixed(1)} ${called.length === 1 ? "is" : "are"} to be expected to be the wrong way round.`;
}

/** W2: what rankings say together; null where there are not two things to set beside each other. */
export function worthsFound(house: House, asked: Asked): WorthsFound | null {
  const { rankings, labels, among = () => true, about, closeTo = null, target = null } = asked;
  const keys = [
    ...new Set(rankings.flatMap(({ ranking }) => ranking.flat().map(({ key }) => key))),
  ].toSorted();
  const wanted = keys.flatMap((key, i) => (among(key) ? [i] : []));
  if (wanted.length < 2) return null;
  const { common, differ, method } = believed(house, rankings, keys, wanted);
  const order = wanted.map((_, at) => at).toSorted((a, b) => (common.mean[b] ?? 0) - (common.mean[a] ?? 0));
  const keyAt = (at: number): string => keys[wanted[at] ?? 0] ?? "";
  const labelAt = (at: number): string => labels.get(keyAt(at)) ?? "";
  const sense: BeliefSense =
    closeTo === null
      ? { better: "better liked", best: "the best liked" }
      : { better: `closer to ${closeTo}`, best: `the closest to ${closeTo}` };
  // A page about one of them speaks of that one.
  const worse = closeTo === null ? "liked less" : `less close to ${closeTo}`;
  const ofPairs: BeliefSense = about === undefined ? sense : { ...sense, worse };
  const belief = (probability: number) => ({
    probability,
    monteCarloError: drawingError(probability, common),
    sheets: rankings.length,
  });
  const standing = (...wholes: readonly string[]): number =>
    rankings.filter(({ ranking }) =>
      wholes.every((key) => ranking.some((tie) => tie.some((one) => one.key === key))),
    ).length;
  const [leader = 0] = order;
  const focus =
    about === undefined
      ? leader
      : Math.max(
          0,
          wanted.findIndex((i) => keys[i] === about),
        );
  const first = common.ranks[leader]?.[0] ?? 0;
  const pairs = order
    .filter((at) => at !== focus)
    .map((at) => {
      const probability = common.better[focus]?.[at] ?? 0.5;
      return {
        one: keyAt(focus),
        other: keyAt(at),
        probability,
        sentence: betterWords(
          labelAt(focus),
          labelAt(at),
          { ...belief(probability), both: standing(keyAt(focus), keyAt(at)) },
          ofPairs,
        ),
      };
    });
  return {
    counted: countedOf(rankings),
    closeTo,
    items: order.map((at) => ({
      key: keyAt(at),
      label: labelAt(at),
      target: keyAt(at) === target,
      worth: common.mean[at] ?? 0,
      low: common.interval[at]?.low ?? 0,
      high: common.interval[at]?.high ?? 0,
      rankings: standing(keyAt(at)),
      expectedRank: common.expectedRank[at] ?? 0,
      ranks: [...(common.ranks[at] ?? [])],
    })),
    better: order.map((a) => order.map((b) => (a === b ? 0.5 : (common.better[a]?.[b] ?? 0.5)))),
    best: { probability: first, sentence: bestWords(labelAt(leader), order.length, belief(first), sense) },
    pairs,
    pairsSaid: pairsSaid(pairs, common),
    places: common.extra.map(({ mean, interval }, i) => ({
      place: i === 0 ? ("first" as const) : ("last" as const),
      worth: mean,
      low: interval.low,
      high: interval.high,
    })),
    placesSaid: placesSaid(common),
    tastersSaid:
      differ === null
        ? null
        : `That tasters differ in what they put first has the probability ${shownProbability(differ)} (0.75 before any sheet); what is said here is said of all of them together.`,
    level: common.level,
    drawingError: common.monteCarloError,
    method,
  };
}

/** The claim of a sentence, without the numbers in its brackets. */
export const claimOf = (sentence: string): string => sentence.replace(/ \([^()]*\)\.?$/, "");
