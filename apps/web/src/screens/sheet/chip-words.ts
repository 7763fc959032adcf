import type { Chip } from "../../noting/index.ts";
import { attributeName } from "@partsproof/core/sensory";
import type { Section } from "./sheet-fields.ts";

/** Read, and no strength on a sheet: they hold opposites. */
const ONLY_WORDS: Readonly<Record<string, string>> = {
  "taste.basic": "basic taste",
  "whole.balance": "balance",
};
const STANCES: Readonly<Record<Chip["stance"], string>> = {
  present: "there",
  absent: "not there",
  less: "less than in another",
  more: "more than in another",
  unsure: "perhaps there",
};
const SHORT: Readonly<Record<Chip["stance"], string>> = {
  present: "",
  absent: "",
  less: "less",
  more: "more",
  unsure: "perhaps",
};

export const hasStrength = (attribute: string): boolean => ONLY_WORDS[attribute] === undefined;
export const chipName = (attribute: string): string => ONLY_WORDS[attribute] ?? attributeName(attribute);
export const sectionName = (section: Section): string => (section === "whole" ? "all in all" : section);

/** A strength put right may say other than the words. */
function stanceOf({ stance, strength, attribute }: Chip): Chip["stance"] {
  if (!hasStrength(attribute)) return stance;
  if (strength === 0) return "absent";
  return stance === "absent" ? "present" : stance;
}

/** Small beside a chip: what its name and number do not say. */
export const chipAside = (chip: Chip): string =>
  [SHORT[stanceOf(chip)], chip.section === chip.sense ? "" : sectionName(chip.section)]
    .filter((word) => word !== "")
    .join(" · ");

export const chipTitle = (chip: Chip): string => {
  const name = chipName(chip.attribute);
  return stanceOf(chip) === "absent" ? `no ${name}` : name;
};

/** All of a chip in words, those that are seen first. */
export const chipSaid = (chip: Chip): string => {
  const aside = chipAside(chip);
  return [
    `${chipTitle(chip)}${aside === "" ? "" : ` ${aside}`}${hasStrength(chip.attribute) ? ` ${chip.strength} of 10` : ""}`,
    ...(hasStrength(chip.attribute) ? [] : ["words only"]),
    sectionName(chip.section),
    `${STANCES[stanceOf(chip)]}: “${chip.words}”`,
  ].join(", ");
};
