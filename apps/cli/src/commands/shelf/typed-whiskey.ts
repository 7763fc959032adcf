import { type BodyOf, type Issue, WhiskeyKind } from "@partsproof/house/protocol";
import {
  BadInput,
  type GivenFlags,
  issueAt,
  many,
  one,
  readAnyText,
  readCask,
  readGrain,
  readNumber,
  readStrength,
  readText,
  readWord,
  yes,
} from "../../flags/index.ts";

/** The facts of a whiskey as flags. */
export const whiskeyFlags = {
  maker: one(readText("maker"), "<maker>", "who sells it"),
  name: one(readText("name"), "<name>", "what it is called"),
  release: one(readText("release"), "<release>", "release, batch or year"),
  kind: one(readWord("kind", WhiskeyKind.options), "<kind>", WhiskeyKind.options.join(", ")),
  strength: one(readStrength, "<strength>", "as the label has it: 62.4 or 124.8proof"),
  age: one(readNumber("age", 0, 120, "years"), "<years>", "where the label states one"),
  grain: many(readGrain, "<grain>=<%>", "again for each grain of the mash: corn=51"),
  cask: many(readCask, "<wood>:<held>", 'again for each: "American oak:bourbon", "European oak:nothing"'),
  distilled: one(readText("distilled"), "<where>", "distillery or group it was distilled at"),
  place: one(
    readText("place"),
    "<where>",
    'where it comes from, the narrower first: "Saltreach Island, the north"',
  ),
  gone: yes("it is not sold any more"),
  note: one(readAnyText, "<text>", "whatever else is known"),
};

/** The whiskey the flags tell of. Maker, name and strength must be there. */
export function typedWhiskey(
  flags: GivenFlags<typeof whiskeyFlags>,
  bottle: { readonly priceMinor: number | null; readonly ml: number | undefined },
): NonNullable<BodyOf<"addWhiskey">> {
  const { maker, name, strength, release, kind, age, grain, cask, distilled, place, gone, note } = flags;
  if (maker === undefined || name === undefined || strength === undefined) {
    const missing: Issue[] = [];
    for (const [flag, value] of Object.entries({ maker, name, strength })) {
      if (value !== undefined) continue;
      missing.push(
        issueAt([flag], "flag_missing", `--${flag}, or --whiskey for one that is known here`, null),
      );
    }
    throw new BadInput(missing);
  }
  return {
    maker,
    name,
    strength,
    ageYears: age ?? null,
    grains: grain.length === 0 ? null : grain.map(([of, percent]) => ({ grain: of, percent })),
    casks: [...cask],
    distilledAt: distilled ?? null,
    place: place ?? null,
    priceMinor: bottle.priceMinor,
    availability: gone ? "gone" : "sold",
    ...(release === undefined ? {} : { release }),
    ...(kind === undefined ? {} : { kind }),
    ...(bottle.ml === undefined ? {} : { bottleMl: bottle.ml }),
    ...(note === undefined ? {} : { note }),
  };
}
