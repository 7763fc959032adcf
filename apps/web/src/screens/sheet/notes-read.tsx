import type { GlassNotes } from "@partsproof/house/protocol";
import type { z } from "zod";
import { SENSES } from "./sheet-fields.ts";
import "./notes-read.css";

const PASS_NAMES = { first: "First pass", second: "Second pass" } as const;

/** The notes on one glass, both passes; what was left blank is left out. */
export function NotesRead({ notes }: { readonly notes: z.infer<typeof GlassNotes> | null }) {
  const passes = (["first", "second"] as const).filter((pass) =>
    SENSES.some((sense) => (notes?.[pass][sense] ?? "").trim() !== ""),
  );
  if (notes === null || (passes.length === 0 && notes.score === null)) {
    return <p className="soft">Nothing noted.</p>;
  }
  return (
    <div className="notes">
      {passes.map((pass) => (
        <div key={pass}>
          <p className="notes-pass">{PASS_NAMES[pass]}</p>
          <dl>
            {SENSES.filter((sense) => notes[pass][sense].trim() !== "").map((sense) => (
              <div key={sense}>
                <dt>{sense}</dt>
                <dd>{notes[pass][sense]}</dd>
              </div>
            ))}
          </dl>
        </div>
      ))}
      {notes.score !== null && (
        <p className="notes-score">
          Score <span>{notes.score}</span> of 100
        </p>
      )}
    </div>
  );
}
