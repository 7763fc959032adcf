import type { RankAnswer } from "@partsproof/house/protocol";
import { drawIntervals, Figure } from "../../plots/index.ts";
import { ends, fixed, percent } from "./told-numbers.ts";

interface Props {
  readonly items: readonly string[];
  readonly fit: {
    readonly logWorth: readonly number[] | null;
    readonly standardError: readonly number[] | null;
  };
  readonly bayesian: RankAnswer["bayesian"];
  readonly name: string;
  /** What further right means. */
  readonly more: string;
}

/** Items by how well they are believed to do, most likely worths beside. */
export function WorthsTold({ items, fit, bayesian, name, more }: Props) {
  const { logWorth, interval, ranks, expectedRank, level } = bayesian;
  const order = [...items.keys()].toSorted((a, b) => (expectedRank[a] ?? 0) - (expectedRank[b] ?? 0));
  return (
    <Figure
      title={bayesian.sentences[0] ?? ""}
      name={name}
      note={`Log worth as believed, less the mean of all; further right is ${more}; 0.7 more is about two to one in a pair. Dot: expected; line: ${percent(level)} of what is believed.`}
      draw={(width) =>
        drawIntervals(
          order.map((i) => ({
            label: items[i] ?? "",
            value: logWorth[i] ?? 0,
            low: interval[i]?.[0] ?? logWorth[i] ?? 0,
            high: interval[i]?.[1] ?? logWorth[i] ?? 0,
            said: fixed(logWorth[i] ?? 0),
          })),
          width,
        )
      }
      table={{
        heads: ["Item", "Log worth", "Error", "Believed", percent(level), "Is best", "Place"],
        rows: order.map((i) => [
          items[i] ?? "",
          fit.logWorth === null ? "none" : fixed(fit.logWorth[i] ?? 0, 3),
          fit.standardError === null ? "none" : fixed(fit.standardError[i] ?? 0, 3),
          fixed(logWorth[i] ?? 0),
          ends(interval[i] ?? [null, null]),
          fixed(ranks[i]?.[0] ?? 0),
          fixed(expectedRank[i] ?? 0, 1),
        ]),
      }}
    />
  );
}

/** How it is believed, as the command line says it. */
export const believedHow = ({ method, prior, effective, monteCarloError }: RankAnswer["bayesian"]): string =>
  `${method}; ${prior}; draws worth ${Math.round(effective)}, a probability off by ${Number(monteCarloError.toPrecision(1))} or so`;
