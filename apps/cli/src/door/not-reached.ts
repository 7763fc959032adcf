import type { Issue } from "@partsproof/house/protocol";

/** The house could not be opened or did not answer. No fault of what was typed: ends in exit code 1. */
export class NotReached extends Error {
  readonly issue: Issue;
  constructor(code: string, path: readonly string[], limit: string, received: string | null, why: string) {
    const got = received === null ? "none" : received;
    super(`house requires ${limit}, got ${got}: ${why}`);
    this.name = "NotReached";
    this.issue = { code, path: [...path], limit, received, message: this.message };
  }
}
