import { parseArgs } from "node:util";
import type { Issue } from "@partsproof/house/protocol";
import { BadInput, issueAt } from "./bad-input.ts";
import type { Flag, Flags } from "./flag.ts";
import { nearest } from "./nearest.ts";

export interface Wanted {
  /** Arguments without a dash, in order: those that must be there, then those that may. */
  readonly args: readonly string[];
  readonly maybe: readonly string[];
  readonly flags: Flags;
}

export interface Parsed {
  readonly args: Readonly<Record<string, string>>;
  readonly flags: Readonly<Record<string, unknown>>;
}

interface Typed {
  readonly positionals: readonly string[];
  /** Values of each known flag, as typed; null for one without a value. */
  readonly values: ReadonlyMap<string, readonly (string | null)[]>;
}

/**
 * Reads what stands after a command. All that is wrong is told together.
 *
 * @throws BadInput with an issue for each unknown, repeated, missing or unreadable flag and argument.
 */
export function parseFlags(wanted: Wanted, argv: readonly string[], env: NodeJS.ProcessEnv): Parsed {
  const issues: Issue[] = [];
  const typed = split(wanted, argv, issues);
  const args = nameArguments(wanted, typed.positionals, issues);
  const flags: Record<string, unknown> = {};
  for (const [name, flag] of Object.entries(wanted.flags)) {
    flags[name] = readFlag(name, flag, typed.values.get(name) ?? [], env, issues);
  }
  if (issues.length > 0) throw new BadInput(issues);
  return { args, flags };
}

function split({ flags }: Wanted, argv: readonly string[], issues: Issue[]): Typed {
  const options = Object.fromEntries(
    Object.entries(flags).map(([name, { takes }]) => [
      name,
      takes === "nothing" ? { type: "boolean" as const } : { type: "string" as const, multiple: true },
    ]),
  );
  const { tokens } = parseArgs({ args: [...argv], options, strict: false, tokens: true });
  const positionals: string[] = [];
  const values = new Map<string, (string | null)[]>();
  for (const token of tokens) {
    if (token.kind === "positional") positionals.push(token.value);
    if (token.kind !== "option") continue;
    const flag = Object.hasOwn(flags, token.name) ? flags[token.name] : undefined;
    if (flag === undefined) {
      issues.push(unknownFlag(token.rawName, Object.keys(flags)));
    } else if (flag.takes === "nothing" && token.value !== undefined) {
      issues.push(issueAt([token.name], "flag_takes_nothing", "no value", token.value));
    } else if (flag.takes !== "nothing" && isMissing(token.value, token.inlineValue)) {
      issues.push(issueAt([token.name], "flag_value_missing", `a value, ${flag.hint}`, token.value ?? null));
    } else {
      values.set(token.name, [...(values.get(token.name) ?? []), token.value ?? null]);
    }
  }
  return { positionals, values };
}

/** In `--volume --json` the value was forgotten; whoever means it writes `--note=--json`. */
const isMissing = (value: string | undefined, inline: boolean | undefined): boolean =>
  value === undefined || (inline !== true && value.startsWith("--"));

function unknownFlag(rawName: string, names: readonly string[]): Issue {
  const known = names.map((name) => `--${name}`);
  const near = nearest(rawName, known) ?? "none";
  return {
    ...issueAt([rawName.replace(/^-+/, "")], "unknown_flag", `one of ${known.join(", ")}`, rawName),
    message: `flag requires a name this command knows, got "${rawName}"; nearest: ${near}`,
  };
}

function nameArguments(
  { args, maybe }: Wanted,
  positionals: readonly string[],
  issues: Issue[],
): Record<string, string> {
  const names = [...args, ...maybe];
  const given: Record<string, string> = {};
  for (const [index, name] of names.entries()) {
    const value = positionals[index];
    if (value !== undefined) given[name] = value;
    else if (index < args.length) issues.push(issueAt([name], "argument_missing", `<${name}>`, null));
  }
  // After an unknown flag its value stands alone and is no fault of its own.
  if (!issues.some(({ code }) => code === "unknown_flag")) {
    for (const extra of positionals.slice(names.length)) {
      const limit = names.length === 0 ? "no arguments besides flags" : names.map((n) => `<${n}>`).join(" ");
      issues.push(issueAt([], "argument_not_expected", limit, extra));
    }
  }
  return given;
}

function readFlag(
  name: string,
  flag: Flag,
  typed: readonly (string | null)[],
  env: NodeJS.ProcessEnv,
  issues: Issue[],
): unknown {
  if (flag.takes === "nothing") return typed.length > 0;
  const fallback = flag.takes === "one" && flag.env !== undefined ? env[flag.env] : undefined;
  const texts = typed.length === 0 && fallback !== undefined && fallback !== "" ? [fallback] : typed;
  // A flag whose value was missing has its own issue already.
  const told = issues.some(({ path }) => path[0] === name);
  if (flag.needed && texts.length === 0 && !told) {
    issues.push(issueAt([name], "flag_missing", `--${name} ${flag.hint}`, null));
  }
  if (flag.takes === "one" && texts.length > 1) {
    issues.push(issueAt([name], "flag_repeated", "to be given once", texts.length, " times"));
  }
  const values = texts.flatMap((text, index) => {
    const reading = flag.read(text ?? "");
    if (reading.ok) return [reading.value];
    issues.push({ ...reading.issue, path: flag.takes === "many" ? [name, index] : [name] });
    return [];
  });
  return flag.takes === "many" ? values : values[0];
}
