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
  500: "The house failed",
};

/** Any failure as an answer. Only a refusal or a schema's issues are told; a bug is told as a bug and no more. */
export function problem(error: unknown): Response {
  if (error instanceof HouseRefusal) return answer(error.status, error.issues);
  if (error instanceof z.ZodError) return answer(422, error.issues.map(fromZod));
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
  path: readonly string[],
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

function fromZod(issue: z.core.$ZodIssue): Issue {
  const path = issue.path.map((p) => (typeof p === "symbol" ? String(p) : p));
  const received = issue.input ?? null;
  const where = path.length > 0 ? path.join(".") : "request";
  const { code, limit } = bound(issue);
  return { code, path, limit, received, message: `${where} requires ${limit}, got ${shown(received)}` };
}

function bound(issue: z.core.$ZodIssue): { code: string; limit: string } {
  const kind = issue.path.at(-1) === "value" && issue.path.at(-2) === "strength" ? "strength" : "value";
  switch (issue.code) {
    case "too_big":
      return {
        code: `${kind}_too_large`,
        limit: `${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}${unit(issue)}`,
      };
    case "too_small":
      return {
        code: `${kind}_too_small`,
        limit: `${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}${unit(issue)}`,
      };
    case "invalid_type":
      return { code: "wrong_type", limit: issue.expected };
    case "invalid_value":
      return { code: "unknown_word", limit: `one of ${issue.values.map(String).join(", ")}` };
    default:
      return { code: issue.code, limit: issue.message };
  }
}

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
