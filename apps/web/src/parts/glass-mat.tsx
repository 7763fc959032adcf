import type { ReactNode } from "react";
import "./glass-mat.css";

export interface GlassOnMat {
  /** The blind code, or the place when alone. */
  readonly code: string;
  /** Under the glass: a guess, a name after the reveal. */
  readonly label?: ReactNode;
  /** A word for its state, shown under it: "noted", "locked". */
  readonly state?: string;
}

export interface GlassMatProps {
  /** In the order they stand on the table. */
  readonly glasses: readonly GlassOnMat[];
  readonly title: string;
  /** Makes each glass a button. */
  readonly onPick?: (code: string) => void;
  readonly picked?: string | null;
}

/** Glasses seen from above, as numbered circles on a mat, in the order they stand on the table. */
export function GlassMat({ glasses, title, onPick, picked = null }: GlassMatProps) {
  return (
    <ol className="mat" aria-label={title}>
      {glasses.map((glass, i) => {
        const inside = (
          <>
            {/* Alone, the place is the glass's name already. */}
            {glass.code !== String(i + 1) && (
              <span className="mat-place" aria-hidden="true">
                {i + 1}
              </span>
            )}
            <span className="mat-glass">
              <span className="mat-code">{glass.code}</span>
            </span>
            {glass.label !== undefined && <span className="mat-label">{glass.label}</span>}
            {glass.state !== undefined && <span className="mat-state">{glass.state}</span>}
          </>
        );
        return (
          <li key={glass.code}>
            {onPick === undefined ? (
              <div className="mat-one">{inside}</div>
            ) : (
              <button
                type="button"
                className="mat-one"
                aria-pressed={picked === glass.code}
                onClick={() => onPick(glass.code)}
              >
                <span className="unseen">Glass </span>
                {inside}
              </button>
            )}
          </li>
        );
      })}
    </ol>
  );
}
