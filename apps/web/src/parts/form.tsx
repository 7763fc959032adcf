import type { Issue } from "@partsproof/house/protocol";
import { createContext, type ReactNode, type RefObject, useContext, useEffect, useRef } from "react";
import { issuesAt, type Path } from "./issues-at.ts";
import { sentence } from "./sentence.ts";
import "./form.css";

const IssuesContext = createContext<readonly Issue[]>([]);

/** All issues of the surrounding form. */
export function useFormIssues(): readonly Issue[] {
  return useContext(IssuesContext);
}

/** The issues of the surrounding form that concern `path`. */
export function useIssuesAt(path: Path | undefined): readonly Issue[] {
  const issues = useFormIssues();
  return path === undefined ? [] : issuesAt(issues, path);
}

export interface FormProps {
  /** What a useSay holds: the issues of the last try and how often it was tried. */
  readonly say: { readonly issues: readonly Issue[]; readonly tries: number };
  readonly onSend?: () => unknown;
  readonly children: ReactNode;
  readonly className?: string;
  /** Names the form for screen readers when a page has more than one. */
  readonly label?: string;
  /** Issues stand beside their fields only: for a form whose answer follows as it is typed, and nothing is sent. */
  readonly quiet?: boolean;
}

/** A form whose fields show the issues sent back for their path; a summary gathers all of them and takes the focus. */
export function Form({ say, onSend, children, className, label, quiet = false }: FormProps) {
  const form = useRef<HTMLFormElement>(null);
  return (
    <IssuesContext value={say.issues}>
      <form
        ref={form}
        className={`form ${className ?? ""}`}
        aria-label={label}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          onSend?.();
        }}
      >
        {!quiet && <IssueSummary say={say} within={form} />}
        {children}
      </form>
    </IssuesContext>
  );
}

export interface IssueSummaryProps {
  readonly say: FormProps["say"];
  /** Where to look for the fields that the lines lead to. */
  readonly within?: RefObject<HTMLElement | null>;
}

/** Everything that was refused, each line leading to its field. Usable alone where there is no form. */
export function IssueSummary({ say, within }: IssueSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  // Once a try, not whenever an issue is put right: that would take the focus from the field being typed in.
  useEffect(() => box.current?.focus(), [say.tries]);
  if (say.issues.length === 0) return null;
  const fieldOf = (path: Path): HTMLElement | null => {
    const fields = (within?.current ?? document).querySelectorAll<HTMLElement>("[data-path]");
    const wanted = path.map(String);
    // The field whose path goes furthest along with the issue's; an issue of a whole list leads to its first field.
    let best: HTMLElement | null = null;
    let depth = 0;
    for (const field of fields) {
      const has = (field.dataset["path"] ?? "").split("/");
      const first = has.findIndex((part, i) => part !== wanted[i]);
      const along = first === -1 ? has.length : first;
      if (along > depth) {
        best = field;
        depth = along;
      }
    }
    return best;
  };
  return (
    <div className="issues" ref={box} tabIndex={-1} role="alert">
      <h2>
        {say.issues.length === 1 ? "One thing to put right" : `${say.issues.length} things to put right`}
      </h2>
      <ul>
        {say.issues.map((issue, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- the list is replaced whole with every try
          <li key={i}>
            {issue.path.length === 0 ? (
              sentence(issue.message)
            ) : (
              <button type="button" className="issues-to" onClick={() => fieldOf(issue.path)?.focus()}>
                {sentence(issue.message)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
