import {
  type Issue,
  type ListedRow,
  SHELF_FILE_LIMITS,
  type ShelfColumn,
  WhiskeyDraft,
} from "../../protocol/index.ts";
import { type Cell, isNothing } from "./cell.ts";
import type { ListColumn } from "./guess-columns.ts";
import { type DateOrder, readDate } from "./read-date.ts";
import { readPrice } from "./read-price.ts";
import { readStrength } from "./read-strength.ts";
import type { TableRow } from "./read-table.ts";
import { readLeft, readVolume } from "./read-volume.ts";
import { readAge, readAvailability, readCasks, readCount, readGrains, readKind } from "./read-words.ts";

/** How bare numbers are read in all of the file. */
export interface HowToRead {
  readonly columns: readonly ListColumn[];
  readonly strengthUnit: string | null;
  readonly volumeUnit: string | null;
  readonly dates: DateOrder | null;
  readonly currency: string;
}

const DEFAULT_ML = 700;

/** One row of the list as a whiskey and its bottles, with what was guessed and what is wrong. `same` is filled in by who knows the others. */
export function rowOf({ line, cells }: TableRow, how: HowToRead): ListedRow {
  const issues: Issue[] = [];
  const guessed: { column: string; wrote: string; taken: string }[] = [];
  const { columns } = how;
  if (cells.length > columns.length && cells.slice(columns.length).some((cell) => cell.trim() !== ""))
    wrong("cells_many", `${columns.length} cells`, `${cells.length} cells`, []);

  const maker = text("maker", 120);
  const name = text("name", 120);
  // A list with one column for both: "Bellharrow Full Kettle" has its maker before its name, how far is not known.
  const named = name ?? maker;
  if (named === null) wrong("name_missing", "a name", null, ["name"]);
  const strength = read("strength", (said, unit) => readStrength(said, how.strengthUnit ?? unit));
  if (strength === undefined && issues.every(({ path }) => path[2] !== "strength"))
    wrong("strength_missing", "a strength", null, ["strength"]);
  const size = read("bottle", (said, unit) => readVolume(said, how.volumeUnit ?? unit)) ?? DEFAULT_ML;
  const level = read("left", (said, unit) => readLeft(said, unit, size));
  const opened = read("opened", (said) => readDate(said, how.dates));
  const count = read("count", (said) => readCount(said, SHELF_FILE_LIMITS.bottlesEach)) ?? 1;
  const price = read("price", (said) => readPrice(said, how.currency));
  const grains = read("grains", readGrains);
  const draft = {
    maker: maker ?? "not known",
    name: named ?? "",
    release: text("release", 120) ?? "",
    kind: read("kind", readKind) ?? "other",
    strength: strength ?? { basis: "abv20", value: 1 },
    ageYears: read("age", readAge) ?? null,
    grains: grains ?? null,
    casks: read("casks", readCasks) ?? [],
    distilledAt: text("distilledAt", 120),
    place: text("place", 120),
    priceMinor: price ?? null,
    bottleMl: size,
    availability: read("availability", readAvailability) ?? "sold",
    note: text("note", 8000) ?? "",
    profile: null,
  };
  const seen = WhiskeyDraft.safeParse(draft);
  for (const { message, path } of seen.error?.issues ?? [])
    if (issues.length === 0) wrong("row_wrong", message, null, path.map(String));
  const good = issues.length === 0 && seen.success;
  const isOpen = opened === true || typeof opened === "string" || (level !== undefined && level < size);
  return {
    line,
    whiskey: good ? seen.data : null,
    bottles: good ? count : 0,
    capacityMl: good ? size : null,
    levelMl: good ? (level ?? size) : null,
    openedOn: typeof opened === "string" ? opened : isOpen ? "not known" : null,
    same: null,
    guessed,
    issues,
  };

  function cellOf(as: ShelfColumn): { readonly said: string; readonly column: ListColumn } | null {
    const at = columns.findIndex((column) => column.as === as);
    const column = columns[at];
    const said = cells[at]?.replace(/^'(?=[=+\-@])/u, "").trim() ?? "";
    return column === undefined || isNothing(said) ? null : { said, column };
  }

  function text(as: ShelfColumn, most: number): string | null {
    const cell = cellOf(as);
    if (cell === null) return null;
    const flat = as === "note" ? cell.said : cell.said.replaceAll(/\s+/gu, " ");
    if (flat.length > most)
      wrong("text_long", `at most ${most} characters`, `${flat.length} characters`, [as]);
    return flat.slice(0, most);
  }

  function read<T>(as: ShelfColumn, how: (said: string, unit: string | null) => Cell<T>): T | undefined {
    const cell = cellOf(as);
    if (cell === null) return undefined;
    const { said, column } = cell;
    const came = how(said, column.unit);
    if (!came.ok) {
      wrong(came.code, came.limit, said, [as]);
      return undefined;
    }
    if (came.guessed !== undefined)
      guessed.push({ column: column.heading, wrote: said, taken: came.guessed });
    return came.value;
  }

  function wrong(code: string, limit: string, received: string | null, path: readonly string[]): void {
    const got = received === null ? "nothing" : JSON.stringify(received.slice(0, 80));
    const what = path.length === 0 ? `line ${line}` : `${path.join(".")} on line ${line}`;
    issues.push({
      code,
      path: ["line", line, ...path],
      limit,
      received,
      message: `${what} requires ${limit}, got ${got}`,
    });
  }
}
