import type {
  CouldShowAnswer,
  CountsBeliefs,
  CountsReason,
  DifferAnswer,
  InTurnAnswer,
  MatchAnswer,
  MixtureAnswer,
  PairsAnswer,
  RankAnswer,
} from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { type Fact, facts } from "./facts.ts";

type Span = readonly [number | null, number | null];

const few = (x: number, figures = 3): string => String(Number(x.toPrecision(figures)));
/** Decimals without a minus before nothing. */
const fixed = (x: number, decimals: number): string => x.toFixed(decimals).replace(/^-(0\.?0*)$/, "$1");
const percent = (level: number): string => `${Number((100 * level).toPrecision(3))} %`;
const to = ([low, high]: Span, decimals = 2): string =>
  `${low === null ? "no lower bound" : fixed(low, decimals)} to ${high === null ? "no upper bound" : fixed(high, decimals)}`;

/** What was found, then every number with its name. */
const told = (sentence: string, lines: readonly Fact[], method: string): string =>
  [sentence, "", facts([...lines, ["Method", method]])].join("\n");

const P_LUCK = "By luck";

export function printDiffer(answer: DifferAnswer): string {
  const { p, critical5, of, dPrime, level, likeness } = answer;
  return told(
    answer.sentence,
    [
      [P_LUCK, p === 0 ? "p below 1e-300" : `p = ${few(p, 4)}`],
      ["At 5 %", critical5 === null ? "not even all right" : `${critical5} of ${of}`],
      ["d′", dPrime === null ? (answer.dPrimeReason?.message ?? null) : dPrime.toFixed(2)],
      ["", `${to(answer.dPrimeExact)}: covers it in at least ${percent(level)} of such cases (exact)`],
      ["", `${to(answer.dPrimeInterval)}: in about ${percent(level)}, at worst fewer (by likelihood)`],
      [
        "Can tell",
        `${percent(answer.share)} of tasters, the rest guessing; ${answer.shareInterval.map((end) => percent(end ?? 1)).join(" to ")}`,
      ],
      ["Likeness", likeness === null ? null : `${likeness.sentence} p = ${few(likeness.p, 4)}`],
    ],
    answer.method,
  );
}

export function printInTurn(answer: InTurnAnswer): string {
  const { wald, level, of } = answer;
  return told(
    answer.sentence,
    [
      [
        "At any moment",
        `p = ${few(answer.anytimeP, 4)}${answer.foundAt === null ? "" : `, below ${wald.alpha} from answer ${answer.foundAt} on`}`,
      ],
      [
        "Chance right",
        `${to(answer.chanceInterval)}, ${percent(level)} at all moments together; by luck ${few(answer.chance)}`,
      ],
      ["d′", to(answer.dPrimeInterval)],
      ["Wald's lines", `after ${of}: ${wald.upper} right or more, ${wald.lower} or fewer`],
    ],
    answer.method,
  );
}

export function printMatch(answer: MatchAnswer): string {
  const { pAtLeast, fraction, critical5, known, knownReason } = answer;
  return told(
    answer.sentence,
    [
      ["By guessing", `p = ${few(pAtLeast, 4)}${fraction === null ? "" : `, ${fraction}`}`],
      ["On average", `${few(answer.expected)} right by guessing`],
      ["At 5 %", critical5 === null ? "not even all right" : `${critical5} of ${answer.of}`],
      [
        "Truly known",
        known === null
          ? (knownReason?.message ?? null)
          : `about ${few(known.glasses, 2)} of ${answer.of}; ${known.interval.map((end) => percent(end ?? 1)).join(" to ")} of the glasses, ${percent(known.level)} or more`,
      ],
    ],
    answer.method,
  );
}

interface Worth {
  readonly name: string;
  readonly logWorth: number | null;
  readonly error: number | null;
  readonly believed: number;
  readonly interval: Span;
  readonly best: number;
  readonly place: number;
}

/** Items by how well they are believed to do, most likely worths beside. */
function printWorths(
  items: readonly string[],
  fit: { readonly logWorth: readonly number[] | null; readonly standardError: readonly number[] | null },
  { logWorth, interval, ranks, expectedRank, level }: CountsBeliefs,
): string {
  const rows = items
    .map(
      (name, i): Worth => ({
        name,
        logWorth: fit.logWorth?.[i] ?? null,
        error: fit.standardError?.[i] ?? null,
        believed: logWorth[i] ?? 0,
        interval: interval[i] ?? [null, null],
        best: ranks[i]?.[0] ?? 0,
        place: expectedRank[i] ?? 0,
      }),
    )
    .toSorted((a, b) => a.place - b.place);
  return columns(
    rows,
    [
      { head: "Item", cell: ({ name }) => name },
      {
        head: "Log worth",
        cell: (row) => (row.logWorth === null ? "none" : fixed(row.logWorth, 3)),
        right: true,
      },
      { head: "Error", cell: (row) => row.error?.toFixed(3) ?? "-", right: true },
      { head: "Believed", cell: ({ believed }) => fixed(believed, 2), right: true },
      { head: percent(level), cell: (row) => to(row.interval) },
      { head: "Is best", cell: ({ best }) => best.toFixed(2), right: true },
      { head: "Place", cell: ({ place }) => place.toFixed(1), right: true },
    ],
    "",
  );
}

const reasonOf = (reason: CountsReason | null): string | null => reason?.message ?? null;
const believedHow = ({ method, prior, effective, monteCarloError }: CountsBeliefs): string =>
  `${method}; ${prior}; draws worth ${Math.round(effective)}, a probability off by ${few(monteCarloError, 1)} or so`;

export function printRank({
  items,
  friedman,
  kendallW,
  plackettLuce,
  bayesian,
  sentence,
}: RankAnswer): string {
  const { statistic, p, method, df } = friedman;
  const places = plackettLuce.placeEffects;
  return [
    [sentence, ...bayesian.sentences].join("\n"),
    printWorths(items, plackettLuce, bayesian),
    facts([
      [
        "Friedman",
        statistic === null || p === null
          ? reasonOf(friedman.reason)
          : `${few(statistic, 5)}, ${df} df, p = ${few(p, 4)} (${method})`,
      ],
      ["Kendall's W", kendallW === null ? null : kendallW.toFixed(3)],
      ["Log likelihood", plackettLuce.logLikelihood === null ? null : plackettLuce.logLikelihood.toFixed(3)],
      ["No log worths", reasonOf(plackettLuce.reason)],
      [
        "Served first",
        places === null
          ? null
          : `${places.first.value.toFixed(2)}, give or take ${places.first.standardError.toFixed(2)}`,
      ],
      [
        "Served last",
        places === null
          ? null
          : `${places.last.value.toFixed(2)}, give or take ${places.last.standardError.toFixed(2)}`,
      ],
      ["Believed by", believedHow(bayesian)],
    ]),
  ].join("\n\n");
}

export function printPairs(answer: PairsAnswer): string {
  const { items, bayesian, orderEffect } = answer;
  return [
    bayesian.sentences.join("\n"),
    printWorths(items, answer, bayesian),
    facts([
      ["Comparisons", String(answer.comparisons)],
      ["Tie parameter", answer.tieParameter === null ? null : few(answer.tieParameter, 4)],
      [
        "Coming first",
        orderEffect === null
          ? null
          : `${orderEffect.value.toFixed(2)}, give or take ${orderEffect.standardError.toFixed(2)} (log odds)`,
      ],
      ["Log likelihood", answer.logLikelihood === null ? null : answer.logLikelihood.toFixed(3)],
      ["No log worths", reasonOf(answer.reason)],
      ["Believed by", believedHow(bayesian)],
    ]),
  ].join("\n\n");
}

export function printMixture(answer: MixtureAnswer): string {
  const { coefficients, standardErrors, intervals, sigma, rSquared, level } = answer;
  const table =
    coefficients === null
      ? "No coefficients."
      : columns(
          Object.entries(coefficients),
          [
            { head: "Term", cell: ([term]) => term },
            { head: "Coefficient", cell: ([, value]) => few(value, 5), right: true },
            {
              head: "Error",
              cell: ([term]) => (standardErrors === null ? "-" : few(standardErrors[term] ?? 0, 3)),
              right: true,
            },
            {
              head: percent(level),
              cell: ([term]) => (intervals === null ? "-" : to(intervals[term] ?? [null, null])),
            },
          ],
          "",
        );
  return [
    table,
    facts([
      ["Sigma", sigma === null ? null : `${few(sigma, 4)}, ${answer.df} degrees of freedom`],
      ["R²", rSquared === null ? null : `${rSquared.toFixed(4)}, about the mean`],
      ["Why none", reasonOf(answer.reason)],
      ["Note", answer.notes.length === 0 ? null : answer.notes.join("\n")],
      ["Method", `Scheffé's ${answer.model} polynomial by least squares, no intercept`],
    ]),
  ].join("\n\n");
}

export function printCouldShow(answer: CouldShowAnswer): string {
  const { power, powerInterval, falseFinding, critical, needs, expectedTrials, bestFirst, alpha } = answer;
  return told(
    answer.sentence,
    [
      [
        "Found with",
        `${few(power, 3)}${powerInterval === null ? "" : ` (${to(powerInterval)}: what drawing leaves open)`}`,
      ],
      [
        "By luck alone",
        falseFinding === null
          ? null
          : `${few(falseFinding, 3)}${falseFinding > alpha ? `, asked for: ${alpha}; Wald's limits keep to it only nearly` : `, at most ${alpha}`}`,
      ],
      ["It takes", critical === null ? null : `${critical} right`],
      ["Needed", needs === null ? null : `${needs.smallest}, from ${needs.stable} on for every number`],
      [
        "On average",
        expectedTrials === null
          ? null
          : `${expectedTrials.withEffect.toFixed(1)} answers with the difference, ${expectedTrials.byLuck.toFixed(1)} by luck`,
      ],
      ["Best is first", bestFirst === null ? null : few(bestFirst, 3)],
    ],
    answer.method,
  );
}
