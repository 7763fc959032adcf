import fc from "fast-check";
import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { Problem, type RouteName, routes } from "../../protocol/index.ts";

const RUNS = process.env["PARTSPROOF_LONG"] === "1" ? 4000 : 120;
const door = openReckoner();

const strength = fc.oneof(
  fc.record({ basis: fc.constant("abv20"), value: fc.constantFrom(0, 0.01, 5, 40, 46, 62.4, 99.9, 100) }),
  fc.record({ basis: fc.constant("abv20"), value: fc.double({ min: 0, max: 100, noNaN: true }) }),
  fc.record({ basis: fc.constant("proof60F"), value: fc.double({ min: 0, max: 200, noNaN: true }) }),
);
const ml = fc.oneof(fc.constantFrom(0.001, 100_000), fc.double({ min: 0.001, max: 2000, noNaN: true }));
const g = fc.oneof(fc.constantFrom(0.0001, 100_000), fc.double({ min: 0.01, max: 2000, noNaN: true }));
const celsius = fc.oneof(
  fc.constantFrom(-20, -5, 0, 4, 20, 40),
  fc.double({ min: -20, max: 40, noNaN: true }),
);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const instruments = maybe(
  fc.oneof(
    fc.record({ cylinder: fc.constantFrom("A", "B", "jug"), label: fc.constantFrom("us", "fruit", "exact") }),
    fc.record({ scale: fc.constantFrom("pocket", "fine", "kitchen") }),
    fc.record({ syringeMl: fc.constantFrom(1, 60, 1000), thermometer: fc.constant("laboratory") }),
  ),
);
const part = fc.record({ parts: fc.nat({ max: 5 }), strength });
const parts = fc.array(part, { minLength: 1, maxLength: 4 });
const level = fc.record({ volumeMl: fc.oneof(fc.constant(0), ml), strength, celsius });

/** Bodies that the schemas take, and that may well ask for what cannot be. */
const bodies: Readonly<Partial<Record<RouteName, fc.Arbitrary<unknown>>>> = {
  reckonMix: fc.record({ parts, volumeMl: ml, celsius: maybe(celsius), uncertainty: instruments }),
  reckonReduce: fc
    .record({
      start: fc.oneof(fc.record({ from: strength }), fc.record({ parts })),
      amount: fc.oneof(
        fc.record({ volumeMl: ml }),
        fc.record({ fillMl: ml }),
        fc.record({ finalG: g }),
        fc.record({ volumeMl: ml, fillMl: ml }),
      ),
      more: fc.record({
        to: fc.oneof(strength, fc.constant({ basis: "abv20", value: 20 })),
        add: maybe(fc.array(strength, { minLength: 1, maxLength: 2 })),
        steps: maybe(fc.integer({ min: 1, max: 5 })),
        stepsBy: maybe(fc.constantFrom("volume", "strength")),
        celsius: maybe(celsius),
        uncertainty: instruments,
      }),
    })
    .map(({ start, amount, more }) => ({ ...start, ...amount, ...more })),
  reckonConvert: fc.record({ proof60F: fc.double({ min: 0, max: 200, noNaN: true }), volumeMl: maybe(ml) }),
  reckonGauge: fc.record({
    reading: fc.oneof(
      fc.record({ scale: fc.constant("abv20"), value: fc.double({ min: 0, max: 100, noNaN: true }) }),
      fc.record({ scale: fc.constant("proof60F"), value: fc.double({ min: 0, max: 200, noNaN: true }) }),
      fc.record({ scale: fc.constant("density20"), value: fc.double({ min: 500, max: 1200, noNaN: true }) }),
    ),
    celsius,
    solidsMgPer100Ml: maybe(fc.double({ min: 0, max: 100_000, noNaN: true })),
    uncertainty: maybe(fc.record({ division: fc.constantFrom(0.1, 1, 5) })),
  }),
  reckonWeigh: fc.record({
    strength,
    ml: maybe(ml),
    grams: maybe(g),
    celsius,
    inAir: fc.boolean(),
    uncertainty: instruments,
  }),
  reckonWeighOut: fc.record({
    parts: fc.array(
      fc.record({
        parts: fc.nat({ max: 5 }),
        strength,
        pouredG: maybe(fc.double({ min: 0, max: 1000, noNaN: true })),
        done: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    fillMl: ml,
    vesselMl: maybe(ml),
    to: maybe(strength),
    add: maybe(strength),
    celsius,
    inAir: fc.boolean(),
    uncertainty: instruments,
  }),
  reckonFill: fc.record({ held: fc.record({ volumeMl: ml, strength }), with: strength, vesselMl: ml }),
  reckonLift: fc.record({
    from: strength,
    volumeMl: ml,
    to: strength,
    with: fc.array(strength, { maxLength: 3 }),
    roomMl: maybe(ml),
  }),
  reckonSample: fc
    .record({ grams: g, density: fc.double({ min: 0.76, max: 1.02, noNaN: true }) })
    .chain(({ grams, density }) =>
      fc.record({
        grams: fc.constant(grams),
        ml: fc.constant(Math.min(100_000, Math.max(0.001, grams / density))),
        celsius,
        inAir: fc.boolean(),
        uncertainty: instruments,
      }),
    ),
  reckonEvaporated: fc.record({ before: level, after: level, uncertainty: instruments }),
  reckonTemperature: fc.record({ strength, kgPerM3: fc.double({ min: 780, max: 1010, noNaN: true }) }),
};

/** Bodies that once were answered with no number. */
const FOUND: Readonly<Partial<Record<string, readonly unknown[]>>> = {
  reckonReduce: [
    {
      parts: [{ parts: 1, strength: { basis: "abv20", value: 4.6435523561682805e-17 } }],
      volumeMl: 19,
      to: { basis: "abv20", value: 5e-324 },
      celsius: 0,
    },
    { from: { basis: "abv20", value: 60 }, volumeMl: 700, to: { basis: "abv20", value: 1e-300 } },
    { from: { basis: "abv20", value: 60 }, fillMl: 700, to: { basis: "abv20", value: 1e-300 } },
  ],
};

test.each(Object.entries(bodies))(
  "%s answers what its schema says, or refuses with what, where, limit and received; it never fails",
  async (name, arbitrary) => {
    const route = routes[name as RouteName];
    let answered = 0;
    await fc.assert(
      fc.asyncProperty(arbitrary, async (body) => {
        const request = new Request(`http://reckoner.test${route.path}`, {
          method: "POST",
          body: JSON.stringify(body),
        });
        const response = await door(request);
        const said: unknown = await response.json();
        if (response.status === 200) {
          answered++;
          // A number that is none is null in JSON, which no field of an answer takes for a number.
          route.answer?.parse(said);
          return;
        }
        expect({ status: response.status, said }).toMatchObject({ status: 422 });
        for (const issue of Problem.parse(said).issues) {
          expect(issue.message).toMatch(/ requires? .+, got /s);
          expect(issue.limit).not.toMatch(/NaN|undefined/);
        }
      }),
      { numRuns: RUNS, examples: FOUND[name]?.map((body) => [body]) ?? [] },
    );
    expect(answered).toBeGreaterThan(2);
  },
);
