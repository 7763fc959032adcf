import type { ReactNode } from "react";
import { Steady } from "./steady.tsx";
import "./number-hero.css";

export interface NumberHeroProps {
  readonly label: ReactNode;
  /** Already printed with as many digits as are known. */
  readonly value: string;
  readonly unit: string;
  /** How far it may be off, as in "± 0.3". */
  readonly give?: string;
  readonly note?: ReactNode;
  readonly size?: "hero" | "large" | "plain";
  /** It changes while something is moved: its digits stand in a box of their own, and lay out nothing around them. */
  readonly steady?: boolean;
}

/** A number that matters: large, with its unit and what it may be off by beside it, smaller. */
export function NumberHero({
  label,
  value,
  unit,
  give,
  note,
  size = "large",
  steady = false,
}: NumberHeroProps) {
  return (
    <div className={`number number-${size}`}>
      <p className="number-label">{label}</p>
      <p className={steady ? "number-value steady-line" : "number-value"}>
        {steady ? (
          <Steady text={value} className="number-digits" />
        ) : (
          <span className="number-digits">{value}</span>
        )}
        {unit !== "" && <span className="number-unit"> {unit}</span>}
        {give !== undefined && <span className="number-give"> {give}</span>}
      </p>
      {note !== undefined && <p className="number-note">{note}</p>}
    </div>
  );
}
