import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { asNoted } from "@partsproof/core/blending";
import type {
  BodyRead,
  LearnedMixing,
  MixingUsed,
  SearchProblem,
  SearchTarget,
  SearchWhiskey,
  ShelfProblem,
} from "../../protocol/index.ts";
import type { WhiskeyRow } from "../rows.ts";
import { freeMl, onlyWhiskeyIn, type Shelf, strengthOf, whiskeyLabel } from "../shelf/index.ts";
import { targetOf } from "./shelf-target.ts";

type Asked = BodyRead<"searchShelf">;

/** The problem a household asks: its whiskeys as far as somebody has said what they taste of, with what is left of them. */
export function problemOf(
  shelf: Shelf,
  currency: string,
  asked: Asked,
  learned: readonly LearnedMixing[] = [],
): ShelfProblem {
  const aim = targetOf(shelf, asked);
  const mixing = mixingUsed(aim, asked, learned);
  const target = { ...aim, ...exponentsOf(mixing) };
  const attributes = Object.keys(target.profile);
  const left = levels(shelf);
  const all = [...shelf.whiskeys.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const usable = all.filter(({ id }) => asked.useIt || id !== asked.like);
  const told = usable.filter(({ profile }) => profile !== null);
  const there = told.filter(({ id }) => left.has(id));
  const buyable = told.filter(({ id, availability }) => !left.has(id) && availability === "sold");
  const shown = (row: WhiskeyRow): SearchWhiskey =>
    whiskeyOf(row, attributes, left.get(row.id) ?? 0, minorDigits(currency));
  const { rules, top, distance } = asked;
  const problem: SearchProblem = {
    whiskeys: there.map(shown),
    target,
    rules,
    shares: asked.shares ?? (atOneStrength(there) ? "alcohol" : "volume"),
    ...(top === undefined ? {} : { top }),
    ...(distance === undefined ? {} : { distance }),
  };
  return {
    problem,
    // What is bought comes as a full bottle.
    candidates: buyable.map((row) => ({ ...shown(row), availableMl: row.bottleMl })),
    names: Object.fromEntries(all.map((row) => [row.id, whiskeyLabel(row)])),
    currency,
    mixing,
    levels: { from: "shelf", notes: 0 },
    withoutProfile: usable
      .filter(({ id, profile }) => profile === null && left.has(id))
      .map((row) => ({ id: row.id, label: whiskeyLabel(row) })),
  };
}

/** MI4: what was learned of the target's attributes, and whether it counts: distances other than the root mean square know the mean alone. */
const mixingUsed = (
  { profile }: SearchTarget,
  { mixing, distance = "root mean square" }: Asked,
  learned: readonly LearnedMixing[],
): MixingUsed[] =>
  learned
    .filter(({ attribute, law }) => law !== "mean" && Object.hasOwn(profile, attribute))
    .map(({ attribute, exponent, sentence }) => ({
      attribute,
      exponent,
      used: mixing === "learned" && distance === "root mean square",
      sentence,
    }));

function exponentsOf(mixing: readonly MixingUsed[]): Pick<SearchTarget, "exponents"> {
  const used = mixing.filter((one) => one.used);
  return used.length === 0
    ? {}
    : { exponents: Object.fromEntries(used.map(({ attribute, exponent }) => [attribute, exponent])) };
}

/** Free millilitres by whiskey, of vessels that hold it alone and are no batch's. */
function levels(shelf: Shelf): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const vessel of shelf.vessels.values()) {
    if (shelf.trialVials.has(vessel.id)) continue;
    const only = vessel.batchId === null ? onlyWhiskeyIn(shelf, vessel.id) : null;
    const free = only === null ? 0 : freeMl(shelf, vessel.id);
    if (only !== null && free > 0) left.set(only, (left.get(only) ?? 0) + free);
  }
  return left;
}

/** Profiles compare where all were tasted at one strength, within half a per cent: then shares are of the alcohol. */
function atOneStrength(rows: readonly WhiskeyRow[]): boolean {
  const strengths = rows.map(({ profile }) =>
    profile?.tastedAt ? abv20OfStrength(strengthOf(profile.tastedAt)) : Number.NaN,
  );
  return rows.length > 0 && Math.max(...strengths) - Math.min(...strengths) <= 0.5;
}

function whiskeyOf(
  row: WhiskeyRow,
  attributes: readonly string[],
  availableMl: number,
  digits: number,
): SearchWhiskey {
  const { profile, priceMinor, bottleMl, grains, casks } = row;
  const stated =
    casks.length > 0 && !casks.some(({ species, held }) => [species, held].includes("not known"));
  const sum = (grains ?? []).reduce((all, { percent }) => all + percent, 0);
  return {
    id: row.id,
    abv: abv20OfStrength(strengthOf(row.strength)),
    // What nobody has said is unknown: in a file only, left out would be 0. What somebody noted is off by about as much as notes are.
    profile: Object.fromEntries(
      attributes.map((name) => [name, asNoted(profile?.intensities[name] ?? null)]),
    ),
    pricePerLitre: priceMinor === null ? null : (priceMinor / 10 ** digits / bottleMl) * 1000,
    availableMl,
    ageYears: row.ageYears,
    grains: grains === null || sum === 0 ? null : sharesOf(grains, sum),
    casks: stated ? casks.map((cask) => ({ ...cask })) : null,
    tags: [row.kind],
    maker: row.maker,
    group: row.distilledAt === "" ? null : row.distilledAt,
    gone: row.availability === "gone",
  };
}

function sharesOf(grains: NonNullable<WhiskeyRow["grains"]>, sum: number): Record<string, number> {
  const shares: Record<string, number> = {};
  for (const { grain, percent } of grains) shares[grain] = (shares[grain] ?? 0) + percent / sum;
  return shares;
}

/** Minor units of a currency: two for most, none for some (ISO 4217, as the platform has it). */
const minorDigits = (currency: string): number =>
  new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
