import { type ReactNode, useId } from "react";
import { useIssuesAt } from "./form.tsx";
import { IssueLines } from "./issue-lines.tsx";
import type { Path } from "./issues-at.ts";

/** What a control must carry so that label, hint and issue belong to it. */
export interface ControlProps {
  readonly id: string;
  readonly "aria-describedby": string | undefined;
  readonly "aria-invalid": true | undefined;
  readonly "data-path": string | undefined;
}

export interface FieldProps {
  readonly label: ReactNode;
  /** Where its value goes in what is sent; issues of this path stand beside the field. */
  readonly path?: Path;
  readonly hint?: ReactNode;
  readonly optional?: boolean;
  /** Keeps the label for screen readers only, where the surroundings say it. */
  readonly quietLabel?: boolean;
  /** What the app itself sees wrong, besides what the house said. */
  readonly wrong?: string | null;
  readonly children: (control: ControlProps) => ReactNode;
}

/** Label, control, hint, and what is wrong with it in words. */
export function Field({
  label,
  path,
  hint,
  optional = false,
  quietLabel = false,
  wrong,
  children,
}: FieldProps) {
  const id = useId();
  const said = useIssuesAt(path).map((issue) => issue.message);
  const wrongs = wrong ? [wrong, ...said.filter((text) => text !== wrong)] : said;
  const described = [hint !== undefined && `${id}-hint`, wrongs.length > 0 && `${id}-issue`].filter(Boolean);
  return (
    <div className="field">
      <label htmlFor={id} className={quietLabel ? "unseen" : "field-label"}>
        {label}
        {optional && <span className="field-optional"> (if you like)</span>}
      </label>
      {children({
        id,
        "aria-describedby": described.length > 0 ? described.join(" ") : undefined,
        "aria-invalid": wrongs.length > 0 ? true : undefined,
        "data-path": path?.join("/"),
      })}
      {hint !== undefined && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {wrongs.length > 0 && (
        <div id={`${id}-issue`}>
          <IssueLines issues={wrongs.map((message) => ({ message }))} />
        </div>
      )}
    </div>
  );
}
