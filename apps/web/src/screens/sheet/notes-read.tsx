import type { GlassNotes, GlassStrength } from "@partsproof/house/protocol";
import type { z } from "zod";
import { type Pass, type Section, SENSES } from "./sheet-fields.ts";
import { strengthWords } from "./strength-words.ts";
import "./notes-read.css";

const PASS_NAMES = { first: "First pass", second: "Second pass" } as const;
const NAMES: Readonly<Record<Section, string>> = {
  nose: "nose",
  palate: "palate",
  finish: "finish",
  whole: "all in all",
};

interface NotesReadProps {
  readonly notes: z.infer<typeof GlassNotes> | null;
  readonly strengths: readonly GlassStrength[];
}

/** The notes on one glass, both passes, and how strong it was said to be; what was left blank is left out. */
export function NotesRead({ notes, strengths }: NotesReadProps) {
  const of = (pass: Pass, section: Section) => ({
    section,
    text: section === "whole" ? "" : (notes?.[pass][section] ?? "").trim(),
    strong: strengthWords(
      new Map(
        strengths
          .filter((said) => said.pass === pass && said.section === section)
          .map(({ attribute, strength }) => [attribute, strength]),
      ),
    ),
  });
  const passes = (["first", "second"] as const)
    .map((pass) => ({
      pass,
      said: ([...SENSES, "whole"] as const)
        .map((section) => of(pass, section))
        .filter(({ text, strong }) => text !== "" || strong !== ""),
    }))
    .filter(({ said }) => said.length > 0);
  const score = notes?.score ?? null;
  if (passes.length === 0 && score === null) return <p className="soft">Nothing noted.</p>;
  return (
    <div className="notes">
      {passes.map(({ pass, said }) => (
        <div key={pass}>
          <p className="notes-pass">{PASS_NAMES[pass]}</p>
          <dl>
            {said.map(({ section, text, strong }) => (
              <div key={section}>
                <dt>{NAMES[section]}</dt>
                {text !== "" && <dd>{text}</dd>}
                {strong !== "" && <dd className="notes-strong">{strong} of 10</dd>}
              </div>
            ))}
          </dl>
        </div>
      ))}
      {score !== null && (
        <p className="notes-score">
          Score <span>{score}</span> of 100
        </p>
      )}
    </div>
  );
}
