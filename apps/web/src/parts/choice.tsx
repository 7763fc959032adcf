import { type ReactNode, useId } from "react";
import { useIssuesAt } from "./form.tsx";
import { IssueLines } from "./issue-lines.tsx";
import type { Path } from "./issues-at.ts";

export interface ChoiceProps<V extends string> {
  readonly label: ReactNode;
  readonly value: V;
  readonly onChange: (value: V) => void;
  readonly options: readonly { readonly value: V; readonly label: ReactNode }[];
  readonly path?: Path;
  readonly hint?: ReactNode;
  readonly quietLabel?: boolean;
}

/** One of a few, all in sight: radio buttons that are easy to hit. */
export function Choice<V extends string>({
  label,
  value,
  onChange,
  options,
  path,
  hint,
  quietLabel = false,
}: ChoiceProps<V>) {
  const id = useId();
  const issues = useIssuesAt(path);
  return (
    <fieldset className="field" aria-describedby={hint === undefined ? undefined : `${id}-hint`}>
      <legend className={quietLabel ? "unseen" : "field-label"}>{label}</legend>
      <div className="choice">
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              data-path={path?.join("/")}
              onChange={() => onChange(option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
      {hint !== undefined && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <IssueLines issues={issues} />
    </fieldset>
  );
}

export interface TickProps {
  readonly label: ReactNode;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly path?: Path;
}

/** Yes or no. */
export function Tick({ label, value, onChange, path }: TickProps) {
  const issues = useIssuesAt(path);
  return (
    <div className="field">
      <label className="tick">
        <input
          type="checkbox"
          checked={value}
          data-path={path?.join("/")}
          onChange={(event) => onChange(event.target.checked)}
        />
        <span>{label}</span>
      </label>
      <IssueLines issues={issues} />
    </div>
  );
}
