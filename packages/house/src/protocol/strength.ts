import { ATTRIBUTES, type AttributeId } from "@partsproof/core/sensory";
import { z } from "zod";
import { GlassCode, MOST_GLASSES_EACH } from "./glass.ts";

/** Core's attributes, by id: what a profile says the intensity of. */
const Attribute = z.enum(ATTRIBUTES.map(({ id }) => id) as [AttributeId, ...AttributeId[]]);

/** What of a glass an intensity is about: one of the senses, or the glass as a whole. */
export const SECTIONS = ["nose", "palate", "finish", "whole"] as const;

const of = {
  pass: z.enum(["first", "second"]),
  section: z.enum(SECTIONS),
  attribute: Attribute,
};
/** 0 says that it is not there; an attribute that is left out was not said, and is never taken for 0. */
const strength = z.number().min(0).max(10);

/** How strong a glass is in one attribute, 0 to 10. */
export const GlassStrength = z.object({ ...of, strength });
export type GlassStrength = z.infer<typeof GlassStrength>;

export const SheetStrength = z.object({ code: GlassCode, ...of, strength });
export type SheetStrength = z.infer<typeof SheetStrength>;

/** Only those named are replaced; null takes one back. */
export const StrengthsEdit = z
  .array(z.object({ code: GlassCode, ...of, strength: strength.nullable() }))
  .max(MOST_GLASSES_EACH * 2 * SECTIONS.length * ATTRIBUTES.length);
export type StrengthsEdit = z.infer<typeof StrengthsEdit>;
