import { effectMeans, LABEL_SIZE, labelNumbers } from "./label-numbers.ts";
import { beginEnds, endOf } from "./said-at-ends.ts";
import type { AttributeStudy, StudiedLiquid, StudiedWhiskey, Study, Sum } from "./studied.ts";
import type { LabelledWhiskey, TableNote } from "./told.ts";

type Shares = StudiedLiquid["parts"];

interface Saying {
  readonly taster: number;
  readonly key: string;
  readonly value: number;
  readonly variance: number;
}

/**
 * Whiskeys and notes in the order of their sums. The order in which they are given says nothing.
 *
 * @throws RangeError on a whiskey twice, a share of one that is not there, an amount below 0 or none, a level that is not finite or a spread that is not above 0
 */
export function studyOf(whiskeys: readonly LabelledWhiskey[], notes: readonly TableNote[]): Study {
  const sorted = whiskeys.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const ids = sorted.map(({ id }) => id);
  const place = new Map(ids.map((id, i) => [id, i]));
  if (place.size < ids.length) throw new RangeError("levels are learned of each whiskey once, got one twice");
  const tasters = [...new Set(notes.map(({ taster }) => taster))].toSorted();
  const seats = new Map(tasters.map((id, i) => [id, i]));
  const partsBy = new Map<string, Shares>();
  const said = new Map<string, Saying[]>();
  for (const { taster, parts, says } of notes) {
    const shares = sharesOf(parts, place);
    const key = shares.map(([whiskey, share]) => `${whiskey}:${share.toFixed(6)}`).join(" ");
    partsBy.set(key, shares);
    for (const [attribute, { mean, sd }] of Object.entries(says)) {
      if (!(Math.abs(mean) < Infinity && sd > 0 && sd < Infinity))
        throw new RangeError(
          `a note requires a finite level with a spread above 0, got ${mean} ± ${sd} of ${attribute}`,
        );
      const saying = { taster: seats.get(taster) ?? 0, key, value: mean, variance: sd * sd };
      const before = said.get(attribute);
      if (before === undefined) said.set(attribute, [saying]);
      else before.push(saying);
    }
  }
  const labels = sorted.map(({ label }) => labelNumbers(label));
  return {
    ids,
    notes: notes.length,
    tasters,
    labels,
    attributes: [...said]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([id, sayings]) => attributeOf(id, sayings, partsBy, labels, tasters.length)),
  };
}

function sharesOf(parts: TableNote["parts"], place: ReadonlyMap<string, number>): Shares {
  const poured = Object.entries(parts).filter(([, amount]) => amount !== 0);
  const all = poured.reduce((sum, [, amount]) => sum + amount, 0);
  if (poured.length === 0 || !(all < Infinity) || poured.some(([, amount]) => !(amount > 0)))
    throw new RangeError(
      `a note requires amounts of 0 or more and one above 0, got ${JSON.stringify(parts)}`,
    );
  return poured
    .map(([id, amount]) => {
      const whiskey = place.get(id);
      if (whiskey === undefined)
        throw new RangeError(`a note requires parts of whiskeys that are given, got ${id}`);
      return [whiskey, amount / all] as const;
    })
    .toSorted(([a], [b]) => a - b);
}

function attributeOf(
  id: string,
  unordered: readonly Saying[],
  partsBy: ReadonlyMap<string, Shares>,
  labels: readonly Float64Array[],
  tasters: number,
): AttributeStudy {
  const sayings = unordered.toSorted(
    (a, b) => (a.key === b.key ? 0 : a.key < b.key ? -1 : 1) || a.taster - b.taster || a.value - b.value,
  );
  const keys = [...new Set(sayings.map(({ key }) => key))];
  const all = keys.map((key) => partsBy.get(key) ?? []);
  const inMix = new Set(all.filter((parts) => parts.length > 1).flatMap((parts) => parts.map(([i]) => i)));
  const alone = new Set(all.filter((parts) => parts.length === 1).map((parts) => parts[0]?.[0]));
  const common = LABEL_SIZE + Math.max(0, tasters - 1);
  const patterns: Int32Array[] = [];
  const leafOn = (pattern: readonly number[]): number => patterns.push(Int32Array.from(pattern)) - 1;
  const hung = (leaf: number, base: ReadonlyMap<number, number>): Sum => {
    const places = patterns[leaf] as Int32Array;
    return { places, base: Float64Array.from(places, (place) => base.get(place) ?? 0), leaf };
  };
  const inCore = (base: ReadonlyMap<number, number>): Sum => ({
    places: Int32Array.from(base.keys()),
    base: Float64Array.from(base.values()),
    leaf: -1,
  });
  let core = common;
  const whiskeys = labels.map((label, i): StudiedWhiskey => {
    const less = [...label].map((number, k) => [k, -number] as const);
    if (inMix.has(i)) {
      const place = core++;
      const [level, stray] = [inCore(new Map([[place, 1]])), inCore(new Map([...less, [place, 1]]))];
      return { place, leaf: -1, told: true, level, stray };
    }
    const leaf = leafOn(Array.from({ length: common }, (_, k) => k));
    const told = alone.has(i);
    return { place: -1, leaf, told, level: hung(leaf, new Map()), stray: hung(leaf, new Map(less)) };
  });
  const liquids = all.map((parts): StudiedLiquid => {
    const [first, ...more] = parts.map(([i]) => whiskeys[i] as StudiedWhiskey);
    if (first !== undefined && more.length === 0) return { ...first, parts, mixed: 0 };
    const mean = new Map(parts.map(([i, share]) => [whiskeys[i]?.place ?? 0, share] as const));
    const biases = Array.from({ length: common - LABEL_SIZE }, (_, j) => LABEL_SIZE + j);
    const leaf = leafOn([...biases, ...mean.keys()]);
    const mixed = 2 * (1 - parts.reduce((sum, [, share]) => sum + share * share, 0));
    return { parts, mixed, leaf, level: hung(leaf, mean), stray: hung(leaf, new Map()) };
  });
  const number = new Map(keys.map((key, i) => [key, i]));
  const said = Float64Array.from(sayings, ({ value }) => value);
  const own = Float64Array.from(sayings, ({ variance }) => variance);
  return {
    id,
    effects: effectMeans(id),
    liquids,
    liquid: Int32Array.from(sayings, ({ key }) => number.get(key) ?? 0),
    taster: Int32Array.from(sayings, ({ taster }) => taster),
    said,
    own,
    atEnd: Uint8Array.from(said, (level) => Number(endOf(level) !== 0)),
    ...beginEnds(said, own),
    whiskeys,
    core,
    patterns,
    untold: Uint8Array.from(patterns, (_, leaf) =>
      Number(whiskeys.some((one) => one.leaf === leaf && !one.told)),
    ),
  };
}
