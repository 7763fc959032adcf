import { issueAt, nearest, refuse } from "../flags/index.ts";
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
    if (group.length > 0) unknown(words.slice(0, count + 1).join(" "), group, commands);
  }
  if (words.length === 0) return { kind: "group", name: "", commands };
  return unknown(words[0] ?? "", commands, commands);
}

function unknown(typed: string, group: readonly Command[], commands: readonly Command[]): never {
  const names = commands.map(({ name }) => name);
  const near = nearestCommand(typed, names);
  const known = typed.split(" ").length;
  const next = group.map(({ name }) => name.split(" ").slice(0, known).join(" "));
  const limit = `one of ${[...new Set(next)].join(", ")}`;
  const message = `command requires a word the program knows, got "${typed}"; nearest: ${near}`;
  refuse({ ...issueAt(["command"], "unknown_command", limit, typed), message });
}

/** By the whole name; or, for "pour" meaning "shelf pour", by its last word where that is as it was typed. */
function nearestCommand(typed: string, names: readonly string[]): string {
  const last = typed.split(" ").at(-1) ?? "";
  const byLast = names.find((name) => name.split(" ").length > 1 && name.endsWith(` ${last}`));
  return typed.includes(" ") || byLast === undefined ? (nearest(typed, names) ?? "") : byLast;
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
