/** A taster's guess for each glass, in glass order; null where no guess was made. */
export type Guesses = readonly (string | null)[];

/** How often each name is on offer: a whiskey poured twice is offered twice, distractors may be added. */
export type Offer = Readonly<Record<string, number>>;

export interface GuessRefusal {
  readonly ok: false;
  readonly code: "name_used_too_often" | "name_not_offered";
  readonly name: string;
  readonly offered: number;
  readonly used: number;
  /** Indexes of the glasses that bear the name. */
  readonly glasses: readonly number[];
}

/** How often `name` is offered, 0 for a name that is not (inherited properties are no names). */
const timesOffered = (offer: Offer, name: string): number =>
  Object.hasOwn(offer, name) ? (offer[name] ?? 0) : 0;

/**
 * Whether a set of guesses keeps to the names on offer. Names are compared character by character.
 *
 * @returns `{ ok: true }`, or the first refusal in glass order: a name that is not offered, or one used more
 * often than it is offered
 * @example checkGuesses({ offer: { Lantern: 1 }, guesses: ["Lantern", "Lantern"] })
 * // { ok: false, code: "name_used_too_often", name: "Lantern", offered: 1, used: 2, glasses: [0, 1] }
 */
export function checkGuesses({
  offer,
  guesses,
}: {
  offer: Offer;
  guesses: Guesses;
}): { readonly ok: true } | GuessRefusal {
  const places = new Map<string, number[]>();
  guesses.forEach((name, glass) => {
    if (name !== null) places.set(name, [...(places.get(name) ?? []), glass]);
  });
  for (const [name, glasses] of places) {
    const offered = timesOffered(offer, name);
    const used = glasses.length;
    if (offered === 0) return { ok: false, code: "name_not_offered", name, offered, used, glasses };
    if (used > offered) return { ok: false, code: "name_used_too_often", name, offered, used, glasses };
  }
  return { ok: true };
}
