import type { Issue } from "@partsproof/house/protocol";
import { useFormIssues } from "./form.tsx";
import type { Path } from "./issues-at.ts";
import { sentence } from "./sentence.ts";

/** What is wrong, line by line, as it stands beside a field. */
export function IssueLines({ issues }: { readonly issues: readonly Pick<Issue, "message">[] }) {
  return issues.map(({ message }) => (
    <p className="field-issue" key={message}>
      {sentence(message)}
    </p>
  ));
}

/** The issues of the surrounding form that concern `path` as a whole, such as a list: not those of things inside it. */
export function IssuesOfWhole({ path }: { readonly path: Path }) {
  const issues = useFormIssues().filter((issue) => issue.path.join("/") === path.join("/"));
  return <IssueLines issues={issues} />;
}
