import { z } from "zod";

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
