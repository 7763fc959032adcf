import { z } from "zod";

/** One thing wrong with what was sent: what, where, the limit, and what was received. */
export const Issue = z.object({
  /** Stable machine word, snake_case. */
  code: z.string(),
  /** Where in the request, outermost first; empty when it concerns the whole. */
  path: z.array(z.union([z.string(), z.number()])),
  /** The bound that was broken, as people write it, with its unit. */
  limit: z.string(),
  /** What was received; null when nothing was. */
  received: z.unknown(),
  /** `<what> requires <condition>, got <value> <unit>`. */
  message: z.string(),
});
export type Issue = z.infer<typeof Issue>;

/** Body of every answer with a status of 400 or more (RFC 9457, with the list of issues added). */
export const Problem = z.object({
  type: z.literal("about:blank"),
  title: z.string(),
  status: z.int(),
  issues: z.array(Issue),
});
export type Problem = z.infer<typeof Problem>;
