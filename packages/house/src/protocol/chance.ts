import { z } from "zod";

/** A probability with the words for it and the method that gave it. */
export const Chance = z.object({
  p: z.number(),
  /** Exact fraction where there is one, such as "11/120". */
  fraction: z.string().nullable(),
  words: z.string(),
  method: z.string(),
});
export type Chance = z.infer<typeof Chance>;
