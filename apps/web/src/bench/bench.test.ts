import { describe, expect, test } from "vitest";
import {
  asTools,
  carriedFrom,
  carriedText,
  FIRST_TOOLS,
  readCelsius,
  readGrams,
  readNumber,
  readStrengthOf,
  readVolumeOf,
  reckonCorrect,
  reckonEvaporated,
  reckonLift,
  reckonMix,
  reckonNudges,
  reckonReduce,
  reckonRoom,
  reckonSample,
  reckonWeigh,
  wholeParts,
} from "./index.ts";
import { reckonSteps } from "./reckon-reduce.ts";

const tools = FIRST_TOOLS;
/** With the spaces that keep a number and its unit on one line. */
const spaced = (text: string): string =>
  text.replace(/(?<=\d) (%|mL)/g, "\u00a0$1").replace("% vol", "%\u00a0vol");

/** The answer, or a failure of the test that says the "no". */
function yes<T extends { readonly ok: boolean }>(answer: T): Extract<T, { readonly ok: true }> {
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer as Extract<T, { readonly ok: true }>;
}

describe("published figures, as the bench shows them", () => {
  test("27 CFR 30.61, Table 1: true proof from reading and °F", () => {
    // Cells of the US Gauging Manual's Table 1; the bound is that of core's reference test.
    for (const [reading, fahrenheit, printed] of [
      [100, 70, 96.0],
      [100, 50, 104.0],
      [120, 70, 116.2],
      [80, 60, 80.0],
    ] as const) {
      const celsius = yesRead(readCelsius(`${fahrenheit} F`));
      const done = yes(
        reckonCorrect({ scale: "proof60F", reading, division: 0.5, celsius, solids: 0, tools }),
      );
      expect(Math.abs(done.proof.exact - printed)).toBeLessThanOrEqual(0.2);
    }
  });

  test("27 CFR 30.32(b): 0.50 g of solids in 100 mL hides 2 proof", () => {
    const ask = { scale: "proof60F", reading: 88, division: 0.5, celsius: (60 - 32) / 1.8, tools } as const;
    const done = yes(reckonCorrect({ ...ask, solids: 500 }));
    expect(done.proof.exact).toBeCloseTo(90, 9);
    expect(done.solids).toMatchObject({ matters: true, rule: "add_obscuration", inRange: true });
    expect(yes(reckonCorrect({ ...ask, solids: 0 })).solids).toBeNull();
  });

  test("27 CFR 30.66: 100 gallons of 112 proof take 12.42 gallons of water to 100 proof", () => {
    const celsius = (60 - 32) / 1.8;
    const from = yesRead(readStrengthOf("112 proof"));
    const to = yesRead(readStrengthOf("100 proof"));
    const done = yes(
      reckonReduce({ from, to, add: [0], goal: { kind: "have" }, haveMl: 100, celsius, tools }),
    );
    expect(Math.abs((done.added[0]?.ml ?? 0) - 12.42)).toBeLessThan(0.02);
  });

  test("OIML R 22, Table II: 40 % vol at 20 °C has 948.05 kg/m³, and 100 mL of it weigh 94.805 g in vacuum", () => {
    const ask = { amount: { ml: 100 }, abv20: 40, celsius: 20, tools };
    const done = yes(reckonWeigh({ ...ask, inAir: false }));
    expect(done.weighed.kgPerM3).toBeCloseTo(948.05, 1);
    expect(done.weighed.grams).toBeCloseTo(94.805, 2);
    // Conventional air of 1.2 kg/m³ against weights of 8000 kg/m³ (OIML D 28).
    const air = yes(reckonWeigh({ ...ask, inAir: true })).weighed.grams;
    expect(air).toBeCloseTo((94.805 * (1 - 1.2 / 948.05)) / (1 - 1.2 / 8000), 2);
  });
});

const yesRead = (read: { ok: true; value: number } | { ok: false; wrong: string }): number => {
  if (!read.ok) throw new Error(read.wrong);
  return read.value;
};

describe("mix", () => {
  const rows = [
    { parts: 2, abv20: 62.4 },
    { parts: 1, abv20: 46 },
  ];
  test("is said with how far off it may be and where that comes from", () => {
    const { strength } = yes(reckonMix({ rows, totalMl: 750, celsius: 20, tools }));
    expect(strength.value).toBe("57.0");
    expect(Number(strength.by)).toBeGreaterThan(0.2);
    expect(Number(strength.by)).toBeLessThan(0.5);
    expect(strength.from).toMatch(/the labels/);
    expect(strength.budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
  test("a better label moves the blame to what volumes are measured with; a jug is called a jug", () => {
    const better = { ...tools, label: "printed", measure: "jug" } as const;
    const { strength } = yes(reckonMix({ rows, totalMl: 60, celsius: 20, tools: better }));
    expect(strength.from).toMatch(/^the jug, not/);
  });
  test("measured warm, it comes to less at 20 °C and to the same strength but for a hundredth", () => {
    const warm = yes(reckonMix({ rows, totalMl: 750, celsius: 30, tools }));
    const cool = yes(reckonMix({ rows, totalMl: 750, celsius: 20, tools }));
    expect(warm.mixture.volumeMl / cool.mixture.volumeMl).toBeCloseTo(0.991, 2);
    expect(Math.abs(warm.mixture.abv20 - cool.mixture.abv20)).toBeLessThan(0.02);
    expect(warm.readMl).toBeGreaterThan(warm.mixture.volumeMl);
  });
  test("a syringe filled twice is wrong the same way twice", () => {
    const at = (totalMl: number) =>
      yes(
        reckonMix({
          rows: [{ parts: 1, abv20: 46 }],
          totalMl,
          celsius: 20,
          tools: { ...tools, measure: "syringe 10" },
        }),
      ).volume;
    expect(Number(at(20).by) / Number(at(10).by)).toBeCloseTo(2, 0);
  });
  test("one part more of the stronger makes it stronger, one fewer weaker; none cannot go below none", () => {
    const [strong, mild] = reckonNudges(rows);
    expect(strong?.more).toBeGreaterThan(57);
    expect(strong?.less).toBeLessThan(57);
    expect(mild?.less).toBeCloseTo(62.4, 6);
    expect(
      reckonNudges([
        { parts: 0, abv20: 46 },
        { parts: 1, abv20: 60 },
      ])[0]?.less,
    ).toBeNull();
  });
});

describe("reduce", () => {
  const ask = { from: 62.4, to: 46, add: [0], haveMl: 350, celsius: 20, tools } as const;
  test("to a final volume, to a final mass, and by what there is: the end is what was asked", () => {
    const volume = yes(reckonReduce({ ...ask, goal: { kind: "volume", ml: 700 } }));
    expect(volume.after.volumeMl).toBeCloseTo(700, 6);
    expect(volume.start.ml20).toBeCloseTo(516.05, 1);
    expect(volume.added[0]?.ml20).toBeCloseTo(190.42, 1);
    const mass = yes(reckonReduce({ ...ask, goal: { kind: "mass", g: 500 } }));
    expect(mass.after.massG).toBeCloseTo(500, 9);
    for (const one of [volume, mass, yes(reckonReduce({ ...ask, goal: { kind: "have" } }))]) {
      expect(one.after.abv20).toBeCloseTo(46, 9);
      expect(one.strength.exact).toBeCloseTo(46, 6);
      expect(one.strength.by).not.toBe("0");
    }
  });
  test("with another liquid and water both, what there is fills the vessel at the strength", () => {
    const done = yes(reckonReduce({ ...ask, add: [50, 0], goal: { kind: "fill", ml: 700 } }));
    expect(done.after.volumeMl).toBeCloseTo(700, 6);
    expect(done.after.abv20).toBeCloseTo(46, 9);
    expect(done.added).toHaveLength(2);
  });
  test("a vessel filled on a warm day is full on that day", () => {
    const done = yes(reckonReduce({ ...ask, goal: { kind: "fill", ml: 700 }, celsius: 30 }));
    expect(done.afterReadMl).toBeCloseTo(700, 3);
    expect(done.after.volumeMl).toBeLessThan(696);
  });
  test("over days, the last lands on the strength", () => {
    const { steps } = yes(reckonSteps({ ...ask, goal: { kind: "have" }, days: 3, by: "volume" }));
    expect(steps).toHaveLength(3);
    expect(steps[2]?.after.abv20).toBeCloseTo(46, 9);
    expect(steps[0]?.addMl).toBeCloseTo(steps[1]?.addMl ?? 0, 9);
  });
  test("what cannot be says the nearest that can", () => {
    expect(reckonReduce({ ...ask, to: 70, goal: { kind: "have" } })).toMatchObject({
      ok: false,
      nearest: spaced("62.4 % vol, with nothing added"),
    });
    expect(reckonReduce({ ...ask, add: [50], to: 46, goal: { kind: "have" } })).toMatchObject({
      ok: false,
      nearest: spaced("50.0 % vol, the other liquid alone"),
    });
    expect(reckonReduce({ ...ask, goal: { kind: "fill", ml: 300 } })).toMatchObject({
      ok: false,
      nearest: spaced("pour 50 mL out first"),
    });
    expect(reckonReduce({ ...ask, add: [50, 0], goal: { kind: "have" } })).toMatchObject({ ok: false });
    const no = reckonReduce({ ...ask, add: [50, 0], to: 61, goal: { kind: "fill", ml: 700 } });
    expect(no).toMatchObject({ ok: false });
    // Core's full digits do not reach the page.
    expect(no.ok ? "" : no.why).not.toMatch(/\.\d{3}/);
  });
});

describe("what-if", () => {
  test("a sample by weight and volume is told with how poor a cylinder is", () => {
    const done = yes(reckonSample({ g: 94.69, ml: 100, celsius: 20, tools }));
    expect(done.strength.exact).toBeCloseTo(40, 0);
    expect(Number(done.strength.by)).toBeGreaterThan(2);
    expect(done.strength.from).toMatch(/^the measuring cylinder/);
    expect(reckonSample({ g: 120, ml: 100, celsius: 20, tools })).toMatchObject({ ok: false });
  });
  test("a lift and the room for it are one another's inverse", () => {
    const lift = yes(reckonLift({ haveMl: 350, from: 46, to: 58, other: 62.4, tools }));
    expect(lift.addMl).toBeCloseTo(942.87, 1);
    const room = yes(reckonRoom({ haveMl: 350, from: 46, to: 58, roomMl: lift.addMl, tools }));
    expect(room.strength.exact).toBeCloseTo(62.4, 6);
    expect(reckonLift({ haveMl: 350, from: 46, to: 70, other: 62.4, tools })).toMatchObject({
      ok: false,
      nearest: spaced("62.4 % vol, with an endless amount of the other bottle"),
    });
    expect(reckonRoom({ haveMl: 350, from: 46, to: 90, roomMl: 10, tools })).toMatchObject({ ok: false });
  });
  test("what evaporated has an uncertainty that may be larger than itself", () => {
    const done = yes(
      reckonEvaporated({ before: { ml: 700, abv20: 62.4 }, after: { ml: 695, abv20: 62.3 }, tools }),
    );
    expect(done.gone.ethanolG).toBeGreaterThan(0);
    expect(Number(done.ethanolG.by)).toBeGreaterThan(done.gone.ethanolG);
    expect(
      reckonEvaporated({ before: { ml: 700, abv20: 50 }, after: { ml: 700, abv20: 60 }, tools }),
    ).toMatchObject({ ok: false, nearest: spaced("at 60.0 % vol at most about 583 mL can be left") });
  });
});

describe("what is typed", () => {
  test("temperatures in °C and °F", () => {
    expect(yesRead(readCelsius("24"))).toBe(24);
    expect(yesRead(readCelsius("-5,5 °C"))).toBe(-5.5);
    expect(yesRead(readCelsius("60 °F"))).toBeCloseTo(15.5556, 4);
    for (const text of ["", "warm", "60", "200 F", "-21", "24 K"]) expect(readCelsius(text).ok).toBe(false);
    expect(readCelsius("warm")).toMatchObject({
      wrong: 'temperature requires -20 to 40 °C, or the same in °F, got "warm"',
    });
  });
  test("grams, strengths, volumes and plain numbers, each with what was wrong", () => {
    expect(yesRead(readGrams("94,8"))).toBe(94.8);
    expect(yesRead(readGrams("0.4 kg"))).toBe(400);
    expect(yesRead(readGrams("0", true))).toBe(0);
    for (const text of ["", "-3", "0", "94 mL", "1,000 g"]) expect(readGrams(text).ok).toBe(false);
    expect(yesRead(readStrengthOf("80 proof"))).toBeCloseTo(40.0685, 3);
    expect(readStrengthOf("104%").ok).toBe(false);
    expect(readVolumeOf("0").ok).toBe(false);
    expect(yesRead(readVolumeOf("70 cl"))).toBe(700);
    const days = { name: "days", unit: "days", low: 1, high: 60 };
    expect(yesRead(readNumber("3 days", days))).toBe(3);
    expect(readNumber("0", days)).toMatchObject({ wrong: 'days requires 1 to 60 days, got "0"' });
    expect(readNumber("", days)).toMatchObject({ wrong: "days requires 1 to 60 days, got nothing" });
  });
  test("frozen mixtures are a no, not a fault", () => {
    const no = reckonWeigh({ amount: { ml: 100 }, abv20: 5, celsius: -15, inAir: true, tools });
    expect(no).toMatchObject({ ok: false });
  });
  test("tools that this device kept, and rubbish", () => {
    expect(asTools(JSON.stringify({ ...tools, scale: "kitchen" })).scale).toBe("kitchen");
    for (const text of [null, "null", "[", "3", '{"scale":"toString","label":4}'])
      expect(asTools(text)).toEqual(tools);
  });
});

test("a result is carried in an address and read back; a broken address carries nothing", () => {
  const carried = {
    parts: [
      { parts: 2, abv20: 62.4 },
      { parts: 1, abv20: 46 },
    ],
    waterTo: 50,
    finalMl: 700,
  };
  expect(carriedText(carried)).toBe("parts=2@62.4,1@46&water=50&ml=700");
  expect(carriedFrom(new URLSearchParams(carriedText(carried)))).toEqual(carried);
  for (const text of ["", "parts=", "parts=2@", "parts=2@104", "parts=x@46", "parts=2@62.4,oops"]) {
    expect(carriedFrom(new URLSearchParams(text))).toBeNull();
  }
});

test("amounts become small whole parts", () => {
  expect(wholeParts([500, 250])).toEqual({ parts: [2, 1], off: 0 });
  expect(wholeParts([270, 100]).parts).toEqual([8, 3]);
  expect(wholeParts([1000, 1]).parts[1]).toBe(1);
  expect(wholeParts([0, 0])).toEqual({ parts: [0, 0], off: 0 });
});
