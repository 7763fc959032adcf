import { z } from "zod";
import { Id, Instant, ShortText, Version } from "./fields.ts";

export const Currency = z.string().regex(/^[A-Z]{3}$/, "an ISO 4217 code has three capital letters");

export const HouseholdDraft = z.object({ name: ShortText, currency: Currency.default("USD") });
export const HouseholdEdit = z.object({
  version: Version,
  name: ShortText.optional(),
  currency: Currency.optional(),
});
export const Household = z.object({
  id: Id,
  version: Version,
  name: ShortText,
  currency: Currency,
  /** True for the invented demo household. */
  demo: z.boolean(),
  createdAt: Instant,
});
export type Household = z.infer<typeof Household>;

export const TasterDraft = z.object({ name: ShortText });
export const TasterEdit = z.object({ version: Version, name: ShortText.optional() });
export const Taster = z.object({ id: Id, version: Version, name: ShortText, createdAt: Instant });
export type Taster = z.infer<typeof Taster>;
