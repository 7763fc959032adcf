import type { Cask, GrainShare, WhiskeyDraft, WoodSpecies } from "../../protocol/index.ts";
import { type Cell, is, not, plainNumber } from "./cell.ts";

type Kind = WhiskeyDraft["kind"];
const KINDS: readonly (readonly [RegExp, Kind])[] = [
  [/pot still/iu, "pot still"],
  [/blend/iu, "blend"],
  [/bourbon/iu, "bourbon"],
  [/malt/iu, "malt"],
  [/\brye\b|roggen/iu, "rye"],
  [/wheat|weizen/iu, "wheat"],
  [/corn|mais/iu, "corn"],
  [/grain|getreide|korn/iu, "grain"],
];

export function readKind(text: string): Cell<Kind> {
  const found = KINDS.find(([words]) => words.test(text))?.[1] ?? "other";
  return is(found, found === text.trim().toLowerCase() ? undefined : found);
}

export function readAge(text: string): Cell<number | null> {
  const said = /^([\d.,]+)\s*(?:y(?:ea)?rs?\.?(?: old)?|yo|y|jahre?|j|ans?|años|\+)?$/iu.exec(text.trim());
  const years = said === null ? null : plainNumber(said[1]!);
  if (years === null) return not("age_unreadable", "an age in years such as 12 or 12.5 years");
  return years >= 0 && years <= 120 ? is(years) : not("age_out_of_range", "0 to 120 years");
}

export function readCount(text: string, most: number): Cell<number> {
  const found = /^(\d{1,4})(?:[.,]0+)?\s*(?:x|bottles?|stk\.?|flaschen)?$/iu.exec(text.trim());
  const count = Number(found?.[1]);
  return found && count <= most ? is(count) : not("count_unreadable", `0 to ${most} bottles`);
}

export function readAvailability(text: string): Cell<"sold" | "gone"> {
  const gone = /gone|discontinued|sold ?out|^no?$|^false$|vergriffen|ausverkauft|épuisé|closed/iu.test(
    text.trim(),
  );
  const still = /sold|yes|^y$|true|available|current|core|ja|erhältlich|in stock|open/iu.test(text.trim());
  if (gone) return is("gone", "gone");
  return still ? is("sold") : not("availability_unreadable", "sold or gone");
}

const SPECIES: readonly (readonly [RegExp, WoodSpecies])[] = [
  [/american oak|us oak|quercus alba/iu, "American oak"],
  [/european oak|french oak|spanish oak/iu, "European oak"],
  [/japanese oak|mizunara/iu, "Japanese oak"],
];

/** "bourbon; European oak sherry": each cask by what it held, its wood only where it is said. */
export function readCasks(text: string): Cell<Cask[]> {
  const casks = text
    .split(/[;,/+&\n]/u)
    .map((one) =>
      one
        .replaceAll(/\b(?:ex|casks?|barrels?|butts?|hogsheads?)\b-?/giu, " ")
        .replaceAll(/\s+/gu, " ")
        .trim(),
    )
    .filter((one) => one !== "")
    .map((one): Cask => {
      const wood = SPECIES.find(([words]) => words.test(one));
      const held = (wood === undefined ? one : one.replace(wood[0], "")).replaceAll(/[()\s]+/gu, " ").trim();
      const virgin = /^(?:virgin|new)(?: oak| charred)?$/iu.test(held);
      return {
        species: wood?.[1] ?? "not known",
        held: virgin ? "nothing" : held === "" ? "not known" : held.slice(0, 120),
      };
    });
  return casks.length <= 12
    ? is(casks, casks.map(({ species, held }) => `${species}, held ${held}`).join("; "))
    : not("casks_many", "at most 12 casks");
}

/** "75 % corn, 13 rye, 12 malt", in either order; the shares come to 100. */
export function readGrains(text: string): Cell<GrainShare[]> {
  const grains: GrainShare[] = [];
  const limit = "a grain bill such as 75 % corn, 13 % rye, 12 % malt that comes to 100 %";
  for (const one of text.split(/[;/\n]|,(?!\d)|\s{2,}/u).map((part) => part.trim())) {
    if (one === "") continue;
    const found =
      /^([\d.,]+)\s*%?\s*([\p{L}][\p{L} -]*)$/u.exec(one) ??
      turned(/^([\p{L}][\p{L} -]*?)[:\s]*([\d.,]+)\s*%?$/u.exec(one));
    const percent = found === null ? null : plainNumber(found[1]!);
    if (found === null || percent === null) return not("grains_unreadable", limit);
    grains.push({ grain: found[2]!.trim(), percent });
  }
  const sum = grains.reduce((all, { percent }) => all + percent, 0);
  return grains.length <= 12 && Math.abs(sum - 100) <= 0.5 ? is(grains) : not("grains_not_100", limit);
}

const turned = (found: RegExpExecArray | null): readonly string[] | null =>
  found === null ? null : [found[0], found[2]!, found[1]!];
