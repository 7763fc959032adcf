import { useState } from "react";
import { Button, TextField } from "../../parts/index.ts";
import { noted } from "./blanks.ts";
import { GlassStrip } from "./glass-strip.tsx";
import { NoteField } from "./note-field.tsx";
import { readScore } from "./read-score.ts";
import { RestBar } from "./rest-bar.tsx";
import {
  noteKey,
  notesIn,
  type Pass,
  scoreKey,
  type Section,
  type Sense,
  SENSES,
  strengthKey,
  strengthsIn,
} from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";
import type { StepName } from "./step-nav.tsx";
import { useChips } from "./use-chips.ts";
import { TeachWord } from "./teach-word.tsx";
import type { SheetWords } from "./use-sheet-words.ts";
import { useRest } from "./use-rest.ts";
import { WholeGlass } from "./whole-glass.tsx";

export interface TasteStepProps extends SheetStepProps {
  readonly pass: Pass;
  /** The words that the sheet is read by. */
  readonly own: SheetWords;
  readonly code: string;
  readonly onGlass: (code: string) => void;
  /** The step that comes after this one. */
  readonly next: StepName;
  readonly onDone: () => void;
}

const ASKS: Readonly<Record<Sense, string>> = {
  nose: "What you smell before you taste.",
  palate: "What it tastes of, and how it feels.",
  finish: "What stays, and for how long.",
};

const GO_TO: Readonly<Record<StepName, string>> = {
  sets: "Go to the sets",
  first: "Begin the first pass",
  second: "Begin the second pass",
  names: "Go to the names",
  rank: "Go to the ranking",
  lock: "Go to the lock",
};

/** One glass at a time: its number large, three notes, a score if wanted. */
export function TasteStep({
  sheet,
  fields,
  set,
  heading,
  pass,
  own,
  code,
  onGlass,
  onDone,
  ...then
}: TasteStepProps) {
  const at = sheet.glasses.findIndex((glass) => glass.code === code);
  const next = sheet.glasses[at + 1]?.code;
  const notes = notesIn(fields, code);
  const alone = sheet.pouring === "alone";
  const words = sheet.asks.answers !== null ? "Notes" : pass === "first" ? "First pass" : "Second pass";
  const rest = useRest(sheet.id);
  const write = (sense: Sense, text: string): void => set(noteKey(code, pass, sense), text);
  const strong = (section: Section) => ({
    strengths: strengthsIn(fields, code, pass, section),
    before: pass === "second" ? strengthsIn(fields, code, "first", section) : null,
    onChange: (attribute: string, value: number | null): void =>
      set(strengthKey(code, pass, section, attribute), value),
  });
  const read = useChips({ sheet: sheet.id, code, pass, fields, notes: notes[pass], set, own });
  return (
    <section className="taste">
      <GlassStrip
        title={words}
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
          {words}, {alone ? "the glass at place" : "glass"}
        </span>{" "}
        <span className="taste-code">{code}</span>
        {!alone && (
          <span className="taste-of">
            {" "}
            {at + 1} of {sheet.glasses.length}
          </span>
        )}
      </h2>
      <RestBar rest={rest} position={at + 1} glasses={sheet.glasses.length} />
      {SENSES.map((sense) => (
        <div key={sense} className={pass === "second" ? "taste-both" : ""}>
          {pass === "second" && (
            <div className="taste-before">
              <p className="taste-before-head">First pass, {sense}</p>
              <p>{notes.first[sense] === "" ? <em>nothing noted</em> : notes.first[sense]}</p>
            </div>
          )}
          <NoteField
            sense={sense}
            note={notes[pass][sense]}
            onChange={(text) => write(sense, text)}
            strong={strong(sense)}
            read={read}
            {...(pass === "first" && at === 0 ? { hint: ASKS[sense] } : {})}
          />
        </div>
      ))}
      <TeachWord own={own} offers={read.offers} />
      <WholeGlass {...strong("whole")} />
      <ScoreField
        code={code}
        what={sheet.target === null ? "Score" : `How close to ${sheet.target}`}
        score={notes.score}
        onChange={(score) => set(scoreKey(code), score)}
      />
      <div className="form-actions">
        {next === undefined ? (
          <Button kind="main" onClick={onDone}>
            {GO_TO[then.next]}
          </Button>
        ) : (
          <Button
            kind="main"
            onClick={() => {
              rest.begin();
              onGlass(next);
            }}
          >
            Next: {alone ? "place" : "glass"} {next}
          </Button>
        )}
      </div>
    </section>
  );
}

interface ScoreFieldProps {
  readonly code: string;
  /** What the number is of: closeness where the sheet asks for that. */
  readonly what: string;
  readonly score: number | null;
  readonly onChange: (score: number | null) => void;
}

function ScoreField({ code, what, score, onChange }: ScoreFieldProps) {
  const [text, setText] = useState(score === null ? "" : String(score));
  const read = readScore(text);
  return (
    <div className="taste-score">
      <TextField
        label={
          <>
            {what}
            <span className="unseen"> for glass {code}</span>
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
