import { useId, useState } from "react";
import { useIssuesAt } from "./form.tsx";
import { MinusGlyph, PlusGlyph } from "./glyphs.tsx";
import { IssueLines } from "./issue-lines.tsx";
import type { Path } from "./issues-at.ts";
import "./stepper.css";

export interface StepperProps {
  /** What is counted, for screen readers: "Parts of Skerry Rye". */
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly min?: number;
  readonly max?: number;
  readonly path?: Path;
  /** Shows the label above, where the surroundings do not say it. */
  readonly showLabel?: boolean;
}

/** A whole number by finger, by arrow keys or by typing. At its end a button keeps the focus and does nothing. */
export function Stepper({
  label,
  value,
  onChange,
  min = 0,
  max = 99,
  path,
  showLabel = false,
}: StepperProps) {
  const id = useId();
  const issues = useIssuesAt(path);
  // What is typed may for a moment be no number (empty, say); it is shown, and the value stays.
  const [typed, setTyped] = useState<string | null>(null);
  const set = (next: number): void => {
    setTyped(null);
    onChange(Math.min(max, Math.max(min, next)));
  };
  const type = (text: string): void => {
    const digits = text.replace(/\D/g, "").slice(0, String(max).length);
    setTyped(digits);
    if (digits !== "") onChange(Math.min(max, Math.max(min, Number(digits))));
  };
  return (
    <div className="stepper-field">
      {showLabel && (
        <span className="field-label" aria-hidden="true">
          {label}
        </span>
      )}
      <div className="stepper">
        <button
          type="button"
          aria-label={`Fewer: ${label}`}
          aria-disabled={value <= min || undefined}
          onClick={() => set(value - 1)}
        >
          <MinusGlyph />
        </button>
        <input
          type="text"
          inputMode="numeric"
          role="spinbutton"
          autoComplete="off"
          aria-label={label}
          aria-valuenow={value}
          aria-valuemin={min}
          aria-valuemax={max}
          aria-invalid={issues.length > 0 || undefined}
          aria-describedby={issues.length > 0 ? `${id}-issue` : undefined}
          data-path={path?.join("/")}
          value={typed ?? String(value)}
          onChange={(event) => type(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={() => setTyped(null)}
          onKeyDown={(event) => {
            const step = { ArrowUp: 1, ArrowDown: -1, PageUp: 5, PageDown: -5 }[event.key];
            if (step === undefined) return;
            event.preventDefault();
            set(value + step);
          }}
        />
        <button
          type="button"
          aria-label={`More: ${label}`}
          aria-disabled={value >= max || undefined}
          onClick={() => set(value + 1)}
        >
          <PlusGlyph />
        </button>
      </div>
      {issues.length > 0 && (
        <div id={`${id}-issue`}>
          <IssueLines issues={issues} />
        </div>
      )}
    </div>
  );
}
