import type { ReactNode } from "react";

/** The panel for the one thing to do next. */
export function Step({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="step" aria-label={`Next: ${title}`}>
      <p className="step-next">Next</p>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
