import { edits, issueAt, refuse } from "../flags/index.ts";
import type { Command } from "./command.ts";

export type Found =
  | { readonly kind: "command"; readonly command: Command; readonly rest: readonly string[] }
  /** Words that only begin a command: "shelf". */
  | { readonly kind: "group"; readonly name: string; readonly commands: readonly Command[] };

/**
 * The command the first words name; the longest where one begins another. Flags may stand before it.
 *
 * @throws BadInput `unknown_command`, with the nearest one.
 */
export function findCommand(commands: readonly Command[], argv: readonly string[]): Found {
  const { words, before, after } = split(argv);
  for (let count = words.length; count > 0; count--) {
    const name = words.slice(0, count).join(" ");
    const command = commands.find((c) => c.name === name);
    if (command) return { kind: "command", command, rest: [...before, ...words.slice(count), ...after] };
    const group = commands.filter((c) => c.name.startsWith(`${name} `));
    if (group.length > 0 && count === words.length) return { kind: "group", name, commands: group };
    if (group.length > 0) unknown(words, count + 1, group, commands);
  }
  if (words.length === 0) return { kind: "group", name: "", commands };
  return unknown(words, 1, commands, commands);
}

/** The words up to `count` name nothing, and those before them name `group`. */
function unknown(
  words: readonly string[],
  count: number,
  group: readonly Command[],
  all: readonly Command[],
): never {
  const typed = words.slice(0, count).join(" ");
  const next = group.map(({ name }) => name.split(" ").slice(0, count).join(" "));
  const near = nearestCommand(words, count, all);
  const limit = `one of ${[...new Set(next)].join(", ")}`;
  const message = `command requires a word the program knows, got "${typed}"; nearest: ${near}`;
  refuse({ ...issueAt(["command"], "unknown_command", limit, typed), message });
}

/**
 * By the whole name, with the words that follow counted in or not; or by its last word alone: "pour" is nearer to
 * "shelf pour" than to "next".
 */
function nearestCommand(words: readonly string[], count: number, all: readonly Command[]): string {
  const typed = [0, 1, 2].map((more) => words.slice(0, count + more).join(" "));
  const away = (name: string): number =>
    Math.min(
      ...typed.map((text) => edits(text, name)),
      edits(typed[0] ?? "", name.split(" ").at(-1) ?? name) + 1,
    );
  const names = all.map(({ name }) => name);
  return names.toSorted((a, b) => away(a) - away(b))[0] ?? "";
}

/** Flags that take a value and may stand before the command. */
const BEFORE = new Set(["--data", "--house", "--household", "--token"]);

function split(argv: readonly string[]): {
  readonly before: readonly string[];
  readonly words: readonly string[];
  readonly after: readonly string[];
} {
  let first = 0;
  while (argv[first]?.startsWith("-")) first += BEFORE.has(argv[first] ?? "") ? 2 : 1;
  const before = argv.slice(0, first);
  const rest = argv.slice(first);
  const end = rest.findIndex((word) => word.startsWith("-"));
  return {
    before,
    words: end < 0 ? rest : rest.slice(0, end),
    after: end < 0 ? [] : rest.slice(end),
  };
}
