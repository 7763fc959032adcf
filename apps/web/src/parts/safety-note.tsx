import type { ReactNode } from "react";
import { CareGlyph } from "./glyphs.tsx";
import "./safety-note.css";

/** What can hurt, said where it can. */
export function SafetyNote({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <aside className="safety" aria-label={title}>
      <CareGlyph />
      <div>
        <p className="safety-title">{title}</p>
        {children}
      </div>
    </aside>
  );
}
