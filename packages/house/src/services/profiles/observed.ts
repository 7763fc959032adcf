import {
  combineLiquids,
  type LiquidNote,
  type Profile,
  type UseOfScale,
  type Where,
} from "@partsproof/core/notes";
import { SECTIONS } from "../../protocol/index.ts";
import type { House } from "../ports.ts";
import { Remembered } from "../remembered.ts";
import type { Saying } from "./revealed-sayings.ts";

/** What sheets together say of one liquid. */
export interface Observed {
  readonly label: string;
  readonly whole: Profile;
  readonly sections: Readonly<Partial<Record<Where, Profile>>>;
  readonly counted: { readonly flights: number; readonly glasses: number; readonly tasters: number };
}

export interface AllObserved {
  /** By key. */
  readonly liquids: ReadonlyMap<string, Observed>;
  readonly scales: ReadonlyMap<string, UseOfScale>;
}

/** Combining takes long: kept by a digest of all that it rests on. */
const kept = new WeakMap<House, Remembered<AllObserved>>();

/**
 * Y3: notes of one liquid by one or more tasters, as one profile, whole and by parts of the tasting. Each taster's use of the scale is
 * learned over all of the household's sayings.
 *
 * @param keyOf what a saying is of: its liquid, or its liquid in one flight
 */
export function observed(
  house: House,
  sayings: readonly Saying[],
  keyOf: (saying: Saying) => string = ({ nameId }) => nameId,
): AllObserved {
  const told = sayings.map((saying) => [
    keyOf(saying),
    saying.tasterId,
    saying.flightId,
    saying.whole,
    saying.sections,
  ]);
  const digest = house.sha256(new TextEncoder().encode(JSON.stringify(told))).join();
  const all = kept.get(house) ?? new Remembered<AllObserved>();
  kept.set(house, all);
  const found = all.get(digest) ?? combined(sayings, keyOf);
  all.set(digest, found);
  return found;
}

function combined(sayings: readonly Saying[], keyOf: (saying: Saying) => string): AllObserved {
  const notesOf = (profile: (saying: Saying) => Profile): LiquidNote[] =>
    sayings.map((saying) => ({ liquid: keyOf(saying), taster: saying.tasterId, profile: profile(saying) }));
  const whole = combineLiquids(notesOf((saying) => saying.whole));
  const parts = combineLiquids(notesOf(({ sections }) => flat(sections)));
  const byKey = Map.groupBy(sayings, keyOf);
  return {
    scales: whole.scales,
    liquids: new Map(
      [...byKey].map(([key, own]) => [
        key,
        {
          label: own.at(-1)?.label ?? "",
          whole: whole.profiles.get(key) ?? {},
          sections: sectionsOf(parts.profiles.get(key) ?? {}),
          counted: {
            flights: new Set(own.map(({ flightId }) => flightId)).size,
            glasses: own.length,
            tasters: new Set(own.map(({ tasterId }) => tasterId)).size,
          },
        },
      ]),
    ),
  };
}

const flat = (sections: Saying["sections"]): Profile =>
  Object.fromEntries(
    Object.entries(sections).flatMap(([where, profile]) =>
      Object.entries(profile).map(([attribute, said]) => [`${where}/${attribute}`, said]),
    ),
  );

function sectionsOf(profile: Profile): Observed["sections"] {
  const parts = SECTIONS.map((where) => {
    const own = Object.entries(profile).flatMap(([key, said]) =>
      key.startsWith(`${where}/`) ? [[key.slice(where.length + 1), said] as const] : [],
    );
    return [where, Object.fromEntries(own)] as const;
  });
  return Object.fromEntries(parts.filter(([, own]) => Object.keys(own).length > 0));
}
