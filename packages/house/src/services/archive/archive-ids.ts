import { type ArchiveRows, archiveTables } from "./archive-rows.ts";
import { archiveWrong } from "./archive-wrong.ts";
import { newId } from "../ids.ts";
import type { House } from "../ports.ts";

/** Old ids, with their table before them, to new ones. */
export type NewIds = ReadonlyMap<string, string>;

/** Which table a field's id is of, by the field's name. */
const TABLE_OF: Readonly<Record<string, string>> = {
  whiskeyId: "whiskey",
  targetWhiskeyId: "whiskey",
  liquidId: "whiskey",
  vesselId: "vessel",
  batchId: "batch",
  recipeId: "recipe",
  flightId: "flight",
  tasterId: "taster",
  sheetId: "sheet",
  restId: "rest",
  sampleVesselId: "vessel",
};
const NAMES: ReadonlySet<string> = new Set(["nameId", "targetNameId", "controlNameId"]);

const TIME_CHARACTERS = 10;

/** A new id for each row of the file. */
export function newIds(house: Pick<House, "clock" | "random">, rows: ArchiveRows): NewIds {
  const ids = new Map<string, string>();
  for (const table of archiveTables) {
    if (table === "sealedSheets" || table === "sealedKeys") continue;
    const old = rows[table].map(({ id }) => id);
    needOnce(table, old);
    for (const [id, fresh] of freshIds(house, old)) ids.set(`${table}:${id}`, fresh);
  }
  return ids;
}

/** Every row with the id it has in the file. */
export function sameIds(rows: ArchiveRows): NewIds {
  const ids = new Map<string, string>();
  for (const table of archiveTables) {
    if (table === "sealedSheets" || table === "sealedKeys") continue;
    const own = rows[table].map(({ id }) => id);
    needOnce(table, own);
    for (const id of own) ids.set(`${table}:${id}`, id);
  }
  return ids;
}

function needOnce(table: string, ids: readonly string[]): void {
  const met = new Set<string>();
  for (const [i, id] of ids.entries()) {
    if (met.has(id)) archiveWrong([table, i, "id"], "each id once", id);
    met.add(id);
  }
}

/** Old ids to new ones. Their time stays and so does their order, in which lists are shown. */
export function freshIds(
  house: Pick<House, "clock" | "random">,
  old: readonly string[],
): ReadonlyMap<string, string> {
  const fresh = old
    .map((id) => id.slice(0, TIME_CHARACTERS) + newId(house).slice(TIME_CHARACTERS))
    .toSorted();
  return new Map(old.toSorted().map((id, i) => [id, fresh[i] ?? newId(house)]));
}

/** The same value with every id in it renewed; one that names no row of the file is refused with its path. */
export function renewed<T>(ids: NewIds, table: string, value: T, path: readonly (string | number)[]): T {
  const walk = (node: unknown, at: readonly (string | number)[]): unknown => {
    if (Array.isArray(node)) return node.map((item, i) => walk(item, [...at, i]));
    if (typeof node !== "object" || node === null) return node;
    return Object.fromEntries(
      Object.entries(node).map(([key, item]) => [key, field(key, item, [...at, key])]),
    );
  };
  const field = (key: string, item: unknown, at: readonly (string | number)[]): unknown => {
    const named = NAMES.has(key) && typeof item === "string";
    const of = key === "id" ? table : TABLE_OF[key];
    if (!named && (of === undefined || typeof item !== "string")) return walk(item, at);
    if (key === "liquidId" && item === "water") return item;
    const old = named ? item : `${of}:${item}`;
    const id =
      ids.get(old) ?? archiveWrong(at, `an id of the file's ${named ? "rows" : `table ${of}`}`, item);
    return named ? `${old.slice(0, old.indexOf(":"))}:${id}` : id;
  };
  return walk(value, path) as T;
}
