import type { Issue } from "@partsproof/house/protocol";

/** Issues for a person: what is wrong, then code, place, limit and what was received. */
export const printIssues = (issues: readonly Issue[]): string =>
  issues
    .map(({ code, path, limit, received, message }) => {
      const where = path.length === 0 ? "" : ` at ${path.join(".")}`;
      const got =
        received === null || received === undefined ? "nothing" : JSON.stringify(received).slice(0, 200);
      return `${message}\n  ${code}${where}; limit: ${limit}; received: ${got}`;
    })
    .join("\n");

export const printIssuesJson = (issues: readonly Issue[]): string => JSON.stringify({ issues }, null, 2);
