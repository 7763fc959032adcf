import { DISCRIMINATION, discriminationFound, plainChance } from "@partsproof/core/sensory";
import type { Chance, SetsFound } from "../../protocol/index.ts";
import type { z } from "zod";
import { designOf, taskOf, type TasterNames } from "../flights/index.ts";
import { shortFraction } from "./luck.ts";
import type { FlightKey, FlightRow, SheetRow } from "../rows.ts";

type Method = SetsFound["method"];
type FoundSheet = SetsFound["sheets"][number];
interface Stood {
  readonly code: string;
  readonly glass: number;
}

/** Whether what was picked in a set is right; null where no answer is. */
function isRight(
  method: Method,
  set: readonly Stood[],
  picked: readonly string[],
  expected: number | null,
): boolean | null {
  const glassOf = (code: string | undefined) => set.find((stood) => stood.code === code)?.glass;
  const [first, second] = picked;
  switch (method) {
    case "triangle":
      return set.filter(({ glass }) => glass === glassOf(first)).length === 1;
    case "duo_trio":
      return glassOf(first) === set[0]?.glass;
    case "paired":
      return expected === null ? null : glassOf(first) === expected;
    case "tetrad":
      return glassOf(first) === glassOf(second);
  }
}

function foundSheet(
  method: Method,
  sets: number,
  key: FlightKey,
  sheet: SheetRow,
  names: TasterNames,
): FoundSheet & { readonly picked: readonly number[] } {
  const counted = sheet.state === "locked";
  const own = key.codes.filter(({ sheetId }) => sheetId === sheet.id);
  const rows = Array.from({ length: sets }, (_, i) => {
    const stood = own.filter(({ set }) => set === i + 1).map(({ code, glass }) => ({ code, glass }));
    const picked = sheet.answers.find(({ set }) => set === i + 1)?.picked ?? null;
    const right = picked === null ? null : isRight(method, stood, picked, key.expected ?? null);
    return { set: i + 1, glasses: stood, picked: picked === null ? null : [...picked], right };
  });
  const answered = counted ? rows.filter(({ picked }) => picked !== null) : [];
  const judged = method !== "paired" || key.expected !== undefined;
  return {
    sheetId: sheet.id,
    tasterId: sheet.tasterId,
    taster: names.get(sheet.tasterId) ?? "",
    counted,
    answered: answered.length,
    right: judged ? answered.filter(({ right }) => right === true).length : null,
    sets: rows,
    picked: answered.flatMap(({ glasses, picked }) =>
      glasses.filter(({ code }) => picked?.includes(code)).map(({ glass }) => glass),
    ),
  };
}

export interface Told {
  readonly shown: SetsFound;
  readonly leftOut: readonly string[];
}

/** Q13: whether the two were told apart, over locked sheets. Null where the question is another. */
export function foundSets(
  flight: FlightRow,
  key: FlightKey,
  rows: readonly SheetRow[],
  names: TasterNames,
): Told | null {
  const { method, setsEach, sides: asked } = designOf(flight);
  if (method === null) return null;
  const sheets = rows.map((row) => foundSheet(method, setsEach, key, row, names));
  const sides = asked ?? 1;
  const answered = sheets.reduce((sum, sheet) => sum + sheet.answered, 0);
  const picked = sheets.flatMap((sheet) => sheet.picked);
  const timesPicked = key.glasses.map((_, i) => picked.filter((glass) => glass === i).length);
  const right =
    sides === 2 ? Math.max(...timesPicked) : sheets.reduce((sum, sheet) => sum + (sheet.right ?? 0), 0);
  const found = answered === 0 ? null : discriminationFound({ method, sides, answered, right });
  const { standard, chance } = DISCRIMINATION[method];
  return {
    shown: {
      method,
      standard,
      task: taskOf(flight),
      between: key.glasses.map(({ label }, glass) => ({
        glass,
        label,
        timesPicked: method === "paired" ? (timesPicked[glass] ?? 0) : null,
      })),
      expected: key.expected ?? null,
      answered,
      right: answered === 0 ? 0 : right,
      chance: `${chance.numerator}/${chance.denominator}`,
      sides,
      luck: found && luckOfSets(found),
      needed: found?.needed ?? null,
      sentence: found?.sentence ?? "No set was answered on a locked sheet, so nothing was found out.",
      sheets: sheets.map(({ picked: _, ...sheet }) => sheet),
    },
    leftOut: sheets.flatMap(({ taster, counted, answered: own }) => {
      if (!counted) return [`${taster}'s sheet was not locked: its answers are not counted.`];
      if (own === setsEach) return [];
      const none = own === 0 ? `${taster} answered no set` : `${taster} answered ${own} of ${setsEach} sets`;
      return [`${none}${own === 0 ? " and is left out." : "; the others are left out."}`];
    }),
  };
}

const luckOfSets = ({
  p,
  fraction,
  method,
}: ReturnType<typeof discriminationFound>): z.infer<typeof Chance> => ({
  p,
  fraction: shortFraction(fraction),
  words: plainChance(p),
  method,
});
