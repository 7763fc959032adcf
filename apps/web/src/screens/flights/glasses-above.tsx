import type { ReactNode } from "react";
import "./glasses-above.css";

export interface GlassesAboveProps {
  readonly count: number;
  /** Whether there is anything in them yet. */
  readonly poured: boolean;
  readonly size?: "list" | "page";
  readonly children?: ReactNode;
}

/** Glasses from above, unnumbered, overlapping as on a tray: how many there are and whether they are poured. */
export function GlassesAbove({ count, poured, size = "list" }: GlassesAboveProps) {
  return (
    <span
      className={`above above-${size} ${poured ? "above-poured" : ""}`}
      role="img"
      aria-label={`${count} glasses, ${poured ? "poured" : "empty"}`}
    >
      {Array.from({ length: count }, (_, i) => (
        <span key={i} />
      ))}
    </span>
  );
}
