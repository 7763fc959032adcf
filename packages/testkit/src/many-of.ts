import type { Archive } from "@partsproof/house/protocol";

type RowOf = Record<string, unknown>;
type Tables = Record<string, RowOf[]>;
const LETTERS = "0123456789abcdefghjkmnpqrstvwxyz";
const ID = /\b[0-9a-hjkmnp-tv-z]{26}\b/gu;
const SHELF = ["taster", "whiskey", "recipe", "recipeVersion", "vessel", "batch", "transfer"];
const EVENING = ["flight", "flightKey", "sheet", "entry"];

/**
 * A household's file made large: its shelf so many times, its revealed evenings so many times, and water poured into a jug and out again so
 * many times. Every copy has ids of its own; nothing is drawn by chance. Without checksums, as a file from before there were any.
 */
export function manyOf(
  archive: Archive,
  {
    shelves,
    evenings,
    pours,
  }: { readonly shelves: number; readonly evenings: number; readonly pours: number },
): Archive {
  const all = JSON.parse(JSON.stringify(archive.tables)) as Tables;
  const revealed = new Set(
    (all["flight"] ?? []).filter(({ state }) => state === "revealed").map(({ id }) => id),
  );
  const base: Tables = Object.fromEntries(Object.keys(all).map((name) => [name, []]));
  for (const name of [...SHELF, ...EVENING])
    base[name] = (all[name] ?? []).filter((row) => {
      const flight = name === "flight" ? row["id"] : row["flightId"];
      return !EVENING.includes(name) || revealed.has(flight);
    });
  const tables: Tables = Object.fromEntries(Object.entries(base).map(([name, rows]) => [name, [...rows]]));
  let drawn = 0;
  const copy = (names: readonly string[]): void => {
    const own = new Set(names.flatMap((name) => (base[name] ?? []).map(({ id }) => String(id))));
    const fresh = new Map<string, string>();
    const renew = (id: string): string => {
      if (!own.has(id)) return id;
      const known = fresh.get(id) ?? `${id.slice(0, 10)}${tail((drawn += 1))}`;
      fresh.set(id, known);
      return known;
    };
    for (const name of names) {
      const text = JSON.stringify(base[name]).replaceAll(ID, renew);
      const rows = JSON.parse(text) as RowOf[];
      if (name === "transfer") for (const row of rows) if (row["flightId"] !== null) row["flightId"] = null;
      tables[name]?.push(...rows);
    }
  };
  for (let n = 1; n < shelves; n += 1) copy(SHELF);
  for (let n = 1; n < evenings; n += 1) copy(EVENING);
  pour(tables, pours, () => tail((drawn += 1)));
  for (const [n, row] of (tables["transfer"] ?? []).entries()) row["seq"] = n + 1;
  // Rows in the order in which a house lists them.
  for (const rows of Object.values(tables)) rows.sort((a, b) => (String(a["id"]) < String(b["id"]) ? -1 : 1));
  const { checksums: _, household, ...head } = archive;
  const { name, currency, demo } = household;
  return { ...head, household: { name, currency, demo }, tables };
}

function pour(tables: Tables, pours: number, tailOf: () => string): void {
  const vessel = tables["vessel"]?.[0];
  const last = tables["transfer"]?.at(-1);
  if (vessel === undefined || last === undefined) return;
  const jug = `${String(vessel["id"]).slice(0, 10)}${tailOf()}`;
  const bare = { whiskeyId: null, batchId: null, priceMinor: null, openedAt: null };
  tables["vessel"]?.push({ ...vessel, ...bare, id: jug, kind: "jug", label: "Jug", capacityMl: 500 });
  const water = { liquidId: "water", ethanolG: 0, waterG: 9.982, cost: null };
  for (let n = 0; n < pours; n += 1) {
    const into = n % 2 === 0;
    tables["transfer"]?.push({
      ...last,
      id: `${String(last["id"]).slice(0, 10)}${tailOf()}`,
      from: into ? { kind: "outside", name: "tap" } : { kind: "vessel", vesselId: jug },
      to: into ? { kind: "vessel", vesselId: jug } : { kind: "outside", name: "drain" },
      amount: into ? { kind: "volume", ml: 10 } : { kind: "all" },
      liquid: into ? water : null,
      batchId: null,
      flightId: null,
      note: "",
      undoneAt: null,
    });
  }
}

/** A number as the last 16 characters of an id. */
function tail(n: number): string {
  let text = "";
  for (let left = n; text.length < 16; left = Math.floor(left / 32)) text = `${LETTERS[left % 32]}${text}`;
  return text;
}
