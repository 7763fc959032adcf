import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { type BodyOf, createClient } from "@partsproof/house/protocol";
import { openReckoner } from "@partsproof/house/reckoner";
import { expect, test } from "vitest";
import { root } from "../../fixtures/cli.ts";
import { runProgram } from "../../program.ts";

const client = createClient(openReckoner(), "http://reckoner.test");

async function json(...argv: readonly string[]): Promise<unknown> {
  const { code, stdout, stderr } = await runProgram([...argv, "--json"], {});
  if (code !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

test("the command gives to the last digit what the API gives", async () => {
  expect(await json("oak", "--area", "66cm2", "--grams", "10.9", "--volume", "750ml")).toEqual(
    await client("oakDose", { body: { areaCm2: 66, grams: 10.9, volumeMl: 750 } }),
  );
  expect(await json("oak", "--piece=cube=10mm", "--count=12", "--volume=70cl")).toEqual(
    await client("oakDose", { body: { piece: { shape: "cube", cm: [1, 1, 1] }, count: 12, volumeMl: 700 } }),
  );
  expect(await json("oak", "--piece", "chips=2x10x10mm", "--grams=3.4", "--volume=750")).toEqual(
    await client("oakDose", {
      body: { piece: { shape: "chips", cm: [0.2, 1, 1], grams: 3.4 }, volumeMl: 750 },
    }),
  );
});

test("what was typed is named in the refusal", async () => {
  for (const [argv, flag] of [
    [["--volume=750"], "area"],
    [["--area=66 cm", "--volume=750"], "area"],
    [["--piece=stick=10x10", "--volume=750"], "piece"],
    [["--piece=chips=2x10x10mm", "--volume=750"], "grams"],
    [["--piece=spiral=25x30x3x8x100mm", "--volume=750"], "piece"],
    [["--area=66cm2", "--volume=0"], "volume"],
  ] as const) {
    const { code, stderr } = await runProgram(["oak", ...argv, "--json"], {});
    expect({ argv, code }).toEqual({ argv, code: 2 });
    expect((JSON.parse(stderr) as { issues: { path: string[] }[] }).issues[0]?.path[0]).toBe(flag);
  }
});

test("rest reads the file and gives what the API gives; --today over it", async () => {
  const file = join(root, "examples", "saltreach-rest.json");
  const body = JSON.parse(await readFile(file, "utf8")) as NonNullable<BodyOf<"rest">>;
  expect(await json("rest", "--file", file)).toEqual(await client("rest", { body }));
  expect(await json("rest", "--file", file, "--today", "20")).toEqual(
    await client("rest", { body: { ...body, today: 20 } }),
  );
});
