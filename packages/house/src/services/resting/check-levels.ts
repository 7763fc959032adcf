import { type NoteReader, type Observation, profileOf } from "@partsproof/core/notes";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { CheckTastingRow } from "../rows.ts";

/** A strength set by hand is off by about so much, one standard deviation. Common practice, no source. */
const SET_SD = 1;
const SENSES = ["nose", "palate", "finish"] as const;
const MEASURED: ReadonlySet<string> = new Set(ATTRIBUTES.map(({ id }) => id));

/**
 * O4: what a check tasting says of each attribute, 0 to 10. As on a sheet (Y1): what was set by hand counts, and of the notes only
 * what was not taken back; an attribute set for the whole glass is that, whatever its parts say. What was not spoken of is not there.
 */
export function checkLevels(
  { notes, strengths }: Pick<CheckTastingRow, "notes" | "strengths">,
  read: NoteReader,
): Readonly<Record<string, number>> {
  const byHand = new Set(strengths.map(({ section, attribute }) => `${section}/${attribute}`));
  const set = strengths.flatMap(({ section, attribute, strength }) =>
    strength === null ? [] : [said(attribute, section, strength)],
  );
  const words = SENSES.flatMap((where) =>
    notes[where].trim() === "" ? [] : read(notes[where], where).observations,
  ).filter(
    ({ who, attribute, where }) =>
      who === "this" && MEASURED.has(attribute) && !byHand.has(`${where}/${attribute}`),
  );
  const pooled = profileOf([...set, ...words]);
  const whole = new Map(
    set.flatMap(({ where, attribute, strength }) => (where === "whole" ? [[attribute, strength]] : [])),
  );
  return Object.fromEntries(
    Object.entries(pooled).map(([attribute, { mean }]) => [attribute, whole.get(attribute) ?? mean]),
  );
}

const said = (attribute: string, where: Observation["where"], strength: number): Observation => ({
  attribute,
  where,
  strength,
  spread: SET_SD,
  quote: [0, 0],
  word: "",
  stance: "present",
  who: "this",
});
