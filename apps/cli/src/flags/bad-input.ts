import type { Issue } from "@partsproof/house/protocol";

/** What was typed cannot be taken: every issue found, told together. Ends in exit code 2. */
export class BadInput extends Error {
  readonly issues: readonly Issue[];
  constructor(issues: readonly Issue[]) {
    super(issues.map(({ message }) => message).join("; "));
    this.name = "BadInput";
    this.issues = issues;
  }
}

/** One issue, thrown. */
export function refuse(issue: Issue): never {
  throw new BadInput([issue]);
}

/** `<what> requires <limit>, got <received>`, at a flag or argument. */
export function issueAt(
  path: readonly (string | number)[],
  code: string,
  limit: string,
  received: unknown,
  more = "",
): Issue {
  const what = path.length > 0 ? path.join(" ") : "command line";
  const got = received === null ? "nothing" : JSON.stringify(received);
  return { code, path: [...path], limit, received, message: `${what} requires ${limit}, got ${got}${more}` };
}
