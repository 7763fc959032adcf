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

/** The codes of a refusal, whichever side told it. */
function codes(error: unknown): readonly string[] {
  const text = error instanceof Error && "issues" in error ? JSON.stringify(error) : (error as Error).message;
  return (JSON.parse(text) as { issues: { code: string }[] }).issues.map(({ code }) => code);
}
