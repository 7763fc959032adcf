import { z } from "zod";

/** Identifier drawn by the house: 26 characters, time first, so that ids sort by birth. */
export const Id = z
  .string()
  .regex(/^[0-9a-hjkmnp-tv-z]{26}$/, "an id has 26 characters of 0-9 a-z without i l o u");
export type Id = z.infer<typeof Id>;

/** UTC, ISO 8601 with milliseconds. */
export const Instant = z.iso.datetime();

/** Row version for optimistic concurrency: send back the one you read. */
export const Version = z.int().min(1);

export const ShortText = z.string().trim().min(1).max(120);
export const OptionalText = z.string().trim().max(120);
export const LongText = z.string().max(8000);

/** Strength as a label states it. ABV is at 20 °C, US proof at 60 °F. */
export const StatedStrength = z.discriminatedUnion("basis", [
  z.object({ basis: z.literal("abv20"), value: z.number().min(0).max(100) }),
  z.object({ basis: z.literal("proof60F"), value: z.number().min(0).max(200) }),
]);
export type StatedStrength = z.infer<typeof StatedStrength>;

/** Millilitres at 20 °C, from a microlitre up. */
export const VolumeMl = z.number().min(0.001).max(100_000);
/** Whole minor units of the household's currency (cents, pence). */
export const Money = z.int().min(0).max(100_000_000);

/** Query of every list: `next` of the last page is the `cursor` of the following one. */
export const PageQuery = z.object({
  limit: z.coerce.number().int().min(1).max(200).default(50),
  cursor: z.string().max(200).optional(),
});
export const page = <T extends z.ZodType>(item: T) =>
  z.object({ items: z.array(item), next: z.string().nullable() });
