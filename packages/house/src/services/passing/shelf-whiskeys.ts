import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { FillWhiskey } from "../../protocol/index.ts";
import type { WhiskeyRow } from "../rows.ts";
import { freeMl, onlyWhiskeyIn, type Shelf, strengthOf } from "../shelf/index.ts";

/** X4: the whiskeys that something is left of, as a filling reads them, and those known here that can still be bought. */
export function shelfWhiskeys(
  shelf: Shelf,
  currency: string,
): { readonly there: readonly FillWhiskey[]; readonly couldBuy: readonly FillWhiskey[] } {
  const left = new Map<string, number>();
  for (const vessel of shelf.vessels.values()) {
    const only = vessel.batchId === null ? onlyWhiskeyIn(shelf, vessel.id) : null;
    const free = only === null ? 0 : freeMl(shelf, vessel.id);
    if (only !== null && free > 0) left.set(only, (left.get(only) ?? 0) + free);
  }
  const digits =
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
  const all = [...shelf.whiskeys.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const of = (row: WhiskeyRow): FillWhiskey => whiskeyOf(row, left.get(row.id) ?? 0, digits);
  return {
    there: all.filter(({ id }) => left.has(id)).map(of),
    // What is bought comes as a full bottle.
    couldBuy: all
      .filter(({ id, availability }) => !left.has(id) && availability === "sold")
      .map((row) => ({ ...of(row), availableMl: row.bottleMl })),
  };
}

/** What nobody has written down is not known: a cask list that is empty, a distillery or a place that is "", an attribute that nobody noted. */
function whiskeyOf(row: WhiskeyRow, availableMl: number, digits: number): FillWhiskey {
  const { grains, casks, priceMinor, bottleMl, release, distilledAt, place } = row;
  const sum = (grains ?? []).reduce((all, { percent }) => all + percent, 0);
  const shares: Record<string, number> = {};
  for (const { grain, percent } of grains ?? []) shares[grain] = (shares[grain] ?? 0) + percent / sum;
  const said = Object.entries(row.profile?.intensities ?? {}).flatMap(([id, own]) =>
    own === null ? [] : [[id, own] as const],
  );
  return {
    id: row.id,
    name: row.name,
    release,
    maker: row.maker,
    abv: abv20OfStrength(strengthOf(row.strength)),
    ageYears: row.ageYears,
    grains: sum > 0 ? shares : null,
    casks: casks.length > 0 ? casks.map((cask) => ({ ...cask })) : null,
    kind: row.kind,
    group: distilledAt === null || distilledAt.trim() === "" ? null : distilledAt,
    place: place === null || place.trim() === "" ? null : place,
    released: yearOf(release),
    pricePerLitre: priceMinor === null ? null : (priceMinor / 10 ** digits / bottleMl) * 1000,
    availableMl,
    tags: [row.kind],
    gone: row.availability === "gone",
    profile: Object.fromEntries(said),
  };
}

/** A release that has one year in its name is of that year. */
function yearOf(release: string): number | null {
  const years = [...new Set(release.match(/\b(?:19|20)\d\d\b/gu))];
  return years.length === 1 ? Number(years[0]) : null;
}
