import { z } from "zod";
import { Id, Instant, ShortText } from "./fields.ts";

/** The clock of a place by its IANA name; the platform knows which there are. */
const Zone = z
  .string()
  .max(80)
  .refine(
    (zone) => {
      try {
        return new Intl.DateTimeFormat("en-US", { timeZone: zone }).format(0) !== "";
      } catch {
        return false;
      }
    },
    { error: "the name of a time zone, such as Europe/Paris" },
  );
export const CalendarQuery = z.object({ zone: Zone.default("UTC") });

export const HouseholdCalendar = z.object({
  /** An iCalendar object (RFC 5545). */
  text: z.string(),
  events: z.int(),
  zone: z.string(),
});
export type HouseholdCalendar = z.infer<typeof HouseholdCalendar>;

/** A secret address that a calendar program asks again and again. It gives dates and neutral words alone. */
export const CalendarLinkDraft = z.object({ label: ShortText, zone: Zone.default("UTC") });
export const CalendarLink = z.object({
  id: Id,
  label: z.string(),
  zone: z.string(),
  createdAt: Instant,
  revokedAt: Instant.nullable(),
});
export type CalendarLink = z.infer<typeof CalendarLink>;
/** The address within the house, told this once. */
export const CalendarLinkMade = CalendarLink.extend({ path: z.string() });
export const CalendarLinks = z.object({ items: z.array(CalendarLink) });
/** 256 random bits as hex. */
export const FeedQuery = z.object({ link: z.string().regex(/^[0-9a-f]{64}$/, "a calendar link") });
