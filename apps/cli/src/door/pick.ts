import { issueAt, nearest, refuse } from "../flags/index.ts";

/** How a thing can be called besides its id. The first name is the one that is shown. */
export interface Named {
  readonly id: string;
  readonly names: readonly [string, ...string[]];
}

/** More than this many candidates are not read by anybody. */
const SHOWN = 12;

/**
 * The one thing a text means: by its whole id, else by an exact name (case and spacing aside), else by a beginning of
 * its id that no other has.
 *
 * @throws BadInput `unknown_…` or `ambiguous_…`, with the candidates.
 */
export function pick<T extends Named>(
  what: string,
  text: string,
  things: readonly T[],
  path: readonly (string | number)[],
): T {
  const matches = matching(text, things);
  const [only] = matches;
  if (only !== undefined && matches.length === 1) return only;
  const word = what.replaceAll(" ", "_");
  if (matches.length > 1) {
    const limit = `an id or name that only one ${what} has: ${listed(matches)}`;
    refuse(issueAt(path, `ambiguous_${word}`, limit, text));
  }
  const limit = `the id, a beginning of the id or the exact name of a ${what}: ${listed(things)}`;
  const names = things.flatMap((thing) => thing.names);
  const near = names.find((name) => plain(name).includes(plain(text))) ?? nearest(text, names);
  refuse(issueAt(path, `unknown_${word}`, limit, text, near === null ? "" : `; nearest: "${near}"`));
}

/** What a text could mean: none, one or several. */
export function matching<T extends Named>(text: string, things: readonly T[]): readonly T[] {
  const typed = plain(text);
  if (typed === "") return [];
  const whole = things.filter(({ id }) => id === typed);
  if (whole.length > 0) return whole;
  const byName = things.filter(({ names }) => names.some((name) => plain(name) === typed));
  return byName.length > 0 ? byName : things.filter(({ id }) => id.startsWith(typed));
}

const plain = (text: string): string => text.trim().replace(/\s+/g, " ").normalize("NFC").toLowerCase();

function listed(things: readonly Named[]): string {
  if (things.length === 0) return "there is none yet";
  const lines = things.slice(0, SHOWN).map(({ id, names }) => `${names[0]} (${id})`);
  const more = things.length - lines.length;
  return lines.join(", ") + (more > 0 ? ` and ${more} more` : "");
}
