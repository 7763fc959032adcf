import type { Finding } from "@partsproof/house/protocol";

/** The choice that shows the liquids of the flight with every taster's guess, instead of one taster's glasses. */
export const EVERYONE = "everyone";

export interface OpenedGlass {
  readonly key: string;
  /** In the circle: the blind code, or the number of the pour for everybody at once. */
  readonly code: string;
  readonly title: string;
  readonly label: string;
  /** "first pour", "second pour", or "". */
  readonly pour: string;
  readonly target: boolean;
  readonly guesses: readonly {
    readonly taster: string;
    readonly label: string | null;
    readonly right: boolean | null;
  }[];
}

/** The glasses in the order they are opened: as they stand before a taster, or as the flight was drawn. */
export function openedGlasses(finding: Finding, whose: string): readonly OpenedGlass[] {
  const sheet = finding.sheets.find((one) => one.sheetId === whose);
  const alone = finding.flight.pouring === "alone";
  if (sheet !== undefined) {
    return sheet.glasses.map((glass): OpenedGlass => {
      const poured = finding.glasses[glass.glass];
      return {
        key: glass.code,
        code: glass.code,
        title: alone ? `The glass at place ${glass.code}` : `Glass ${glass.code}`,
        label: glass.label,
        pour: poured?.pour ?? "",
        target: poured?.target ?? false,
        guesses: [{ taster: sheet.taster, label: glass.guessLabel, right: glass.right }],
      };
    });
  }
  return finding.glasses.map((poured): OpenedGlass => {
    const tasted = finding.sheets.flatMap((one) => {
      const glass = one.glasses.find((each) => each.glass === poured.glass);
      return glass === undefined ? [] : [{ taster: one.taster, glass }];
    });
    return {
      key: String(poured.glass),
      code: String(poured.glass + 1),
      title: tasted.map(({ taster, glass }) => `${taster} ${glass.code}`).join(" · "),
      label: poured.label,
      pour: poured.pour,
      target: poured.target,
      guesses: tasted.map(({ taster, glass }) => ({ taster, label: glass.guessLabel, right: glass.right })),
    };
  });
}
