import type { ReactNode } from "react";

/** A table that may be wider than its place: a keyboard scrolls it too. */
export const Scrolled = ({ children }: { readonly children: ReactNode }) => (
  // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- scrolls sideways (WCAG 2.1.1)
  <div className="plot-scroll" tabIndex={0} role="group" aria-label="Table">
    {children}
  </div>
);
