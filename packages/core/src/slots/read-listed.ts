import { readNames } from "./read-names.ts";
import { WOOD_ENDS } from "./reserved.data.ts";
import type { Condition } from "./rule.ts";
import type { TokenReader } from "./token-reader.ts";

/** "only American oak", "no rye", "some casks that held port", "only wood acacia". */
export function readListed(reader: TokenReader): Condition {
  const how = reader.oneOf("only", "no", "some");
  if (reader.takeIf("casks")) {
    reader.need("that", "held");
    return { about: "listed", what: "held", how, names: readNames(reader, "what the casks held").names };
  }
  if (reader.takeIf("wood"))
    return { about: "listed", what: "wood", how, names: readNames(reader, "a wood").names };
  if (reader.takeIf("grain"))
    return { about: "listed", what: "grain", how, names: readNames(reader, "a grain").names };
  const { names } = readNames(reader, "a wood, a grain or casks that held something");
  const woods = names.filter(endsInOak).length;
  // "only American oak or rye" could mean either; it says neither.
  if (woods > 0 && woods < names.length) return reader.fail("woods alone or grains alone before this");
  return { about: "listed", what: woods > 0 ? "wood" : "grain", how, names };
}

export const endsInOak = (name: string): boolean => name.toLowerCase().split(" ").at(-1) === WOOD_ENDS;
