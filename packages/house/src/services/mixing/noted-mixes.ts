import type { NotedMix, NotedMixes } from "@partsproof/core/mixing";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import { type AllObserved, mixedOf } from "../profiles/index.ts";
import { contentsByName, type Shelf } from "../shelf/index.ts";

/** All that mixes say of one attribute. */
export interface MixesOfAttribute extends NotedMixes {
  readonly attribute: string;
  readonly names: readonly { readonly key: string; readonly label: string }[];
}

export interface GatheredMixes {
  readonly attributes: readonly MixesOfAttribute[];
  /** Mixes that tell nothing, and why. */
  readonly silent: readonly { readonly label: string; readonly why: string }[];
}

/** A spread never told as surer than this: no nose is. Common practice, no source. */
const SUREST = 0.2;

/**
 * MI1, MI2: mixes that were noted in revealed flights, attribute by attribute, where every part of the mix is known too. What lay on wood
 * tastes of it, and is left out.
 *
 * @param seen of revealed flights alone
 * @param onWood ids of batches that lay on wood
 */
export function notedMixes(shelf: Shelf, seen: AllObserved, onWood: ReadonlySet<string>): GatheredMixes {
  const silent: { label: string; why: string }[] = [];
  const contentsOf = contentsByName(shelf);
  const found = new Map<
    string,
    {
      parts: Record<string, { mean: number; sd: number }>;
      mixes: NotedMix[];
      names: { key: string; label: string }[];
    }
  >();
  for (const [key, { label, whole }] of [...seen.liquids].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    const [kind = "", id = ""] = key.split(":");
    if (kind !== "batch" && kind !== "vessel") continue;
    const { parts } = mixedOf(shelf, contentsOf(kind, id), seen);
    const all = parts.reduce((sum, { amount }) => sum + amount, 0);
    const poured = parts.filter(({ amount }) => amount > 0);
    const why =
      poured.length === 0 || !(all > 0)
        ? "what was in it is not known any more"
        : poured.length === 1
          ? "it is one whiskey alone"
          : onWood.has(id)
            ? "it lay on wood, which has a taste of its own"
            : null;
    if (why !== null) {
      if (poured.length !== 1) silent.push({ label, why });
      continue;
    }
    const known = Object.keys(whole).filter((attribute) =>
      poured.every(({ profile }) => profile[attribute] !== undefined),
    );
    if (known.length === 0) silent.push({ label, why: "nothing noted of it is known of all its parts too" });
    for (const attribute of known) {
      const own = found.get(attribute) ?? { parts: {}, mixes: [], names: [] };
      for (const { id: part, profile } of poured) own.parts[part] = level(profile[attribute]);
      own.mixes.push({
        amounts: Object.fromEntries(poured.map(({ id: part, amount }) => [part, amount / all])),
        noted: level(whole[attribute]),
      });
      own.names.push({ key, label });
      found.set(attribute, own);
    }
  }
  return {
    attributes: ATTRIBUTES.flatMap(({ id: attribute }) => {
      const own = found.get(attribute);
      return own === undefined ? [] : [{ attribute, ...own }];
    }),
    silent,
  };
}

const level = (
  said: { readonly mean: number; readonly sd: number } | undefined,
): { mean: number; sd: number } => ({
  mean: Math.min(10, Math.max(0, said?.mean ?? 0)),
  sd: Math.max(SUREST, said?.sd ?? 10),
});
