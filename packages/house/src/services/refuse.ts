import type { Issue } from "../protocol/index.ts";

/** A request the house says no to. Thrown by services inside their transaction, so nothing of it is kept. */
export class HouseRefusal extends Error {
  readonly status: 400 | 401 | 403 | 404 | 409 | 413 | 422 | 429;
  readonly issues: readonly Issue[];
  /** With 429: after how many seconds the next try is looked at. */
  readonly retryAfterS: number | null;
  constructor(status: HouseRefusal["status"], issues: readonly Issue[], retryAfterS: number | null = null) {
    super(issues.map((i) => i.message).join("; "));
    this.name = "HouseRefusal";
    this.status = status;
    this.issues = issues;
    this.retryAfterS = retryAfterS;
  }
}

/** One issue, thrown. */
export function refuse(status: HouseRefusal["status"], issue: Issue): never {
  throw new HouseRefusal(status, [issue]);
}

/** 404 for a row that is not there or is another household's: the two look the same. */
export function unknownId(what: string, id: string, path: readonly (string | number)[] = []): never {
  refuse(404, {
    code: `unknown_${what.replaceAll(" ", "_")}`,
    path: [...path],
    limit: `the id of a ${what} of this household`,
    received: id,
    message: `${what} requires an id of this household, got ${id}`,
  });
}

/** 409 for an edit of a row that has changed since it was read. */
export function staleEdit(what: string, sent: number, stored: number): never {
  refuse(409, {
    code: "stale_edit",
    path: ["version"],
    limit: `version ${stored}`,
    received: sent,
    message: `${what} requires its present version ${stored}, got version ${sent}: read it again and repeat the change`,
  });
}

/** 429: not looked at, because too many came before it. */
export function tooMany(what: string, waitMs: number): never {
  const seconds = Math.max(1, Math.ceil(waitMs / 1000));
  const issue = {
    code: "too_many_tries",
    path: [],
    limit: `a pause of ${seconds} s`,
    received: "one that came sooner",
    message: `${what} requires a pause of ${seconds} s, got one that came sooner`,
  };
  throw new HouseRefusal(429, [issue], seconds);
}

/** R1: a mixture of nothing. */
export function partsAllZero(path: readonly (string | number)[]): never {
  refuse(422, {
    code: "parts_all_zero",
    path: [...path],
    limit: "at least one part above 0",
    received: 0,
    message: "parts requires at least one part above 0, got all zero",
  });
}
