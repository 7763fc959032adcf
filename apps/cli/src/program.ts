import type { Issue } from "@partsproof/house/protocol";
import { Refusal } from "@partsproof/house/protocol";
import { type Answer, commands, type OpenHouse } from "./commands/index.ts";
import { findCommand } from "./commands/find-command.ts";
import { NotReached, openDoor, type OpenedDoor } from "./door/index.ts";
import { BadInput, issueAt, parseFlags } from "./flags/index.ts";
import { printCommands, printHelp } from "./print/help.ts";
import { printIssues, printIssuesJson } from "./print/issues.ts";
import { printJson } from "./print/json.ts";

/** What a run comes to. Nothing is written and nothing ends before `main.ts` does it. */
export interface Outcome {
  /** 0 done; 2 what was asked cannot be; 1 the house was not reached, or a bug. */
  readonly code: 0 | 1 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

const asked = (argv: readonly string[], ...flags: readonly string[]): boolean => {
  const end = argv.indexOf("--");
  return (end < 0 ? argv : argv.slice(0, end)).some((word) => flags.includes(word));
};

/** Runs one command line. Never throws. */
export async function runProgram(argv: readonly string[], env: NodeJS.ProcessEnv): Promise<Outcome> {
  try {
    return await run(argv, env);
  } catch (error) {
    const { code, issues, more } = failure(error);
    const text = asked(argv, "--json") ? printIssuesJson(issues) : printIssues(issues) + more;
    return { code, stdout: "", stderr: text };
  }
}

async function run(argv: readonly string[], env: NodeJS.ProcessEnv): Promise<Outcome> {
  const help = asked(argv, "--help", "-h");
  const found = findCommand(
    commands,
    argv.filter((word) => word !== "-h"),
  );
  if (found.kind === "group") {
    const text = printCommands(found.name, found.commands);
    // "partsproof" alone asks what there is; "partsproof shelf" forgot a word.
    if (help || found.name === "") return { code: 0, stdout: text, stderr: "" };
    const limit = `one of ${found.commands.map(({ name }) => name).join(", ")}`;
    throw new BadInput([issueAt(["command"], "command_missing", limit, found.name)]);
  }
  const { command, rest } = found;
  if (help) return { code: 0, stdout: printHelp(command), stderr: "" };
  const given = parseFlags(
    { args: Object.keys(command.args), maybe: Object.keys(command.maybe), flags: command.flags },
    rest,
    env,
  );
  const answer = await withHouse(env, (open) => command.run(given, open));
  return {
    code: 0,
    stdout: given.flags["json"] === true ? printJson(answer.json) : answer.text(),
    stderr: (answer.notes ?? []).join("\n"),
  };
}

/** Lets a command open the house, and closes it after, whatever happened. */
async function withHouse(
  env: NodeJS.ProcessEnv,
  work: (open: OpenHouse) => Promise<Answer>,
): Promise<Answer> {
  const opened: OpenedDoor[] = [];
  try {
    return await work(async (which) => {
      const door = await openDoor(which, env);
      opened.push(door);
      return door;
    });
  } finally {
    for (const door of opened) await door.close();
  }
}

function failure(error: unknown): { code: 1 | 2; issues: readonly Issue[]; more: string } {
  if (error instanceof BadInput) return { code: 2, issues: error.issues, more: "" };
  if (error instanceof NotReached) return { code: 1, issues: [error.issue], more: "" };
  if (error instanceof Refusal) {
    const asHouse = error.issues.some(({ code }) => code === "not_the_house" || code === "house_failed");
    return { code: asHouse || error.status >= 500 ? 1 : 2, issues: error.issues, more: "" };
  }
  const why = error instanceof Error ? error.message : String(error);
  const issue = issueAt([], "program_failed", "no failure of the program itself", why);
  return { code: 1, issues: [issue], more: `\n${error instanceof Error ? (error.stack ?? "") : ""}` };
}
