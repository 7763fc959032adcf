import { z } from "zod";

/** A name a glass can be guessed to be: `whiskey:<id>`, `batch:<id>` or `vessel:<id>` for a blend in a topped-up bottle. */
export const NameId = z.string().regex(/^(whiskey|batch|vessel):[0-9a-z]{26}$/);

/** A code is a blind code, or when alone the place of the glass, "1" to "10". */
export const GlassCode = z.string().regex(/^[1-9][0-9]{0,2}$/);

/** Best first; an inner list is a tie. Every glass once, or null for no ranking. */
export const Ranking = z.array(z.array(GlassCode).min(1)).nullable();

/** The most coded glasses that one taster gets. */
export const MOST_GLASSES_EACH = 32;
