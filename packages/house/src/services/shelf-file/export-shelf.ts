import papa from "papaparse";
import type { AnswerOf } from "../../protocol/index.ts";
import { knownHousehold } from "../known.ts";
import type { Records } from "../ports.ts";
import type { VesselRow, WhiskeyRow } from "../rows.ts";
import { shelfState, volumeIn, whiskeyLabel } from "../shelf/index.ts";
import { digitsOf } from "./read-price.ts";

/** What a spreadsheet would take for a formula, and so gets a quote mark before it. Source: OWASP, CSV injection. */
const FORMULA = /^[=+\-@\t\r]/u;

interface Listed {
  readonly whiskey: WhiskeyRow;
  readonly bottle: VesselRow | null;
  readonly leftMl: number;
}

/** I6: the shelf as a list that is read in again as it was: a row a bottle, and one for a whiskey without any. */
export async function exportShelf(
  records: Records,
  householdId: string,
  as: "csv" | "json",
): Promise<AnswerOf<"exportShelf">> {
  const { name, currency } = await knownHousehold(records, householdId);
  const whiskeys = (await records.list("whiskey", householdId)).toSorted(byLabel);
  const shelf = await shelfState(records, householdId);
  const bottles = [...shelf.vessels.values()].filter(({ kind }) => kind === "bottle");
  const listed = whiskeys.flatMap((whiskey): Listed[] => {
    const own = bottles
      .filter(({ whiskeyId }) => whiskeyId === whiskey.id)
      .map((bottle) => ({ whiskey, bottle, leftMl: volumeIn(shelf, bottle.id) }))
      .toSorted((a, b) => b.bottle.capacityMl - a.bottle.capacityMl || b.leftMl - a.leftMl);
    return own.length === 0 ? [{ whiskey, bottle: null, leftMl: 0 }] : own;
  });
  const file = `${fileName(name)}-shelf.${as}`;
  if (as === "json") return { name: file, type: "application/json", text: jsonOf(listed, currency) };
  const rows = listed.map((one) => csvRow(one, currency));
  const text = papa.unparse([heads(currency), ...rows], { newline: "\r\n", escapeFormulae: FORMULA });
  // The mark that spreadsheets read UTF-8 by.
  return { name: file, type: "text/csv;charset=utf-8", text: `\uFEFF${text}\r\n` };
}

/** In an order that does not hang on when they were written. */
const byLabel = (a: WhiskeyRow, b: WhiskeyRow): number => (whiskeyLabel(a) < whiskeyLabel(b) ? -1 : 1);

const heads = (currency: string): string[] => [
  "Maker",
  "Name",
  "Release",
  "Kind",
  "Strength",
  "Age (years)",
  "Bottle (mL)",
  "Left (mL)",
  "Opened",
  `Price (${currency})`,
  "Count",
  "Distilled at",
  "Place",
  "Availability",
  "Casks",
  "Grains",
  "Note",
];

function csvRow({ whiskey, bottle, leftMl }: Listed, currency: string): string[] {
  const {
    maker,
    name,
    release,
    kind,
    strength,
    ageYears,
    grains,
    casks,
    distilledAt,
    place,
    availability,
    note,
  } = whiskey;
  const price = bottle === null ? whiskey.priceMinor : bottle.priceMinor;
  const digits = digitsOf(currency);
  return [
    maker,
    name,
    release,
    kind,
    `${strength.value} ${strength.basis === "abv20" ? "%" : "proof"}`,
    ageYears === null ? "" : String(ageYears),
    String(bottle?.capacityMl ?? whiskey.bottleMl),
    bottle === null ? "" : String(Number(leftMl.toFixed(3))),
    bottle?.openedAt?.slice(0, 10) ?? "",
    price === null ? "" : (price / 10 ** digits).toFixed(digits),
    bottle === null ? "0" : "1",
    distilledAt ?? "",
    place ?? "",
    availability,
    casks.map(({ species, held }) => (species === "not known" ? held : `${species} ${held}`)).join("; "),
    (grains ?? []).map(({ grain, percent }) => `${percent} % ${grain}`).join("; "),
    note,
  ];
}

function jsonOf(listed: readonly Listed[], currency: string): string {
  const whiskeys = [...new Set(listed.map(({ whiskey }) => whiskey))].map((whiskey) => {
    const { id, householdId: _, version: __, createdAt: ___, updatedAt: ____, ...facts } = whiskey;
    const bottles = listed.flatMap(({ whiskey: of, bottle, leftMl }) =>
      of.id !== id || bottle === null
        ? []
        : [
            {
              label: bottle.label,
              capacityMl: bottle.capacityMl,
              leftMl: Number(leftMl.toFixed(3)),
              openedAt: bottle.openedAt,
              priceMinor: bottle.priceMinor,
            },
          ],
    );
    return { ...facts, bottles };
  });
  return `${JSON.stringify({ format: "parts-and-proof/shelf", version: 1, currency, whiskeys }, null, 2)}\n`;
}

const fileName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
    .replaceAll(/^-|-$/gu, "") || "household";
