import { DAY_MS } from "@partsproof/core/quantity";
import type { Records } from "../ports.ts";
import { refuse, unknownId } from "../refuse.ts";
import type { RestRow } from "../rows.ts";

/** The rest of the path, or 404. */
export async function knownRest(
  records: Records,
  at: Readonly<Record<string, string>> & { readonly household: string },
): Promise<RestRow> {
  const id = at["rest"] ?? "";
  return (await records.find("rest", at.household, id)) ?? unknownId("rest", id, ["rest"]);
}

/** O3: what has ended is a record. */
export function needOpen(rest: RestRow, what: string): void {
  if (rest.endedAt === null) return;
  refuse(409, {
    code: "rest_ended",
    path: ["rest"],
    limit: "a rest that goes on",
    received: rest.endedAt,
    message: `${what} requires a rest that goes on, got one that ended ${rest.endedAt}`,
  });
}

const TEN_YEARS_MS = 3650 * DAY_MS;

/** O1: a moment that has come, within ten years; now where nothing was said. */
export function momentOf(at: string | undefined, now: Date, notBefore?: string): string {
  if (at === undefined) return now.toISOString();
  const first = Math.max(Date.parse(notBefore ?? "") || 0, now.getTime() - TEN_YEARS_MS);
  const when = Date.parse(at);
  if (when >= first && when <= now.getTime()) return new Date(when).toISOString();
  const limit = `${new Date(first).toISOString()} to ${now.toISOString()}`;
  refuse(422, {
    code: "moment_outside",
    path: ["at"],
    limit,
    received: at,
    message: `a moment of this rest requires ${limit}, got ${at}`,
  });
}
