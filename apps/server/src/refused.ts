import type { Problem } from "@partsproof/house/protocol";

/** One issue as an answer, in the house's own form: what the server refuses before the house is asked. */
export function refused(
  status: 403 | 404 | 413,
  title: string,
  issue: {
    readonly code: string;
    readonly what: string;
    readonly limit: string;
    readonly received: string | null;
  },
): Response {
  const { code, what, limit, received } = issue;
  const message = `${what} requires ${limit}, got ${received ?? "none"}`;
  const problem: Problem = {
    type: "about:blank",
    title,
    status,
    issues: [{ code, path: [], limit, received, message }],
  };
  return new Response(JSON.stringify(problem), {
    status,
    headers: { "content-type": "application/problem+json", "cache-control": "no-store" },
  });
}
