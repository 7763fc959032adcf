import type { Contents as Held } from "@partsproof/core/ledger";
import type { ProfileBoard, ProfileLine } from "../../protocol/index.ts";
import { needRevealed } from "../findings/index.ts";
import { knownFlight } from "../flights/index.ts";
import type { Asked, Handlers } from "../handler.ts";
import type { Records } from "../ports.ts";
import { knownRecipe, slotLiquids, versionOf } from "../recipes/index.ts";
import { unknownId } from "../refuse.ts";
import {
  type BatchPast,
  batchPasts,
  NO_PAST,
  type Shelf,
  shelfState,
  together,
  whiskeyLabel,
} from "../shelf/index.ts";
import { against } from "./against.ts";
import { type AllObserved, observed } from "./observed.ts";
import { keptProfile, predicted } from "./predicted.ts";
import { board, scalesOf } from "./profile-board.ts";
import { keptLine, observedLine, predictedLine } from "./profile-lines.ts";
import { revealedSayings, type Saying } from "./revealed-sayings.ts";

type Routes = "getWhiskeyProfile" | "getRecipeProfile" | "getFlightProfiles";

/** Each reads first and reckons after: nobody waits for sums in the middle of a transaction. */
export const profileHandlers: Handlers<Routes> = {
  /** Y6: what the shelf says of it beside what was observed. */
  getWhiskeyProfile: async ({ house, at }) => {
    const id = at["whiskey"] ?? "";
    const { whiskey, sayings, names } = await house.store.transaction(async (records) => ({
      whiskey: (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]),
      ...(await saidIn(records, { house, at })),
    }));
    const all = observed(house, sayings);
    const label = whiskeyLabel(whiskey);
    const key = `whiskey:${id}`;
    return boardOf(label, [{ key, label, kept: keptProfile(whiskey) }], all, sayings, names);
  },

  /** Y6: what its parts predict, and each of its batches as observed beside what it was poured from. */
  getRecipeProfile: async ({ house, at }) => {
    const { recipe, version, batches, shelf, sayings, names } = await house.store.transaction(
      async (records) => {
        const row = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
        return {
          recipe: row,
          version: await versionOf(records, row, row.latestNumber),
          batches: await records.list("batch", at.household, { where: { recipeId: row.id } }),
          shelf: await shelfState(records, at.household),
          ...(await saidIn(records, { house, at })),
        };
      },
    );
    const all = observed(house, sayings);
    const of = slotLiquids(shelf);
    const slots = (version?.body.slots ?? []).filter(({ parts }) => parts > 0);
    // What stands in an open slot is not known, so nothing is predicted of the whole.
    const open = slots.some((slot) => slot.of.kind === "open");
    const held = open ? {} : { held: together(slots.map((slot) => of(slot.of).of(slot.parts))) };
    const pasts = batchPasts(shelf);
    const subjects: Subject[] = [
      { key: `recipe:${recipe.id}`, label: `${recipe.name}, version ${recipe.latestNumber}`, ...held },
      ...batches.map((batch) => batchSubject(batch, pasts)),
    ];
    return boardOf(recipe.name, subjects, all, sayings, names, shelf);
  },

  /** Y7: each name in the glasses, by this flight's sheets alone; a guest is told nothing of shelf and recipe. */
  getFlightProfiles: async ({ house, at, who }) => {
    const { flight, shelf, sayings, names } = await house.store.transaction(async (records) => {
      const row = await knownFlight(records, at);
      needRevealed(row);
      return {
        flight: row,
        shelf: await shelfState(records, at.household),
        ...(await saidIn(records, { house, at })),
      };
    });
    const here = sayings.filter(({ flightId }) => flightId === flight.id);
    const own = observed(house, here);
    const pasts = batchPasts(shelf);
    const isGuest = who.kind === "guest";
    const subjects = [...own.liquids].map(([key, { label }]): Subject => {
      const [kind = "", id = ""] = key.split(":");
      const whiskey = kind === "whiskey" ? shelf.whiskeys.get(id) : undefined;
      const batch = kind === "batch" ? shelf.batches.get(id) : undefined;
      if (isGuest) return { key, label };
      if (whiskey !== undefined) return { key, label, kept: keptProfile(whiskey) };
      return batch === undefined ? { key, label } : batchSubject(batch, pasts);
    });
    // What a whiskey was elsewhere may fill what the shelf is silent on, but not what this flight says of itself.
    const elsewhere = observed(
      house,
      sayings.filter(({ flightId }) => flightId !== flight.id),
    );
    return boardOf(flight.name, subjects, own, here, names, shelf, elsewhere);
  },
};

interface Subject {
  readonly key: string;
  readonly label: string;
  readonly kept?: ReturnType<typeof keptProfile>;
  /** What it is mixed from. */
  readonly held?: Held;
}

const batchSubject = (
  { id, name }: { readonly id: string; readonly name: string },
  pasts: ReadonlyMap<string, BatchPast>,
): Subject => ({ key: `batch:${id}`, label: name, held: (pasts.get(id) ?? NO_PAST).made });

async function saidIn(records: Records, { house, at }: Pick<Asked<Routes>, "house" | "at">) {
  const sayings = await revealedSayings(house, records, at.household);
  const tasters = await records.list("taster", at.household);
  return { sayings, names: new Map(tasters.map(({ id, name }) => [id, name])) };
}

function boardOf(
  name: string,
  subjects: readonly Subject[],
  seen: AllObserved,
  sayings: readonly Saying[],
  names: ReadonlyMap<string, string>,
  shelf: Shelf | null = null,
  forParts: AllObserved = seen,
): ProfileBoard {
  const lines: ProfileLine[] = [];
  const pairs = subjects.flatMap(({ key, label, kept, held }) => {
    const mixed = held === undefined || shelf === null ? null : predicted(shelf, held, forParts);
    const from =
      kept !== undefined && Object.keys(kept).length > 0
        ? keptLine(key, label, kept)
        : mixed === null
          ? null
          : predictedLine(key, label, mixed);
    const own = seen.liquids.get(key);
    const to = own === undefined ? null : observedLine(key, label, own);
    lines.push(...[from, to].filter((line) => line !== null));
    return from === null || to === null ? [] : [{ label, predicted: from, observed: to }];
  });
  const compared = against(pairs);
  const keys = new Set(subjects.map(({ key }) => key));
  const tasters = new Set(sayings.filter(({ nameId }) => keys.has(nameId)).map(({ tasterId }) => tasterId));
  return board(headlineOf(name, lines, compared), lines, compared, scalesOf(seen, tasters, names));
}

function headlineOf(name: string, lines: readonly ProfileLine[], compared: ProfileBoard["against"]): string {
  const telling = compared.findLast(({ rows }) =>
    rows.some(({ became }) => became === "more" || became === "less"),
  );
  const best = telling ?? compared.at(-1);
  if (best !== undefined) return best.sentence;
  if (lines.some(({ kind }) => kind === "observed"))
    return `${name} has been observed, and there is nothing to set it against.`;
  return lines.some(({ attributes }) => attributes.length > 0)
    ? `${name} has not been observed yet: no locked sheet of a revealed flight says what it tastes of.`
    : `Nothing is known yet of what ${name} tastes of.`;
}
