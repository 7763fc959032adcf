import { readFile } from "node:fs/promises";
import { type BodyOf, decodeText, ShelfColumn, type ShelfListPreview } from "@partsproof/house/protocol";
import { issueAt, many, needed, one, type Read, readText, readWord, refuse, yes } from "../../flags/index.ts";
import { columns } from "../../print/columns.ts";
import { plural } from "../../print/figures.ts";
import { householdCommand } from "../command.ts";

type Told = readonly [place: number, as: ShelfColumn];

/** "3=strength": the third column is strengths. */
const readColumn: Read<Told> = (text) => {
  const [place, as] = text.split("=");
  const named = ShelfColumn.safeParse(as);
  const at = Number(place);
  if (named.success && Number.isInteger(at) && at >= 1 && at <= 60)
    return { ok: true, value: [at, named.data] };
  const limit = `<place>=<one of ${ShelfColumn.options.join(", ")}>`;
  return {
    ok: false,
    issue: {
      code: "column_unreadable",
      limit,
      received: text,
      message: `column requires ${limit}, got ${text}`,
    },
  };
};

export const shelfImport = householdCommand({
  name: "shelf import",
  says: "A list of bottles from elsewhere (CSV), row by row as it would be taken in; nothing is written without --accept.",
  flags: {
    from: needed(readText("from"), "<file>", "values separated by commas, semicolons or tabs"),
    column: many(readColumn, "<place>=<what>", `what a column is: ${ShelfColumn.options.join(", ")}`),
    strengths: one(
      readWord("strengths", ["abv20", "proof60F"]),
      "<abv20|proof60F>",
      "what bare strengths are",
    ),
    volumes: one(readWord("volumes", ["ml", "cl", "l", "oz"]), "<ml|cl|l|oz>", "what bare sizes are"),
    dates: one(readWord("dates", ["dmy", "mdy"]), "<dmy|mdy>", "which comes first in 3/4/2024"),
    accept: yes("take the good rows in"),
  },
  places: { text: "from", columns: "column" },
  example: "shelf import --from bottles.csv",
  run: async ({ flags }, { client, household }) => {
    const bytes = await readFile(flags.from).catch((error: unknown) => {
      const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
      return refuse(issueAt(["from"], "file_not_read", "a file that can be read", flags.from, ` (${code})`));
    });
    const { text } = decodeText(bytes);
    const told = new Map(flags.column);
    const last = Math.max(0, ...told.keys());
    const { strengths, volumes, dates } = flags;
    const draft: BodyOf<"previewShelfList"> = {
      text,
      ...(last === 0 ? {} : { columns: Array.from({ length: last }, (_, n) => told.get(n + 1) ?? null) }),
      ...(strengths === undefined ? {} : { strengths }),
      ...(volumes === undefined ? {} : { volumes }),
      ...(dates === undefined ? {} : { dates }),
    };
    const at = { household: household.id };
    const preview = await client("previewShelfList", { at, body: draft });
    if (!flags.accept) return { json: preview, text: () => printPreview(preview) };
    const taken = await client("acceptShelfList", { at, body: { ...draft, sha256: preview.sha256 } });
    const left = taken.left.length === 0 ? "" : `; left out: line ${taken.left.join(", ")}`;
    return {
      json: taken,
      text: () =>
        `Taken in: ${plural(taken.whiskeys, "new whiskey")}, ${plural(taken.bottles, "bottle")}${left}`,
    };
  },
});

function printPreview({
  columns: heads,
  rows,
  good,
  wrong,
  newWhiskeys,
  bottles,
  issues,
}: ShelfListPreview): string {
  const read = heads.filter(({ as }) => as !== "ignore").map(({ heading, as }) => `${heading} is ${as}`);
  const ignored = heads.filter(({ as }) => as === "ignore").map(({ heading }) => heading);
  return [
    `Columns: ${read.join(", ")}${ignored.length === 0 ? "" : `; not read: ${ignored.join(", ")}`}`,
    columns(
      rows.filter(({ whiskey }) => whiskey !== null),
      [
        { head: "Line", cell: ({ line }) => String(line), right: true },
        { head: "Whiskey", cell: ({ whiskey }) => `${whiskey?.maker} ${whiskey?.name}` },
        { head: "Strength", cell: ({ whiskey }) => strengthOf(whiskey!.strength), right: true },
        { head: "Bottles", cell: (row) => `${row.bottles} of ${row.capacityMl} mL`, right: true },
        { head: "Left", cell: ({ levelMl }) => `${levelMl} mL`, right: true },
        {
          head: "Taken for",
          cell: ({ guessed }) => guessed.map(({ wrote, taken }) => `${wrote} as ${taken}`).join("; "),
        },
      ],
      "No row can be taken in.",
    ),
    ...[...issues, ...rows.flatMap((row) => row.issues)].map(({ message }) => message),
    `${plural(good, "good row")}, ${wrong} with something wrong: ${plural(newWhiskeys, "new whiskey")}, ${plural(bottles, "bottle")}. Nothing is written without --accept.`,
  ].join("\n");
}

const strengthOf = ({
  basis,
  value,
}: NonNullable<ShelfListPreview["rows"][number]["whiskey"]>["strength"]): string =>
  basis === "abv20" ? `${value} % vol` : `${value} proof`;
