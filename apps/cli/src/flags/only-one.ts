import { issueAt, refuse } from "./bad-input.ts";

/**
 * Which one of several flags was typed.
 *
 * @param given what was read of each, by the flag's name; undefined where it was not typed
 * @param missingAt where a missing one is told; the first flag unless given
 * @throws BadInput `flag_missing` at the first, or `flags_exclude` at the second that was typed.
 */
export function onlyOne<K extends string>(
  given: Readonly<Record<K, unknown>>,
  missingAt?: readonly string[],
): K {
  const names = Object.keys(given) as K[];
  const typed = names.filter((name) => given[name] !== undefined);
  const [only, second] = typed;
  const limit = `one of ${names.map((name) => `--${name}`).join(", ")}`;
  if (only === undefined) refuse(issueAt(missingAt ?? [names[0] ?? ""], "flag_missing", limit, null));
  if (second !== undefined) {
    refuse(issueAt([second], "flags_exclude", `no --${only} beside it`, given[second]));
  }
  return only;
}
