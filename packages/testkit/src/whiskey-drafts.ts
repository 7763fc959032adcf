import type { WhiskeyDraft } from "@partsproof/house/protocol";
import { WhiskeyKind, WoodSpecies } from "@partsproof/house/protocol";
import fc from "fast-check";

/** Objects as JSON.parse makes them. */
const record = <T>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> =>
  fc.record(model, { noNullPrototype: true }) as fc.Arbitrary<T>;

/** Text that the schema neither refuses nor trims: whole characters of any script, no space at the ends, no U+0000. */
const text = (minLength: number, maxLength: number): fc.Arbitrary<string> =>
  fc
    .string({ unit: "grapheme", minLength, maxLength })
    .filter((s) => s.trim() === s && !s.includes("\0") && s.length >= minLength && s.length <= 120);

const strength: fc.Arbitrary<WhiskeyDraft["strength"]> = fc.oneof(
  record({
    basis: fc.constant("abv20" as const),
    value: fc.double({ min: 0, max: 100, noNaN: true }).map(positiveZero),
  }),
  record({
    basis: fc.constant("proof60F" as const),
    value: fc.double({ min: 0, max: 200, noNaN: true }).map(positiveZero),
  }),
);

/** Shares of the mash in whole per cent that add up to 100. */
const grains: fc.Arbitrary<WhiskeyDraft["grains"]> = fc.option(
  fc
    .uniqueArray(fc.integer({ min: 1, max: 99 }), { maxLength: 3 })
    .map((cuts) => [0, ...cuts.toSorted((a, b) => a - b), 100])
    .map((marks) =>
      marks.slice(1).map((mark, i) => ({
        grain: ["corn", "rye", "wheat", "malt"][i] ?? "oat",
        percent: mark - (marks[i] ?? 0),
      })),
    ),
  { nil: null },
);

const priceMinor = fc.option(fc.integer({ min: 0, max: 100_000_000 }), { nil: null });

const intensity = fc.oneof(
  fc.double({ min: 0, max: 10, noNaN: true }).map(positiveZero),
  fc.constant(null),
  record({ value: fc.integer({ min: 0, max: 10 }), sd: fc.integer({ min: 0, max: 10 }) }),
);
const profile: fc.Arbitrary<WhiskeyDraft["profile"]> = fc.option(
  record({
    tastedAt: fc.option(strength, { nil: null }),
    intensities: fc
      .uniqueArray(fc.constantFrom("smoke.smoke", "sweet.honey", "fruit.orchard", "earth.leather-and-leaf"), {
        maxLength: 4,
      })
      .chain((ids) => fc.tuple(...ids.map((id) => fc.tuple(fc.constant(id), intensity))))
      .map((said) => Object.fromEntries(said)),
  }),
  { nil: null },
);

/** Any whiskey that the house takes. */
export const whiskeyDrafts: fc.Arbitrary<WhiskeyDraft> = record({
  maker: text(1, 40),
  name: text(1, 40),
  release: text(0, 40),
  kind: fc.constantFrom(...WhiskeyKind.options),
  strength,
  ageYears: fc.option(
    fc.integer({ min: 0, max: 240 }).map((halves) => halves / 2),
    { nil: null },
  ),
  grains,
  casks: fc.array(record({ species: fc.constantFrom(...WoodSpecies.options), held: text(1, 20) }), {
    maxLength: 3,
  }),
  distilledAt: fc.option(text(0, 40), { nil: null }),
  place: fc.option(text(0, 40), { nil: null }),
  priceMinor,
  bottleMl: fc.double({ min: 1, max: 100_000, noNaN: true }),
  availability: fc.constantFrom("sold" as const, "gone" as const),
  note: text(0, 120),
  profile,
});

/** JSON has one zero. */
function positiveZero(value: number): number {
  return value + 0;
}
