import { RULE_LIMITS } from "./rule.ts";
import type { TokenReader } from "./token-reader.ts";

/** "A or B or C", and whether one of them stands in quotes. */
export function readNames(
  reader: TokenReader,
  what: string,
): { readonly names: readonly string[]; readonly quoted: boolean } {
  const names: string[] = [];
  let quoted = false;
  do {
    if (names.length === RULE_LIMITS.names)
      reader.fail(`at most ${RULE_LIMITS.names} names`, "rule_out_of_bounds");
    const read = reader.name(what);
    names.push(read.name);
    quoted ||= read.quoted;
  } while (reader.takeIf("or"));
  return { names, quoted };
}
