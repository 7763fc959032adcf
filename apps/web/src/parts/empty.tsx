import type { ReactNode } from "react";
import "./states.css";

export interface EmptyProps {
  /** What there is none of, as a sentence. */
  readonly title: string;
  readonly children?: ReactNode;
  /** The one thing to do next. */
  readonly action?: ReactNode;
}

export function Empty({ title, children, action }: EmptyProps) {
  return (
    <section className="state">
      <h2>{title}</h2>
      {children}
      {action !== undefined && <div className="state-actions">{action}</div>}
    </section>
  );
}
