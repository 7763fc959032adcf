import { ATTRIBUTES } from "@partsproof/core/sensory";
import { z } from "zod";
import { StatedStrength } from "./fields.ts";
import { SearchIntensity } from "./search.ts";

const known: ReadonlySet<string> = new Set(ATTRIBUTES.map(({ id }) => id));

/** Ids of core's attributes, each with what is said of it. */
export const byAttribute = <T extends z.ZodType>(said: T) =>
  z.record(z.string(), said).superRefine((record, context) => {
    for (const id of Object.keys(record)) {
      if (known.has(id)) continue;
      const message = `one of the attributes ${[...known].join(", ")}`;
      context.addIssue({ code: "custom", path: [id], message, input: id });
    }
  });

/**
 * What a whiskey tasted of: intensities of 0 to 10 by attribute, perhaps with how far off they may be. 0 says that it is not there;
 * null that nobody could say; an attribute that is left out, that nobody has. Neither of the last two is ever taken for 0.
 */
export const Profile = z.object({
  /** The strength it was tasted at, which may be after water; null where nobody remembers. */
  tastedAt: StatedStrength.nullable(),
  intensities: byAttribute(SearchIntensity),
});
export type Profile = z.infer<typeof Profile>;
