import { attributeName } from "@partsproof/core/sensory";
import type { Whiskey } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { type Fact, facts } from "./facts.ts";
import { abv, money, proof, stated } from "./figures.ts";

const age = (years: number | null): string => (years === null ? "no age" : `${years} years`);

const whiskeyLine = ({ maker, name, release }: Whiskey): string =>
  [maker, name, release].filter((part) => part !== "").join(" ");

/** As the shelf keeps it: what nobody could say, and what nobody has said, are not there. */
function tastes(profile: Whiskey["profile"]): string | null {
  if (profile === null) return null;
  const said = Object.entries(profile.intensities).flatMap(([attribute, intensity]) => {
    if (intensity === null || intensity === undefined) return [];
    const [value, sd] = typeof intensity === "number" ? [intensity, null] : [intensity.value, intensity.sd];
    return [`${attributeName(attribute)} ${value}${sd === null ? "" : ` ± ${sd}`}`];
  });
  const at = profile.tastedAt === null ? [] : [`tasted at ${stated(profile.tastedAt)}`];
  return [said.join(", "), ...at].filter((text) => text !== "").join("; ");
}

export function whiskeyFacts(whiskey: Whiskey, currency: string): readonly Fact[] {
  const { grains, casks } = whiskey;
  return [
    ["Whiskey", whiskeyLine(whiskey)],
    ["Kind", whiskey.kind],
    [
      "Stated",
      `${stated(whiskey.strength)} (${abv(whiskey.abv20)} at 20 °C, ${proof(whiskey.proof60F)} at 60 °F)`,
    ],
    ["Age", age(whiskey.ageYears)],
    [
      "Grain bill",
      grains === null ? "not known" : grains.map(({ grain, percent }) => `${percent} % ${grain}`).join(", "),
    ],
    [
      "Casks",
      casks.length === 0
        ? "not known"
        : casks.map(({ species, held }) => `${species}, held ${held}`).join("; "),
    ],
    ["Tastes of", tastes(whiskey.profile)],
    ["Distilled at", whiskey.distilledAt],
    ["Place", whiskey.place],
    [
      "Price",
      whiskey.priceMinor === null
        ? "not known"
        : `${money(whiskey.priceMinor, currency)} for ${whiskey.bottleMl} mL`,
    ],
    ["Availability", whiskey.availability === "gone" ? "gone, not sold any more" : "sold"],
    ["Note", whiskey.note === "" ? null : whiskey.note],
  ];
}

export const printWhiskey = (whiskey: Whiskey, currency: string): string =>
  facts([...whiskeyFacts(whiskey, currency), ["Id", whiskey.id]]);

export const printWhiskeys = (whiskeys: readonly Whiskey[]): string =>
  columns(
    whiskeys,
    [
      { head: "Whiskey", cell: whiskeyLine },
      { head: "Kind", cell: ({ kind }) => kind },
      { head: "Strength", cell: ({ strength }) => stated(strength), right: true },
      { head: "Age", cell: ({ ageYears }) => age(ageYears), right: true },
      { head: "", cell: ({ availability }) => (availability === "gone" ? "gone" : "") },
      { head: "Id", cell: ({ id }) => id },
    ],
    "No whiskey yet. Add one with its bottle: shelf add",
  );
