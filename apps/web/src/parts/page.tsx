import { type ReactNode, useEffect, useRef } from "react";
import { hasMoved, Link } from "../router/index.ts";
import "./page.css";

export interface PageProps {
  /** The heading, and the title of the window. */
  readonly title: string;
  /** The heading as drawn, where it is more than its words. */
  readonly heading?: ReactNode;
  /** One line under the heading. */
  readonly lead?: ReactNode;
  readonly back?: { readonly to: string; readonly label: string };
  /** Beside the heading: what can be done with the whole page. */
  readonly actions?: ReactNode;
  /** Uses the whole width of a laptop, for tables and two columns. */
  readonly wide?: boolean;
  readonly children?: ReactNode;
}

/** A page with its one h1. Coming from another screen, the heading takes the focus, so a reader hears where they are. */
export function Page({ title, heading, lead, back, actions, wide = false, children }: PageProps) {
  const h1 = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = title === "Parts & Proof" ? title : `${title} · Parts & Proof`;
  }, [title]);
  useEffect(() => {
    if (hasMoved()) h1.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div className={`page ${wide ? "page-wide" : ""}`}>
      {back !== undefined && (
        <p className="page-back no-paper">
          <Link to={back.to}>
            <span aria-hidden="true">←</span> {back.label}
          </Link>
        </p>
      )}
      <header className="page-head">
        <div>
          <h1 ref={h1} tabIndex={-1}>
            {heading ?? title}
          </h1>
          {lead !== undefined && <p className="page-lead">{lead}</p>}
        </div>
        {actions !== undefined && <div className="page-actions no-paper">{actions}</div>}
      </header>
      {children}
    </div>
  );
}

export interface SectionProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly action?: ReactNode;
  readonly className?: string;
}

/** A part of a page under an h2. */
export function Section({ title, children, action, className }: SectionProps) {
  return (
    <section className={`section ${className ?? ""}`}>
      <header className="section-head">
        <h2>{title}</h2>
        {action}
      </header>
      {children}
    </section>
  );
}
