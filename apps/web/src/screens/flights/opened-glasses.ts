import type { Finding, SetsFound } from "@partsproof/house/protocol";
import { pickedWords } from "../findings/picked-words.ts";

/** The choice that shows the liquids of the flight with every taster's guess, instead of one taster's glasses. */
export const EVERYONE = "everyone";

export interface OpenedGlass {
  readonly key: string;
  /** In the circle: the blind code, or the number of the pour for everybody at once. */
  readonly code: string;
  readonly title: string;
  readonly label: string;
  /** The glasses of a set as they stood before one taster; `label` has them in a sentence. */
  readonly stood?: readonly { readonly code: string; readonly label: string }[];
  /** "first pour", "second pour", or "". */
  readonly pour: string;
  readonly target: boolean;
  readonly guesses: readonly {
    readonly taster: string;
    /** What the taster said of it, in words, whether it was right or not. */
    readonly said: string;
    readonly right: boolean | null;
  }[];
}

/** What was said of one glass: a guess where one is asked, else its place. */
function saidOf(finding: Finding, glass: Finding["sheets"][number]["glasses"][number]) {
  if (finding.flight.question === "which_is_which") {
    const { right, guessLabel } = glass;
    return {
      right,
      said: right === null ? "no guess" : right ? "guessed right" : `guessed ${guessLabel ?? ""}, wrong`,
    };
  }
  return { right: null, said: glass.rank === null ? "no place" : `put at place ${glass.rank}` };
}

/** What was said of all glasses of one liquid that a taster had; of two rounds where it was put in each. */
function saidOfAll(finding: Finding, own: readonly Finding["sheets"][number]["glasses"][number][]) {
  const [first, ...again] = own.map((glass) => saidOf(finding, glass));
  if (first === undefined || again.length === 0) return first ?? { right: null, said: "" };
  const places = own.map(({ rank }) => (rank === null ? "nowhere" : `at place ${rank}`));
  return { right: null, said: `put ${places.join(", then ")}` };
}

/** What was picked, and what that was: "picked 547, right: Saltreach Tarn". */
function pickedOf(
  answer: Parameters<typeof pickedWords>[0],
  stood: readonly { readonly code: string; readonly label: string }[],
): string {
  const names = (answer.picked ?? []).flatMap(
    (code) => stood.find((glass) => glass.code === code)?.label ?? [],
  );
  const words = pickedWords(answer);
  return names.length === 0 ? words : `${words}: ${[...new Set(names)].join(" and ")}`;
}

/** Set by set: what stood there and what was picked; for everybody at once, who was right. */
function openedSets(found: SetsFound, whose: string): readonly OpenedGlass[] {
  const sheets = found.sheets.filter(({ sheetId }) => whose === EVERYONE || sheetId === whose);
  const labelOf = (glass: number): string => found.between.find((one) => one.glass === glass)?.label ?? "";
  const sets = Math.max(0, ...sheets.map((sheet) => sheet.sets.length));
  return Array.from({ length: sets }, (_, i) => {
    const glassesOf = (sheet: SetsFound["sheets"][number]) =>
      (sheet.sets[i]?.glasses ?? []).map(({ code, glass }) => ({ code, label: labelOf(glass) }));
    const stood = (sheet: SetsFound["sheets"][number]): string =>
      glassesOf(sheet)
        .map(({ code, label }) => `${code} ${label}`)
        .join(", ");
    const [only] = sheets;
    const answers = sheets.flatMap((sheet) => sheet.sets.slice(i, i + 1));
    const right = answers.filter((answer) => answer.right === true).length;
    return {
      key: `set ${i + 1}`,
      code: String(i + 1),
      title: `Set ${i + 1}`,
      label:
        sheets.length === 1 && only !== undefined
          ? stood(only)
          : found.expected === null && found.method === "paired"
            ? `${answers.length} sets`
            : `${right} of ${answers.length} right`,
      ...(sheets.length === 1 && only !== undefined ? { stood: glassesOf(only) } : {}),
      pour: "",
      target: false,
      guesses: sheets.map((sheet) => {
        const answer = sheet.sets[i] ?? { picked: null, right: null };
        return {
          taster: sheet.taster,
          right: answer.right,
          // Side by side only what was picked; how each set stood is one choice away, and in the finding.
          said: sheets.length === 1 ? pickedWords(answer) : pickedOf(answer, glassesOf(sheet)),
        };
      }),
    };
  });
}

/** The glasses in the order they are opened: as they stand before a taster, or as the flight was drawn. */
export function openedGlasses(finding: Finding, whose: string): readonly OpenedGlass[] {
  if (finding.sets !== null) return openedSets(finding.sets, whose);
  const sheet = finding.sheets.find((one) => one.sheetId === whose);
  const alone = finding.flight.pouring === "alone";
  if (sheet !== undefined) {
    return sheet.glasses.map((glass): OpenedGlass => {
      const poured = finding.glasses[glass.glass];
      return {
        key: glass.code,
        code: glass.code,
        title:
          `${glass.set === null ? "" : `Round ${glass.set}: `}${alone ? `the glass at place ${glass.code}` : `glass ${glass.code}`}`.replace(
            /^./,
            (first) => first.toUpperCase(),
          ),
        label: glass.label,
        pour: poured?.pour ?? "",
        target: poured?.target ?? false,
        guesses: [{ taster: sheet.taster, ...saidOf(finding, glass) }],
      };
    });
  }
  return finding.glasses.map((poured): OpenedGlass => {
    // In two rounds every taster had it twice.
    const tasted = finding.sheets.flatMap(({ taster, glasses }) => {
      const own = glasses.filter((each) => each.glass === poured.glass);
      return own.length === 0 ? [] : [{ taster, own }];
    });
    return {
      key: String(poured.glass),
      code: String(poured.glass + 1),
      title: tasted
        .map(({ taster, own }) => `${taster} ${own.map(({ code }) => code).join(", ")}`)
        .join(" · "),
      label: poured.label,
      pour: poured.pour,
      target: poured.target,
      guesses: tasted.map(({ taster, own }) => ({ taster, ...saidOfAll(finding, own) })),
    };
  });
}
