import { expect, test } from "vitest";
import { words } from "../fixtures/words.ts";
import { parseFlags } from "../flags/index.ts";
import { runProgram } from "../program.ts";
import { findCommand } from "./find-command.ts";
import { commands } from "./index.ts";

test.each(commands.map((command) => [command.name, command] as const))(
  "%s: its help has an example, and the example is a command line it reads",
  async (name, command) => {
    const { code, stdout, stderr } = await runProgram([...name.split(" "), "--help"], {});
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toContain(`Usage: partsproof ${name}`);
    expect(stdout).toContain(`Example: partsproof ${command.example}`);
    expect(stdout).toContain("--json");
    const found = findCommand(commands, words(command.example));
    if (found.kind !== "command") throw new Error(`${command.example} names no command`);
    expect(found.command.name).toBe(name);
    const wanted = {
      args: Object.keys(command.args),
      maybe: Object.keys(command.maybe),
      flags: command.flags,
    };
    expect(() => parseFlags(wanted, found.rest, {})).not.toThrow();
  },
);

test("no two commands share a name", () => {
  expect(new Set(commands.map(({ name }) => name)).size).toBe(commands.length);
});

test("alone, the program says what there is", async () => {
  const { code, stdout } = await runProgram([], {});
  expect(code).toBe(0);
  for (const { name } of commands) expect(stdout).toContain(`  ${name} `);
});

test("a group without its second word says which there are", async () => {
  const { code, stdout, stderr } = await runProgram(["shelf"], {});
  expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
  expect(stderr).toContain("command_missing");
  expect(stderr).toContain("shelf pour");
  const help = await runProgram(["shelf", "--help"], {});
  expect(help.code).toBe(0);
  expect(help.stdout).toContain("shelf pour");
  expect(help.stdout).not.toContain("flight");
});

test.each([
  ["mxi", "mix"],
  ["densty", "density"],
  ["pour", "shelf pour"],
  ["shelf lst", "shelf list"],
  ["flight sheet shwo", "flight sheet show"],
  ["recip add", "recipe add"],
])("%s is no command; the nearest is %s", async (typed, near) => {
  const { code, stdout, stderr } = await runProgram([...typed.split(" "), "--json"], {});
  expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
  const { issues } = JSON.parse(stderr) as { issues: { code: string; path: string[]; message: string }[] };
  expect(issues).toHaveLength(1);
  expect(issues[0]).toMatchObject({ code: "unknown_command", path: ["command"] });
  expect(issues[0]?.message).toMatch(new RegExp(`nearest: ${near}$`));
});

test("flags may stand before the command", async () => {
  const { code, stdout } = await runProgram(
    ["--json", "density", "--celsius", "20", "--mass-fraction", "1"],
    {},
  );
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toHaveProperty("kgPerM3");
});
