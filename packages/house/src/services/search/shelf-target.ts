import type { BodyRead, SearchTarget } from "../../protocol/index.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { Shelf } from "../shelf/index.ts";

/** What a household is after: like a whiskey, a profile of its own, or the one with some of the other. */
export function targetOf(shelf: Shelf, asked: BodyRead<"searchShelf">): SearchTarget {
  const { like, profile: own = {}, change = {}, weights } = asked;
  const profile: Record<string, number> = { ...(like === undefined ? {} : saidOf(shelf, like)), ...own };
  for (const [attribute, by] of Object.entries(change)) {
    const from = profile[attribute];
    if (from === undefined)
      refuse(422, {
        code: "change_of_nothing",
        path: ["change", attribute],
        limit: "an attribute that `like` or `profile` says something of",
        received: attribute,
        message: `change requires an attribute that \`like\` or \`profile\` says something of, got ${attribute}`,
      });
    profile[attribute] = Math.min(10, Math.max(0, from + by));
  }
  if (Object.keys(profile).length === 0)
    refuse(422, {
      code: "target_missing",
      path: ["profile"],
      limit: "a profile, or a whiskey to be like that somebody has said something of",
      received: null,
      message:
        "a search requires a profile, or a whiskey to be like that somebody has said something of, got neither",
    });
  return { profile, ...(weights === undefined ? {} : { weights }) };
}

/** What somebody has said of a whiskey. Unknown is no target. */
function saidOf(shelf: Shelf, id: string): Record<string, number> {
  const { profile } = shelf.whiskeys.get(id) ?? unknownId("whiskey", id, ["like"]);
  return Object.fromEntries(
    Object.entries(profile?.intensities ?? {}).flatMap(([attribute, said]) =>
      said === null ? [] : [[attribute, typeof said === "number" ? said : said.value]],
    ),
  );
}
