import type { Issue } from "@partsproof/house/protocol";

/** Where a field's value goes in what is sent, outermost first. */
export type Path = readonly (string | number)[];

const under = (path: Path, issuePath: Path): boolean =>
  path.length <= issuePath.length && path.every((part, i) => String(part) === String(issuePath[i]));

/** The issues that concern the value at `path` or anything inside it. */
export function issuesAt(issues: readonly Issue[], path: Path): readonly Issue[] {
  return issues.filter((issue) => under(path, issue.path));
}
