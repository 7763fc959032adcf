import { z } from "zod";
import type { Issue, Problem } from "../protocol/index.ts";
import { HouseRefusal } from "../services/index.ts";

const TITLES: Readonly<Record<number, string>> = {
  400: "The request is not what the house reads",
  401: "A token is needed",
  403: "Not with this token",
  404: "Not here",
  409: "Not as things stand",
  413: "Too large",
  422: "A value is out of its limits",
  429: "Too many tries",
  500: "The house failed",
};

/** Any failure as an answer. Only a refusal or a schema's issues are told; a bug is told as a bug and no more. */
export function problem(error: unknown): Response {
  if (error instanceof HouseRefusal) {
    const refused = answer(error.status, error.issues);
    if (error.retryAfterS !== null) refused.headers.set("retry-after", String(error.retryAfterS));
    return refused;
  }
  if (error instanceof z.ZodError) return answer(422, error.issues.flatMap(fieldByField).map(fromZod));
  // Nobody waits for this answer.
  if (error instanceof DOMException && error.name === "AbortError")
    return new Response(null, { status: 499 });
  console.error("house: a caller met a bug:", error instanceof Error ? error.stack : error);
  return answer(500, [
    {
      code: "house_failed",
      path: [],
      limit: "no failure of the house itself",
      received: null,
      message: "the house requires no failure of its own, got one: nothing of this request was kept",
    },
  ]);
}

/** A refusal of the edge itself. */
export function unreadable(
  status: HouseRefusal["status"],
  code: string,
  path: readonly (string | number)[],
  limit: string,
  received: unknown,
  what: string,
): HouseRefusal {
  const message = `${what} requires ${limit}, got ${String(received)}`;
  return new HouseRefusal(status, [{ code, path: [...path], limit, received, message }]);
}

function answer(status: number, issues: readonly Issue[]): Response {
  const body: Problem = { type: "about:blank", title: TITLES[status] ?? "No", status, issues: [...issues] };
  return new Response(JSON.stringify(body), {
    status,
    headers: { "content-type": "application/problem+json", "cache-control": "no-store" },
  });
}

/** Fields that a strict schema has not, each at its own place. */
function fieldByField(issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] {
  if (issue.code !== "unrecognized_keys") return [issue];
  const held = issue.input;
  return issue.keys.map((key) => ({
    ...issue,
    keys: [key],
    path: [...issue.path, key],
    input: held?.[key] as Record<string, unknown>,
  }));
}

function fromZod(issue: z.core.$ZodIssue): Issue {
  const path = issue.path.map((p) => (typeof p === "symbol" ? String(p) : p));
  const received = told(path, receivedBy(issue));
  const where = path.length > 0 ? path.join(".") : "request";
  const { code, limit } = bound(issue);
  return { code, path, limit, received, message: `${where} requires ${limit}, got ${shown(received)}` };
}

const SECRET: ReadonlySet<unknown> = new Set(["passphrase", "present", "link"]);

/** D5: of what opens something only its length is said back. Answers end up on screens and in logs. */
function told(path: readonly (string | number)[], received: unknown): unknown {
  const secret = SECRET.has(path.at(-1)) || (path[0] === "ticket" && path.at(-1) === "code");
  return secret && typeof received === "string" ? `${received.length} characters` : received;
}

/** What stood at the path. The word that tells forms apart is looked up in what holds it; JSON has no NaN. */
function receivedBy(issue: z.core.$ZodIssue): unknown {
  const key = issue.code === "invalid_union" ? issue.discriminator : undefined;
  const input = issue.input as Readonly<Record<string, unknown>> | null | undefined;
  if (key !== undefined && key === issue.path.at(-1)) return input?.[key] ?? null;
  return Number.isNaN(issue.input) ? "not a number" : (issue.input ?? null);
}

const STATED: ReadonlySet<PropertyKey> = new Set(["strength", "waterTo", "from", "to", "add", "with"]);

/** A strength stated with its basis, or one of the reckoner's plain ones. */
function isStrength(path: readonly PropertyKey[]): boolean {
  const last = path.at(-1);
  // In a list of strengths the place in it stands between.
  if (last === "value")
    return STATED.has(path.findLast((p, i) => i < path.length - 1 && typeof p === "string") ?? "");
  return last === "abv20" || last === "proof60F";
}

function bound(issue: z.core.$ZodIssue): { code: string; limit: string } {
  const kind = isStrength(issue.path) ? "strength" : "value";
  switch (issue.code) {
    case "too_big":
      return {
        code: `${kind}_too_large`,
        limit: `${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}${kind === "strength" ? strengthUnit(issue.maximum) : unit(issue)}`,
      };
    case "too_small":
      return {
        code: `${kind}_too_small`,
        limit: `${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}${unit(issue)}`,
      };
    case "invalid_type":
      return { code: "wrong_type", limit: issue.expected };
    case "invalid_union":
      return unionBound(issue);
    case "unrecognized_keys":
      return { code: "unknown_field", limit: "no field of this name" };
    case "invalid_value":
      return { code: "unknown_word", limit: `one of ${issue.values.map(String).join(", ")}` };
    default:
      return { code: ownWord(issue) ?? issue.code, limit: issue.message };
  }
}

/** The word a schema's own rule has for what it found, where it has one. */
function ownWord(issue: z.core.$ZodIssue): string | null {
  const word = issue.code === "custom" ? (issue.params?.["code"] as unknown) : undefined;
  return typeof word === "string" ? word : null;
}

/** Of several forms none fits: the words that tell them apart, or what each of them asks for. */
function unionBound(issue: z.core.$ZodIssueInvalidUnion): { code: string; limit: string } {
  if (issue.discriminator !== undefined) {
    const words = "options" in issue ? (issue.options ?? []) : [];
    return { code: "unknown_word", limit: `one of ${words.map(String).join(", ")}` };
  }
  const forms = issue.errors.map((errors) =>
    errors.map((e) => `${e.path.join(".") || "request"} (${bound(e).limit})`).join(" and "),
  );
  return { code: "no_form_fits", limit: forms.join(", or ") };
}

/** The schema's own bound tells the basis: 100 % vol, or 200 proof. */
const strengthUnit = (most: number | bigint): string => (Number(most) === 200 ? " proof" : " % vol");

function unit(issue: { readonly origin: string; readonly path: readonly PropertyKey[] }): string {
  if (issue.origin === "string") return " characters";
  if (issue.origin === "array") return " entries";
  const field = String(issue.path.at(-1) ?? "");
  if (/Ml$|^ml$/.test(field)) return " mL";
  if (/G$|^g$/.test(field)) return " g";
  return "";
}

function shown(value: unknown): string {
  return typeof value === "string"
    ? JSON.stringify(value.slice(0, 80))
    : (JSON.stringify(value)?.slice(0, 80) ?? "nothing");
}
