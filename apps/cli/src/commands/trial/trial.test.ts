import { createClient } from "@partsproof/house/protocol";
import { openReckoner } from "@partsproof/house/reckoner";
import { expect, test } from "vitest";
import { runProgram } from "../../program.ts";

const client = createClient(openReckoner(), "http://reckoner.test");

test("the command gives to the last digit what the API gives", async () => {
  const { code, stdout, stderr } = await runProgram(
    [
      "trial",
      "plan",
      "--part=Malt@62.4:0.2-0.6",
      "--part=Rye@100 proof:0.1-0.6",
      "--part=Wheat@58:0.1-0.5",
      "--plan=D",
      "--trials=7",
      "--known=0.4,0.3,0.3",
      "--scale=0.1 g",
      "--json",
    ],
    {},
  );
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  expect(JSON.parse(stdout)).toEqual(
    await client("planTrials", {
      body: {
        parts: [
          { name: "Malt", strength: { basis: "abv20", value: 62.4 }, low: 0.2, high: 0.6 },
          { name: "Rye", strength: { basis: "proof60F", value: 100 }, low: 0.1, high: 0.6 },
          { name: "Wheat", strength: { basis: "abv20", value: 58 }, low: 0.1, high: 0.5 },
        ],
        plan: "D",
        trials: 7,
        known: [[0.4, 0.3, 0.3]],
        scaleG: 0.1,
      },
    }),
  );
});

test("what was typed is named in the refusal", async () => {
  for (const [argv, flag] of [
    [["--plan=D"], "part"],
    [["--part=Malt:0.5", "--part=Rye", "--plan=D"], "part"],
    [["--part=Malt", "--part=Rye", "--plan=D", "--scale=0.1"], "scale"],
    [["--part=Malt", "--part=Rye", "--plan=D", "--trials=1"], "trials"],
  ] as const) {
    const { code, stderr } = await runProgram(["trial", "plan", ...argv, "--json"], {});
    expect({ argv, code }).toEqual({ argv, code: 2 });
    expect((JSON.parse(stderr) as { issues: { path: string[] }[] }).issues[0]?.path[0]).toBe(flag);
  }
});
