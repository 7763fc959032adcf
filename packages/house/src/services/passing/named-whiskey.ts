import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { NamedWhiskey } from "../../protocol/index.ts";
import type { WhiskeyRow } from "../rows.ts";
import { strengthOf } from "../shelf/index.ts";

/** A whiskey as a file names it: facts that are known, and what it tasted of as the household has it, without how unsure; never its own note. */
export function namedWhiskey({
  maker,
  name,
  release,
  strength,
  ageYears,
  place,
  profile,
}: WhiskeyRow): NamedWhiskey {
  const said = Object.entries(profile?.intensities ?? {}).flatMap(([id, own]) =>
    own === null ? [] : [[id, typeof own === "number" ? own : own.value] as const],
  );
  return {
    maker,
    name,
    ...(release === "" ? {} : { release }),
    abv: abv20OfStrength(strengthOf(strength)),
    ...(ageYears === null ? {} : { ageYears }),
    ...(place === null || place.trim() === "" ? {} : { place }),
    ...(said.length > 0 ? { profile: Object.fromEntries(said) } : {}),
  };
}

const plain = (text: string | undefined): string | undefined => text?.trim().toLowerCase();

/** Whether a whiskey is the one a file names: the same name, and the same maker and release where both say them. */
export function isNamedSo(
  { maker, name, release }: NamedWhiskey,
  whiskey: Pick<WhiskeyRow, "maker" | "name" | "release">,
): boolean {
  return (
    plain(name) === plain(whiskey.name) &&
    (maker === undefined || plain(maker) === plain(whiskey.maker)) &&
    (release === undefined || plain(release) === plain(whiskey.release))
  );
}

export const namedLabel = ({ maker, name, release }: NamedWhiskey): string =>
  [maker, name, release].filter((part) => part !== undefined && part !== "").join(" ");
