import type { Reading } from "@partsproof/core/quantity";

/** A schema of the protocol, as far as it is needed here. */
interface Bound {
  safeParse(value: unknown): {
    readonly success: boolean;
    readonly error?: {
      readonly issues: readonly {
        readonly code: string;
        readonly message: string;
        readonly inclusive?: boolean | undefined;
        readonly maximum?: unknown;
        readonly minimum?: unknown;
      }[];
    };
  };
}

/** Holds a value that was read to the limit the house itself has for it, in the house's words. */
export function bounded<T>(schema: Bound, what: string, unit: string, text: string, value: T): Reading<T> {
  const read = schema.safeParse(value);
  const issue = read.error?.issues[0];
  if (read.success || issue === undefined) return { ok: true, value };
  const code = { too_big: "value_too_large", too_small: "value_too_small" }[issue.code] ?? issue.code;
  const limit = limitOf(issue) + (unit === "" ? "" : ` ${unit}`);
  return {
    ok: false,
    issue: { code, limit, received: text, message: `${what} requires ${limit}, got "${text}"` },
  };
}

function limitOf(issue: {
  readonly code: string;
  readonly message: string;
  readonly inclusive?: boolean | undefined;
  readonly maximum?: unknown;
  readonly minimum?: unknown;
}): string {
  if (issue.code === "too_big") {
    return `${issue.inclusive === false ? "less than" : "at most"} ${String(issue.maximum)}`;
  }
  if (issue.code === "too_small") {
    return `${issue.inclusive === false ? "more than" : "at least"} ${String(issue.minimum)}`;
  }
  return issue.message;
}
