import { useState } from "react";
import { AreaField, Button, TextField } from "../../parts/index.ts";
import { noted } from "./blanks.ts";
import { GlassStrip } from "./glass-strip.tsx";
import { readScore } from "./read-score.ts";
import { noteKey, notesIn, type Pass, scoreKey, type Sense, SENSES } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";

export interface TasteStepProps extends SheetStepProps {
  readonly pass: Pass;
  readonly code: string;
  readonly onGlass: (code: string) => void;
  readonly onDone: () => void;
}

const LONGEST = 8000;

const ASKS: Readonly<Record<Sense, { readonly label: string; readonly hint: string }>> = {
  nose: { label: "Nose", hint: "What you smell before you taste." },
  palate: { label: "Palate", hint: "What it tastes of, and how it feels." },
  finish: { label: "Finish", hint: "What stays, and for how long." },
};

/** One glass at a time: its number large, three notes, a score if wanted. */
export function TasteStep({ sheet, fields, set, heading, pass, code, onGlass, onDone }: TasteStepProps) {
  const at = sheet.glasses.findIndex((glass) => glass.code === code);
  const next = sheet.glasses[at + 1]?.code;
  const notes = notesIn(fields, code);
  const alone = sheet.pouring === "alone";
  return (
    <section className="taste">
      <GlassStrip
        title={pass === "first" ? "First pass" : "Second pass"}
        picked={code}
        onPick={onGlass}
        glasses={sheet.glasses.map((glass) => ({
          code: glass.code,
          done: noted(fields, glass.code, pass),
          word: noted(fields, glass.code, pass) ? "noted" : "blank",
        }))}
      />
      <h2 ref={heading} tabIndex={-1} className="taste-head">
        <span className="taste-pass">
          {pass === "first" ? "First pass" : "Second pass"}, {alone ? "the glass at place" : "glass"}
        </span>{" "}
        <span className="taste-code">{code}</span>
        {!alone && (
          <span className="taste-of">
            {" "}
            {at + 1} of {sheet.glasses.length}
          </span>
        )}
      </h2>
      {SENSES.map((sense) => (
        <div key={sense} className={pass === "second" ? "taste-both" : ""}>
          {pass === "second" && (
            <div className="taste-before">
              <p className="taste-before-head">First pass, {sense}</p>
              <p>{notes.first[sense] === "" ? <em>nothing noted</em> : notes.first[sense]}</p>
            </div>
          )}
          <AreaField
            label={ASKS[sense].label}
            rows={2}
            value={notes[pass][sense]}
            onChange={(text) => set(noteKey(code, pass, sense), text)}
            wrong={
              notes[pass][sense].length > LONGEST
                ? `a note requires at most ${LONGEST} characters, got ${notes[pass][sense].length}`
                : null
            }
            {...(pass === "first" && at === 0 ? { hint: ASKS[sense].hint } : {})}
          />
        </div>
      ))}
      <ScoreField code={code} score={notes.score} onChange={(score) => set(scoreKey(code), score)} />
      <div className="form-actions">
        {next === undefined ? (
          <Button kind="main" onClick={onDone}>
            {pass === "first" ? "Begin the second pass" : "Go to the names"}
          </Button>
        ) : (
          <Button kind="main" onClick={() => onGlass(next)}>
            Next: {alone ? "place" : "glass"} {next}
          </Button>
        )}
      </div>
    </section>
  );
}

interface ScoreFieldProps {
  readonly code: string;
  readonly score: number | null;
  readonly onChange: (score: number | null) => void;
}

function ScoreField({ code, score, onChange }: ScoreFieldProps) {
  const [text, setText] = useState(score === null ? "" : String(score));
  const read = readScore(text);
  return (
    <div className="taste-score">
      <TextField
        label={
          <>
            Score<span className="unseen"> for glass {code}</span>
          </>
        }
        optional
        value={text}
        onChange={(typed) => {
          setText(typed);
          const now = readScore(typed);
          if (now.ok) onChange(now.score);
        }}
        unit="of 100"
        input={{ inputMode: "decimal", maxLength: 8 }}
        wrong={read.ok ? null : read.why}
      />
    </div>
  );
}
