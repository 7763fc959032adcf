import { useState } from "react";
import { AreaField, Button } from "../../parts/index.ts";
import { joinHeard } from "../../voice/index.ts";
import { joinNote, proseIn, strengthsIn } from "./note-strengths.ts";
import type { Sense } from "./sheet-fields.ts";
import { SpeakButton } from "./speak-button.tsx";
import { WordPicker } from "./word-picker.tsx";

export interface NoteFieldProps {
  readonly sense: Sense;
  readonly note: string;
  readonly onChange: (note: string) => void;
  readonly hint?: string;
}

const LONGEST = 8000;
const LABELS: Readonly<Record<Sense, string>> = { nose: "Nose", palate: "Palate", finish: "Finish" };

/** A note on one sense: typed, tapped together from words, or spoken. Intensities in it are set elsewhere and stay. */
export function NoteField({ sense, note, onChange, hint }: NoteFieldProps) {
  const [tapping, setTapping] = useState(false);
  const prose = proseIn(note);
  const write = (text: string): void => onChange(joinNote(text, strengthsIn(note)));
  return (
    <div className="note-field">
      <AreaField
        label={LABELS[sense]}
        rows={2}
        value={prose}
        onChange={write}
        wrong={
          note.length > LONGEST ? `a note requires at most ${LONGEST} characters, got ${note.length}` : null
        }
        {...(hint === undefined ? {} : { hint })}
      />
      <div className="note-tools">
        <Button kind="quiet" aria-expanded={tapping} onClick={() => setTapping(!tapping)}>
          Words<span className="unseen"> for the {sense}</span>
        </Button>
        <SpeakButton what={sense} onHeard={(heard) => write(joinHeard(prose, heard))} />
      </div>
      {tapping && <WordPicker sense={sense} note={prose} onChange={write} />}
    </div>
  );
}
