import type { UncertainFigure } from "@partsproof/house/protocol";
import type { Fact } from "./facts.ts";

/** A figure as it is known: with its give or take where that was asked for, else as it was worked out. */
export const known = (figure: UncertainFigure | null | undefined, unit: string, plain: string): string =>
  figure === null || figure === undefined
    ? plain
    : `${figure.said.value} ${unit}, give or take ${figure.said.giveOrTake}`;

/** As many decimals as the figure's own give or take allows; two where none was asked for. */
export const digits = (figure: UncertainFigure | null | undefined): number =>
  figure === null || figure === undefined ? 2 : (figure.said.value.split(".")[1]?.length ?? 0);

/** Shares below this are not read by anybody. */
const SHOWN = 0.005;

/** Lines that say how far a figure may be off and why. None where it was not asked for. */
export function doubt(
  figure: UncertainFigure | undefined,
  unit: string,
  takenAs: readonly string[],
): readonly Fact[] {
  if (figure === undefined) return [];
  const { standardUncertainty, interval95, largest, budget } = figure;
  const decimals = digits(figure) + 1;
  const [low, high] = interval95.map((end) => end.toFixed(decimals));
  const shares = budget
    .filter(({ share }) => share >= SHOWN)
    .map(({ share, words }) => `${(100 * share).toFixed(0).padStart(3)} %  ${words}`);
  return [
    [
      "95 of 100",
      `${low} to ${high} ${unit}; standard uncertainty ${standardUncertainty.toPrecision(2)} ${unit}`,
    ],
    ["Mostly from", largest === "" ? null : largest],
    ["Budget", shares.length === 0 ? null : shares.join("\n")],
    ["Taken as", takenAs.join("\n")],
  ];
}
