import type { Issue } from "../../protocol/index.ts";
import { issue, type Path, unknownCode } from "./edit-issue.ts";

/** F9: a ranking holds every glass once, ties allowed. */
export function rankingIssues(
  ranking: readonly (readonly string[])[],
  order: readonly string[],
  at: Path,
): Issue[] {
  const seen = new Set<string>();
  const issues = ranking.flatMap((tie, i) =>
    tie.flatMap((code, j) => {
      const path = [...at, i, j];
      if (!order.includes(code)) return [unknownCode(path, code, { order })];
      if (seen.has(code)) return [issue("glass_ranked_twice", path, "each glass once", code, "a ranking")];
      seen.add(code);
      return [];
    }),
  );
  const left = order.filter((code) => !seen.has(code));
  if (left.length === 0) return issues;
  const limit = `all ${order.length} glasses`;
  return [
    ...issues,
    {
      code: "ranking_incomplete",
      path: at,
      limit,
      received: seen.size,
      message: `a ranking requires ${limit}, got ${seen.size}: ${left.join(", ")} left out`,
    },
  ];
}
