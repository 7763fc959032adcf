import type { ReactNode } from "react";
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
}

/** A number that matters: large, with its unit and what it may be off by beside it, smaller. */
export function NumberHero({ label, value, unit, give, note, size = "large" }: NumberHeroProps) {
  return (
    <div className={`number number-${size}`}>
      <p className="number-label">{label}</p>
      <p className="number-value">
        <span className="number-digits">{value}</span>
        {unit !== "" && <span className="number-unit"> {unit}</span>}
        {give !== undefined && <span className="number-give"> {give}</span>}
      </p>
      {note !== undefined && <p className="number-note">{note}</p>}
    </div>
  );
}
