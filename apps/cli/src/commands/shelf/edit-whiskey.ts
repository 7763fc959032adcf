import type { BodyOf, Whiskey } from "@partsproof/house/protocol";
import { findWhiskey, whiskeyLabel } from "../../door/index.ts";
import {
  type GivenFlags,
  issueAt,
  many,
  minorUnits,
  one,
  readStrength,
  readTaste,
  readText,
  readVolume,
  refuse,
  yes,
} from "../../flags/index.ts";
import { printWhiskey } from "../../print/whiskey.ts";
import { householdCommand } from "../command.ts";
import { whiskeyFlags } from "./typed-whiskey.ts";

const flags = {
  ...whiskeyFlags,
  sold: yes("it is sold again"),
  price: one(readText("price"), "<amount>", "of one full bottle, such as 45.00"),
  size: one(readVolume, "<volume>", "of a full bottle"),
  taste: many(readTaste, "<attribute>=<0 to 10>", 'again for each: "smoke=6"; "smoke=" is not said any more'),
  "tasted-at": one(readStrength, "<strength>", "the strength it was tasted at, after any water"),
};

export const whiskeyEdit = householdCommand({
  name: "whiskey edit",
  says: "Change what is known of a whiskey; what is not given stays. Grains and casks are given whole.",
  args: { whiskey: "id or name" },
  flags,
  example: 'whiskey edit "Barn Door" --strength 61.8 --taste smoke=0',
  places: {
    ageYears: "age",
    grains: "grain",
    casks: "cask",
    distilledAt: "distilled",
    priceMinor: "price",
    bottleMl: "size",
    availability: "gone",
    profile: "taste",
  },
  run: async (given, here) => {
    const { client, household } = here;
    const whiskey = await findWhiskey(here, given.args.whiskey, ["whiskey"]);
    const change = changeOf(given.flags, whiskey, household.currency);
    if (Object.keys(change).length === 0) {
      const all = Object.keys(flags).map((flag) => `--${flag}`);
      refuse(issueAt([], "flag_missing", `one of ${all.join(", ")}`, null));
    }
    const edited = await client("editWhiskey", {
      at: { household: household.id, whiskey: whiskey.id },
      body: { version: whiskey.version, ...change },
    });
    return { json: edited, text: () => printWhiskey(edited, household.currency) };
  },
});

export const whiskeyRemove = householdCommand({
  name: "whiskey remove",
  says: "Take away a whiskey that nothing uses: no bottle, recipe or flight.",
  args: { whiskey: "id or name" },
  flags: {},
  example: 'whiskey remove "Barn Door"',
  run: async ({ args }, { client, household }) => {
    const whiskey = await findWhiskey({ client, household }, args.whiskey, ["whiskey"]);
    const at = { household: household.id, whiskey: whiskey.id };
    await client("removeWhiskey", { at, query: { version: whiskey.version } });
    const removed = { id: whiskey.id, label: whiskeyLabel(whiskey) };
    return { json: { removed }, text: () => `Removed ${removed.label}.` };
  },
});

type Change = Omit<NonNullable<BodyOf<"editWhiskey">>, "version">;

function changeOf(given: GivenFlags<typeof flags>, whiskey: Whiskey, currency: string): Change {
  const {
    maker,
    name,
    release,
    kind,
    strength,
    age,
    grain,
    cask,
    distilled,
    place,
    gone,
    sold,
    note,
    price,
    size,
  } = given;
  if (gone && sold) refuse(issueAt(["sold"], "flags_exclude", "one of --gone and --sold", "both"));
  const priceMinor = price === undefined ? undefined : minorUnits(price, currency);
  if (typeof priceMinor === "object") refuse(priceMinor);
  const facts = {
    maker,
    name,
    release,
    kind,
    strength,
    ageYears: age,
    grains: grain.length === 0 ? undefined : grain.map(([of, percent]) => ({ grain: of, percent })),
    casks: cask.length === 0 ? undefined : [...cask],
    distilledAt: distilled,
    place,
    availability: gone ? "gone" : sold ? "sold" : undefined,
    note,
    priceMinor,
    bottleMl: size,
    profile: profileOf(given, whiskey),
  };
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));
}

/** What was tasted before, changed where something is said anew; null where nothing is left. */
function profileOf(given: GivenFlags<typeof flags>, { profile }: Whiskey): Whiskey["profile"] | undefined {
  const tastedAt = given["tasted-at"] ?? profile?.tastedAt ?? null;
  if (given.taste.length === 0)
    return given["tasted-at"] === undefined
      ? undefined
      : { tastedAt, intensities: profile?.intensities ?? {} };
  const intensities = { ...profile?.intensities };
  for (const [attribute, strength] of given.taste) {
    if (strength === null) delete intensities[attribute];
    else intensities[attribute] = strength;
  }
  return Object.keys(intensities).length === 0 ? null : { tastedAt, intensities };
}
