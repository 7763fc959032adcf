import { type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runProgram } from "../../program.ts";

let house: TemporaryHouse;
beforeAll(async () => {
  house = await temporaryHouse("sqlite");
});
afterAll(() => house.close());

async function json(argv: readonly string[]): Promise<unknown> {
  const { code, stdout, stderr } = await runProgram([...argv, "--json"], {});
  if (code !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

const strength = fc.oneof(
  fc.integer({ min: 0, max: 1000 }).map((x) => ({ basis: "abv20" as const, value: x / 10 })),
  fc.integer({ min: 0, max: 2000 }).map((x) => ({ basis: "proof60F" as const, value: x / 10 })),
);
const typed = ({ basis, value }: { basis: "abv20" | "proof60F"; value: number }): string =>
  basis === "abv20" ? String(value) : `${value} proof`;
const volumeMl = fc.integer({ min: 1, max: 100_000 });

test("mix gives to the last digit what the API gives", async () => {
  const part = fc.record({ parts: fc.integer({ min: 1, max: 99 }), strength });
  const parts = fc.array(part, { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(parts, volumeMl, async (parts, volumeMl) => {
      const flags = parts.flatMap((p) => ["--part", `${p.parts}@${typed(p.strength)}`]);
      const ours = await json(["mix", ...flags, "--volume", `${volumeMl}ml`]);
      expect(ours).toEqual(await house.client("reckonMix", { body: { parts, volumeMl } }));
    }),
    { numRuns: 60 },
  );
});

test("reduce gives to the last digit what the API gives, or refuses by the same word", async () => {
  await fc.assert(
    fc.asyncProperty(strength, strength, volumeMl, fc.boolean(), async (from, to, ml, fill) => {
      const argv = [
        "reduce",
        "--from",
        typed(from),
        "--to",
        typed(to),
        fill ? "--fill" : "--volume",
        `${ml}ml`,
      ];
      const body = fill ? { from, to, fillMl: ml } : { from, to, volumeMl: ml };
      const theirs = await house.client("reckonReduce", { body }).catch((e: unknown) => codes(e));
      const ours = await json(argv).catch((e: unknown) => codes(e));
      expect(ours).toEqual(theirs);
    }),
    { numRuns: 60 },
  );
});

test("density and convert give to the last digit what the API gives", async () => {
  await fc.assert(
    fc.asyncProperty(fc.double({ min: 0, max: 1, noNaN: true }), async (x) => {
      const body = { massFraction: x, celsius: 40 * x };
      const argv = ["--mass-fraction", String(x), "--celsius", String(40 * x)];
      expect(await json(["density", ...argv])).toEqual(await house.client("reckonDensity", { body }));
      const theirs = await house.client("reckonConvert", { body: { massPercent: 100 * x } });
      expect(await json(["convert", "--mass-percent", String(100 * x)])).toEqual(theirs);
    }),
    { numRuns: 60 },
  );
  expect(await json(["convert", "--abv", "40"])).toEqual(
    await house.client("reckonConvert", { body: { abv20: 40 } }),
  );
  expect(await json(["convert", "--proof", "80"])).toEqual(
    await house.client("reckonConvert", { body: { proof60F: 80 } }),
  );
});

test("gauge, weigh and their like give to the last digit what the API gives, uncertainty too", async () => {
  const whole = fc.integer({ min: 20, max: 60 });
  await fc.assert(
    fc.asyncProperty(whole, fc.integer({ min: 0, max: 40 }), whole, async (x, t, y) => {
      const asked = async (
        argv: readonly string[],
        name: Parameters<typeof house.client>[0],
        body: object,
      ) => {
        const theirs = await house.client(name, { body: body as never }).catch((e: unknown) => codes(e));
        expect(await json(argv).catch((e: unknown) => codes(e))).toEqual(theirs);
      };
      const [celsius, abv] = [`--celsius=${t}`, { basis: "abv20", value: x }];
      await asked(["gauge", `--reading-abv=${x}`, celsius, "--solids=300", "--uncertainty"], "reckonGauge", {
        reading: { scale: "abv20", value: x },
        celsius: t,
        solidsMgPer100Ml: 300,
        uncertainty: {},
      });
      await asked(["weigh", `--ml=${y}`, `--abv=${x}`, celsius, "--in-air", "--cylinder=A"], "reckonWeigh", {
        strength: abv,
        ml: y,
        celsius: t,
        inAir: true,
        uncertainty: { cylinder: "A" },
      });
      await asked(["sample", `--grams=${y}`, `--ml=${1.05 * y}`, celsius, "--scale=fine"], "reckonSample", {
        grams: y,
        ml: 1.05 * y,
        celsius: t,
        uncertainty: { scale: "fine" },
      });
      await asked(
        [
          "reduce",
          `--from=${x}`,
          "--to=30",
          `--volume=${y}ml`,
          celsius,
          "--with=10",
          "--uncertainty",
          "--steps=2",
        ],
        "reckonReduce",
        {
          from: abv,
          to: { basis: "abv20", value: 30 },
          volumeMl: y,
          celsius: t,
          add: [{ basis: "abv20", value: 10 }],
          uncertainty: {},
          steps: 2,
        },
      );
      await asked(
        [
          "weigh-out",
          `--part=2@${x}`,
          "--part=1@45",
          "--fill=100ml",
          `--poured=1=${y}`,
          "--vessel=100ml",
          "--to=20",
        ],
        "reckonWeighOut",
        {
          parts: [
            { parts: 2, strength: abv, pouredG: y },
            { parts: 1, strength: { basis: "abv20", value: 45 } },
          ],
          fillMl: 100,
          vesselMl: 100,
          to: { basis: "abv20", value: 20 },
        },
      );
      await asked(
        ["lift", `--from=${x}`, `--volume=${y}ml`, "--to=50", "--with=60", "--room=1l"],
        "reckonLift",
        {
          from: abv,
          volumeMl: y,
          to: { basis: "abv20", value: 50 },
          with: [{ basis: "abv20", value: 60 }],
          roomMl: 1000,
        },
      );
      await asked(["fill", `--held=${y}ml@${x}`, "--with=40", "--vessel=50ml"], "reckonFill", {
        held: { volumeMl: y, strength: abv },
        with: { basis: "abv20", value: 40 },
        vesselMl: 50,
      });
      await asked(
        ["evaporated", `--before=60ml@${x}`, `--after=${y}ml@${x}`, `--celsius-after=${t}`, "--syringe=60ml"],
        "reckonEvaporated",
        {
          before: { volumeMl: 60, strength: abv },
          after: { volumeMl: y, strength: abv, celsius: t },
          uncertainty: { syringeMl: 60 },
        },
      );
      await asked(["temperature", `--abv=${x}`, `--density=${950 + t}`], "reckonTemperature", {
        strength: abv,
        kgPerM3: 950 + t,
      });
      await asked(["convert", `--abv=${x}`, `--volume=${y}ml`], "reckonConvert", { abv20: x, volumeMl: y });
      await asked(
        ["mix", `--part=1@${x}`, "--part=1@40", `--volume=${y}ml`, celsius, "--scale=pocket"],
        "reckonMix",
        {
          parts: [
            { parts: 1, strength: abv },
            { parts: 1, strength: { basis: "abv20", value: 40 } },
          ],
          volumeMl: y,
          celsius: t,
          uncertainty: { scale: "pocket" },
        },
      );
    }),
    { numRuns: 25 },
  );
});

/** The codes of a refusal, whichever side told it. */
function codes(error: unknown): readonly string[] {
  const text = error instanceof Error && "issues" in error ? JSON.stringify(error) : (error as Error).message;
  return (JSON.parse(text) as { issues: { code: string }[] }).issues.map(({ code }) => code);
}
