import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const door = openReckoner();
const client = createClient(door, "http://reckoner.test");
const abv = (value: number) => ({ basis: "abv20" as const, value });
const proof = (value: number) => ({ basis: "proof60F" as const, value });

test("K1 the reckoner's door has the sums, and nothing of a household", async () => {
  const { kgPerM3 } = await client("reckonDensity", { body: { massFraction: 0.4, celsius: 20 } });
  // OIML R 22 (1975), Table I.
  expect(Math.abs(kgPerM3 - 935.15)).toBeLessThan(0.01);
  const none = await door(new Request("http://reckoner.test/api/households"));
  expect(none.status).toBe(404);
});

// US Gauging Manual, Table 1 (27 CFR 30.61): 100 proof read at 70 °F is 95.8 proof.
test("gauges by Table 1 of 27 CFR 30.61, in °F or the same in °C", async () => {
  const reading = { scale: "proof60F" as const, value: 100 };
  const { trueProof } = await client("reckonGauge", { body: { reading, fahrenheit: 70 } });
  expect(Math.abs(trueProof - 95.8)).toBeLessThanOrEqual(0.15);
  const inCelsius = await client("reckonGauge", { body: { reading, celsius: 38 / 1.8 } });
  expect(inCelsius.trueProof).toBeCloseTo(trueProof, 9);
});

// 27 CFR 30.32(b): 0.50 g of solids in 100 mL hide 2 proof.
test("K7 dissolved solids are added by 27 CFR 30.32, and what 30.31 does is said", async () => {
  const at = async (value: number, mg: number) =>
    client("reckonGauge", {
      body: { reading: { scale: "proof60F", value }, fahrenheit: 60, solidsMgPer100Ml: mg },
    });
  const some = await at(90, 500);
  expect(some.trueProof).toBeCloseTo(92, 9);
  expect(some.solids).toMatchObject({
    obscurationProof: 2,
    matters: true,
    rule: "add_obscuration",
    inRange: true,
  });
  expect(some.solids?.apparentProof).toBeCloseTo(90, 9);
  expect((await at(90, 10)).solids).toMatchObject({ matters: false, rule: "as_read" });
  expect((await at(120, 700)).solids).toMatchObject({ rule: "distil", inRange: false });
  const spirit = await client("reckonConvert", { body: { proof60F: 92 } });
  expect(some.abv20).toBeCloseTo(spirit.abv20, 9);
});

test("K4 weighing and its inverse return, in air and in vacuum, at any temperature", async () => {
  for (const inAir of [true, false]) {
    const there = await client("reckonWeigh", { body: { strength: abv(40), ml: 100, celsius: 28, inAir } });
    const back = await client("reckonWeigh", {
      body: { strength: abv(40), grams: there.grams, celsius: 28, inAir },
    });
    expect(back.ml).toBeCloseTo(100, 9);
    expect(back.ml20).toBeCloseTo(there.ml20, 9);
    const found = await client("reckonSample", { body: { grams: there.grams, ml: 100, celsius: 28, inAir } });
    expect(found.abv20).toBeCloseTo(40, 8);
  }
  const vacuum = await client("reckonWeigh", { body: { strength: abv(40), ml: 100 } });
  // OIML R 22 (1975), Table II: 948.05 kg/m³ at 40 % vol and 20 °C (from memory).
  expect(vacuum.grams).toBeCloseTo(94.805, 2);
  const air = await client("reckonWeigh", { body: { strength: abv(40), ml: 100, inAir: true } });
  // OIML D 28: (1 - 1.2 / 948.05) / (1 - 1.2 / 8000).
  expect(air.grams / vacuum.grams).toBeCloseTo((1 - 1.2 / 948.045) / (1 - 1.2 / 8000), 9);
});

test("K2 volumes read at a temperature: the strength hardly changes, the volume at 20 °C does", async () => {
  const parts = [
    { parts: 2, strength: abv(62.4) },
    { parts: 1, strength: abv(46) },
  ];
  const warm = await client("reckonMix", { body: { parts, volumeMl: 750, celsius: 30 } });
  const cool = await client("reckonMix", { body: { parts, volumeMl: 750 } });
  expect(Math.abs(warm.abv20 - cool.abv20)).toBeLessThan(0.02);
  expect(cool.asRead).toBeUndefined();
  // Read at 30 °C and mixed, it comes to nearly what is mixed at 20 °C, read at 20 °C.
  expect(warm.asRead?.volumeMl).toBeCloseTo(cool.volumeMl, 0);
  // A whiskey of 57 % vol shrinks by about 0.09 % a degree.
  expect(warm.volumeMl / cool.volumeMl).toBeCloseTo(0.991, 3);
  const frozen = client("reckonMix", { body: { parts: [{ parts: 1, strength: abv(0) }], celsius: -5 } });
  expect(await refusalOf(frozen)).toMatchObject({
    status: 422,
    issues: [{ code: "mixture_frozen", path: ["celsius"], received: -5 }],
  });
});

test("K3 two amounts where one is asked are refused, not one of them left out", async () => {
  const both = client("reckonReduce", { body: { from: abv(60), to: abv(43), volumeMl: 700, fillMl: 700 } });
  expect(await refusalOf(both)).toMatchObject({
    status: 422,
    issues: [
      { code: "amounts_exclude", path: ["fillMl"], received: 700, limit: expect.stringMatching(/volumeMl/) },
    ],
  });
  const none = client("reckonReduce", { body: { from: abv(60), to: abv(43) } });
  expect(await refusalOf(none)).toMatchObject({ issues: [{ code: "amount_missing", path: ["volumeMl"] }] });
  const twice = client("reckonConvert", { body: { abv20: 40, proof60F: 80 } as never });
  expect(await refusalOf(twice)).toMatchObject({ status: 422, issues: [{ code: "no_form_fits" }] });
  const reading = { scale: "abv20" as const, value: 40 };
  const warm = client("reckonGauge", { body: { reading, celsius: 20, fahrenheit: 68 } });
  expect(await refusalOf(warm)).toMatchObject({
    issues: [{ code: "amounts_exclude", path: ["fahrenheit"] }],
  });
  const start = client("reckonReduce", {
    body: { from: abv(60), parts: [{ parts: 1, strength: abv(50) }], to: abv(43), volumeMl: 100 },
  });
  expect(await refusalOf(start)).toMatchObject({ issues: [{ code: "strengths_exclude", path: ["parts"] }] });
  const lone = client("reckonReduce", {
    body: { from: abv(46), to: abv(50), add: [abv(60), abv(0)], fillMl: 700 },
  });
  expect(await refusalOf(lone)).toMatchObject({ issues: [{ code: "amount_missing", path: ["volumeMl"] }] });
});

test("reduces from several parts, to a volume and to a mass, with what it says", async () => {
  const parts = [
    { parts: 2, strength: abv(62.4) },
    { parts: 1, strength: proof(116) },
  ];
  for (const final of [{ fillMl: 700 }, { finalG: 650 }, { volumeMl: 500 }]) {
    const made = await client("reckonReduce", { body: { parts, to: abv(46), ...final } });
    const poured = [...(made.parts ?? []), ...(made.added ?? [])];
    const whole = await client("reckonMix", {
      body: {
        parts: poured.map(({ ml, abv20 }) => ({ parts: ml, strength: abv(abv20) })),
        volumeMl: poured.reduce((sum, { ml }) => sum + ml, 0),
      },
    });
    expect(whole.abv20).toBeCloseTo(46, 9);
    expect(whole.volumeMl).toBeCloseTo(made.finalMl, 8);
    expect(whole.massG).toBeCloseTo(made.finalG ?? 0, 8);
    expect((made.parts?.[0]?.ml ?? 0) / (made.parts?.[1]?.ml ?? 1)).toBeCloseTo(2, 9);
    // Each lands on the amount that was asked.
    const { fillMl = made.finalMl, finalG = made.finalG } = final as { fillMl?: number; finalG?: number };
    expect(made.finalMl).toBeCloseTo(fillMl, 8);
    expect(made.finalG).toBeCloseTo(finalG ?? 0, 8);
  }
});

test("the plain reduction and the one from a single part are the same", async () => {
  const plain = await client("reckonReduce", { body: { from: abv(60), to: abv(43), fillMl: 700 } });
  const one = await client("reckonReduce", {
    body: { parts: [{ parts: 3, strength: abv(60) }], to: abv(43), fillMl: 700 },
  });
  for (const name of ["liquidMl", "waterMl", "waterG", "finalMl", "naiveWaterMl"] as const) {
    expect(one[name]).toBeCloseTo(plain[name], 8);
  }
  expect(plain).not.toHaveProperty("added");
});

test("two liquids fill a vessel exactly, and the nearest is told when they cannot", async () => {
  const body = { from: abv(46), volumeMl: 350, add: [abv(62.4), abv(0)], fillMl: 700 };
  const made = await client("reckonReduce", { body: { ...body, to: abv(50) } });
  expect(made.finalMl).toBeCloseTo(700, 8);
  expect(made.added).toHaveLength(2);
  expect(made.waterMl).toBeCloseTo(made.added?.[1]?.ml ?? 0, 12);
  const whole = await client("reckonMix", {
    body: {
      parts: [
        { parts: 350, strength: abv(46) },
        { parts: made.added?.[0]?.ml ?? 0, strength: abv(62.4) },
        { parts: made.waterMl, strength: abv(0) },
      ],
      volumeMl: 350 + (made.added?.[0]?.ml ?? 0) + made.waterMl,
    },
  });
  expect(whole.abv20).toBeCloseTo(50, 8);
  const no = client("reckonReduce", { body: { ...body, to: abv(62) } });
  expect(await refusalOf(no)).toMatchObject({
    issues: [
      {
        code: "strength_not_reachable",
        path: ["to", "value"],
        message: expect.stringMatching(/nearest: 54\.26 % vol with 350\.6 mL of 62\.4 % vol/),
      },
    ],
  });
  const over = client("reckonReduce", { body: { ...body, to: abv(50), fillMl: 300 } });
  expect(await refusalOf(over)).toMatchObject({
    issues: [{ code: "more_than_final_already", path: ["fillMl"] }],
  });
});

test("steps over days land on the target, of equal volume or of equal strength", async () => {
  const body = { from: abv(60), to: abv(46), volumeMl: 700, steps: 4 };
  const byVolume = (await client("reckonReduce", { body })).steps ?? [];
  const byStrength = (await client("reckonReduce", { body: { ...body, stepsBy: "strength" } })).steps ?? [];
  expect(byVolume.at(-1)?.abv20).toBeCloseTo(46, 9);
  expect(new Set(byVolume.map(({ addMl }) => addMl.toFixed(9))).size).toBe(1);
  expect(byStrength.map((step) => step.abv20)).toEqual([56.5, 53, 49.5, 46].map((x) => expect.closeTo(x, 9)));
});

test("K5 an impossible target is refused with the nearest there is", async () => {
  const up = client("reckonReduce", {
    body: { from: abv(46), to: abv(70), volumeMl: 350, add: [abv(62.4)] },
  });
  expect(await refusalOf(up)).toMatchObject({
    issues: [{ code: "target_not_between", message: expect.stringMatching(/nearest: 62\.4 % vol$/) }],
  });
  const lift = { from: abv(46), volumeMl: 350, to: abv(58) };
  const some = await client("reckonLift", { body: { ...lift, with: [abv(62.4), abv(50)], roomMl: 500 } });
  expect(some.bottles).toMatchObject([
    { fits: false, issue: null },
    { addMl: null, issue: { code: "target_not_between", path: ["with", 1] } },
  ]);
  // With what is needed the room is just enough.
  const exact = await client("reckonLift", { body: { ...lift, with: [abv(some.needed?.abv20 ?? 0)] } });
  expect(exact.bottles[0]?.addMl).toBeCloseTo(500, 6);
  const none = client("reckonLift", { body: { ...lift, with: [abv(50), abv(57)] } });
  expect((await refusalOf(none)).issues.map(({ path }) => path)).toEqual([
    ["with", 0],
    ["with", 1],
  ]);
  const small = client("reckonLift", { body: { ...lift, roomMl: 10 } });
  expect(await refusalOf(small)).toMatchObject({ issues: [{ code: "amount_too_small", path: ["roomMl"] }] });
  const vessel = client("reckonFill", {
    body: { held: { volumeMl: 350, strength: abv(62.4) }, with: abv(46), vesselMl: 300 },
  });
  expect(await refusalOf(vessel)).toMatchObject({
    issues: [{ code: "vessel_over_capacity", received: 300 }],
  });
});

test("K8 pours by weight come to what was asked, and again after an overshoot", async () => {
  const parts = [
    { parts: 2, strength: abv(62.4) },
    { parts: 1, strength: abv(46) },
  ];
  const plan = await client("reckonWeighOut", { body: { parts, fillMl: 700, to: abv(50) } });
  expect(plan).toMatchObject({ ratioKept: true, strengthKept: true });
  expect(plan.finalMl).toBeCloseTo(700, 8);
  expect(plan.abv20).toBeCloseTo(50, 9);
  expect(plan.reducing?.scaleG).toBeCloseTo(plan.finalG, 8);
  const [first, second] = plan.pours;
  const over = (first?.plannedG ?? 0) + 20;
  const again = [{ ...parts[0], pouredG: over }, parts[1]] as typeof parts;
  const rest = await client("reckonWeighOut", { body: { parts: again, fillMl: 700, to: abv(50) } });
  expect(rest.ratioKept).toBe(true);
  expect(rest.pours[0]?.toPourG).toBe(0);
  expect(rest.pours[1]?.toPourG).toBeCloseTo((second?.plannedG ?? 0) * (over / (first?.plannedG ?? 1)), 8);
  const full = await client("reckonWeighOut", {
    body: { parts: again, fillMl: 700, vesselMl: 700, to: abv(50) },
  });
  expect(full).toMatchObject({ ratioKept: false, strengthKept: true });
  expect(full.finalMl).toBeCloseTo(700, 6);
  // The same from a scale that was not zeroed and shows the jug too.
  const read = await client("reckonWeighOut", {
    body: { parts, readingsG: [412, 412 + over], fillMl: 700, vesselMl: 700, to: abv(50) },
  });
  expect(read.pours[1]?.toPourG).toBeCloseTo(full.pours[1]?.toPourG ?? 0, 6);
  expect(read.pours[1]?.scaleG).toBeCloseTo((full.pours[1]?.scaleG ?? 0) + 412, 6);
  const refused = async (body: object) =>
    (await refusalOf(client("reckonWeighOut", { body: { parts, fillMl: 700, ...body } }))).issues[0];
  expect(await refused({ readingsG: [412, 400] })).toMatchObject({
    code: "reading_falls",
    path: ["readingsG", 1],
  });
  expect(await refused({ readingsG: [0, 1, 2, 3] })).toMatchObject({ code: "readings_too_many" });
  expect(await refused({ parts: again, vesselMl: 100 })).toMatchObject({
    code: "vessel_too_small",
    received: 100,
  });
  expect(await refused({ parts: [{ ...parts[0], done: true }] })).toMatchObject({ code: "nothing_to_pour" });
});

test("K4 a final mass in air is what the scale shows in the end", async () => {
  const body = { parts: [{ parts: 1, strength: abv(46) }], finalG: 650, inAir: true };
  const made = await client("reckonWeighOut", { body });
  expect(made.pours[0]?.scaleG).toBeCloseTo(650, 9);
  expect(made.finalG).toBeGreaterThan(650.5);
});

test("what evaporated: as core has it, and refused when there is more than before", async () => {
  const before = { volumeMl: 700, strength: abv(62.4) };
  const gone = await client("reckonEvaporated", {
    body: { before, after: { volumeMl: 650, strength: abv(61) } },
  });
  // By Lange's densities at 20 °C it is 344.7 g less 313.0 g of ethanol.
  expect(gone.ethanolG).toBeCloseTo(31.8, 0);
  expect(gone.massG).toBeCloseTo(gone.ethanolG + gone.waterG, 9);
  const more = client("reckonEvaporated", { body: { before, after: { volumeMl: 700, strength: abv(65) } } });
  expect(await refusalOf(more)).toMatchObject({
    issues: [{ code: "more_ethanol_than_before", path: ["after"] }],
  });
});

test("K9 water has a density at two temperatures, 40 % vol at one, and neither beyond its range", async () => {
  const two = await client("reckonTemperature", { body: { strength: abv(0), kgPerM3: 999.9 } });
  expect(two.celsius).toHaveLength(2);
  for (const celsius of two.celsius) {
    const { kgPerM3 } = await client("reckonDensity", { body: { massFraction: 0, celsius } });
    expect(kgPerM3).toBeCloseTo(999.9, 8);
  }
  const one = await client("reckonTemperature", { body: { strength: abv(40), kgPerM3: 948 } });
  expect(one.celsius).toHaveLength(1);
  const heavy = client("reckonTemperature", { body: { strength: abv(0), kgPerM3: 1001 } });
  // Water is densest at 4 °C: 999.97 kg/m³ (any handbook).
  expect((await refusalOf(heavy)).issues[0]?.limit).toMatch(/^at most about 1000\.0 kg\/m³/);
  const light = client("reckonTemperature", { body: { strength: abv(0), kgPerM3: 950 } });
  expect((await refusalOf(light)).issues[0]?.limit).toMatch(
    /^at least 992\.2\d kg\/m³, its density at 40 °C/,
  );
});

test("a volume in US, UK and other units", async () => {
  const { amount, abv15 } = await client("reckonConvert", { body: { abv20: 40, volumeMl: 700 } });
  // OIML R 22 (1975), Tables at 15 °C: 40 % vol at 20 °C is 39.92 there (from memory).
  expect(abv15).toBeCloseTo(39.92, 1);
  // 280 mL of ethanol of 0.78924 g/mL; a UK unit is 8 g, a US standard drink 14 g.
  expect(amount?.ethanolG).toBeCloseTo(280 * 0.78924, 2);
  expect(amount?.ukUnits).toBeCloseTo((280 * 0.78924) / 8, 3);
  expect(amount?.usStandardDrinks).toBeCloseTo((280 * 0.78924) / 14, 3);
  expect(amount?.litresOfAlcohol).toBeCloseTo(0.28, 6);
  // 27 CFR 30.11: 231 cubic inches of 16.387064 mL; at 60 °F 4.44 °C colder 40 % vol is smaller by 0.07 % a degree.
  expect(amount?.wineGallons).toBeCloseTo(((1 - 4.44 * 0.0007) * 700) / (231 * 16.387064), 4);
  expect(amount?.proofGallons).toBeCloseTo(((amount?.wineGallons ?? 0) * 79.862) / 100, 5);
});

test("K6 a single label gives 0.95 of its half width, and the budget names it", async () => {
  const { uncertainty } = await client("reckonMix", {
    body: { parts: [{ parts: 1, strength: abv(46) }], volumeMl: 100, uncertainty: { cylinder: "A" } },
  });
  const { abv20, volumeMl, takenAs } = uncertainty ?? {};
  // 27 CFR 19.356(c): 0.3 either way, rectangular.
  expect(abv20?.interval95).toEqual([expect.closeTo(46 - 0.285, 4), expect.closeTo(46 + 0.285, 4)]);
  expect(abv20?.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 9);
  expect(abv20?.said).toEqual({ value: "46.0", giveOrTake: "0.3" });
  expect(abv20?.largest).toMatch(/^the label, not /);
  expect(volumeMl?.largest).toMatch(/^the measuring cylinder/);
  expect(takenAs).toEqual([
    "label by US law, right within 0.3 % vol",
    "measuring cylinder marked A",
    "20 °C, no thermometer: as warm as the room, within 2 °C",
  ]);
});

test("K6 weighed on a fine scale the label is what counts; in a jug it is the jug", async () => {
  const parts = [
    { parts: 2, strength: abv(62.4) },
    { parts: 1, strength: abv(46) },
  ];
  const at = async (uncertainty: object) =>
    (await client("reckonMix", { body: { parts, volumeMl: 75, uncertainty } })).uncertainty?.abv20;
  expect((await at({ scale: "fine" }))?.largest).toBe("the labels, not your scale");
  expect((await at({ cylinder: "jug", label: "printed" }))?.largest).toBe(
    "the measuring cylinder, not the labels",
  );
  const exact = await at({ scale: "fine", label: "exact" });
  expect(exact?.largest).toMatch(/^your scale/);
  const both = client("reckonMix", { body: { parts, uncertainty: { scale: "fine", cylinder: "A" } } });
  expect(await refusalOf(both)).toMatchObject({
    issues: [{ code: "instruments_exclude", path: ["uncertainty", "scale"] }],
  });
  const small = client("reckonMix", { body: { parts, volumeMl: 75, uncertainty: { syringeMl: 10 } } });
  expect(await refusalOf(small)).toMatchObject({
    issues: [{ code: "syringe_too_small", path: ["uncertainty", "syringeMl"], received: 10 }],
  });
});

test("K6 nothing uncertain is said to be certain, and nothing else is", async () => {
  const { uncertainty } = await client("reckonMix", {
    body: { parts: [{ parts: 1, strength: abv(0) }], uncertainty: {} },
  });
  expect(uncertainty?.abv20).toMatchObject({ standardUncertainty: 0, interval95: [0, 0], largest: "" });
  expect(uncertainty?.volumeMl.standardUncertainty).toBeGreaterThan(0.5);
});
