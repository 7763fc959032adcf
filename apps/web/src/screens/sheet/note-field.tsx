import { useRef, useState } from "react";
import { AreaField, Button } from "../../parts/index.ts";
import type { Chip } from "../../noting/index.ts";
import { joinHeard } from "../../voice/index.ts";
import type { Chips } from "./use-chips.ts";
import { HowStrong, type HowStrongProps } from "./how-strong.tsx";
import { MarkedWords } from "./marked-words.tsx";
import { NoteChips } from "./note-chips.tsx";
import type { Sense } from "./sheet-fields.ts";
import { SpeakButton } from "./speak-button.tsx";
import { strengthWords } from "./strength-words.ts";
import { WordPicker } from "./word-picker.tsx";

export interface NoteFieldProps {
  readonly sense: Sense;
  readonly note: string;
  readonly onChange: (note: string) => void;
  readonly hint?: string;
  /** How strong it is in what it has, 0 to 10. */
  readonly strong: Omit<HowStrongProps, "section">;
  /** What was read in the notes of this glass. */
  readonly read: Chips;
}

const LONGEST = 8000;
const LABELS: Readonly<Record<Sense, string>> = { nose: "Nose", palate: "Palate", finish: "Finish" };

/** A note on one sense: typed, tapped together from words, or spoken, and how strong it is if wanted. */
export function NoteField({ sense, note, onChange, hint, strong, read }: NoteFieldProps) {
  const [open, setOpen] = useState<"words" | "strong" | null>(null);
  const turn = (what: "words" | "strong"): void => setOpen(open === what ? null : what);
  const [marked, setMarked] = useState<Chip | null>(null);
  const around = useRef<HTMLDivElement>(null);
  const words = strengthWords(
    new Map([...strong.strengths].filter(([attribute]) => !read.spokenFor.has(`${sense}/${attribute}`))),
  );
  return (
    <div className="note-field">
      <div className="note-text" ref={around}>
        <AreaField
          label={LABELS[sense]}
          rows={2}
          value={note}
          onChange={onChange}
          wrong={
            note.length > LONGEST ? `a note requires at most ${LONGEST} characters, got ${note.length}` : null
          }
          {...(hint === undefined ? {} : { hint })}
        />
      </div>
      {/* Typed since it was read, the words have moved: they are read again in a moment. */}
      {marked !== null && note.slice(...marked.quote) === marked.words && (
        <MarkedWords around={around} text={note} quote={marked.quote} />
      )}
      <NoteChips
        sense={sense}
        chips={read.chips[sense]}
        onPut={read.put}
        onTeach={read.teach}
        onMark={setMarked}
        hint={hint !== undefined}
      />
      <div className="note-tools">
        <Button kind="quiet" aria-expanded={open === "words"} onClick={() => turn("words")}>
          Words<span className="unseen"> for the {sense}</span>
        </Button>
        <Button kind="quiet" aria-expanded={open === "strong"} onClick={() => turn("strong")}>
          How strong<span className="unseen"> the {sense} is</span>
        </Button>
        <SpeakButton what={sense} onHeard={(heard) => onChange(joinHeard(note, heard))} />
      </div>
      {words !== "" && open !== "strong" && <p className="strong-words">By hand: {words} of 10</p>}
      {open === "words" && <WordPicker sense={sense} note={note} onChange={onChange} />}
      {open === "strong" && <HowStrong {...strong} section={sense} />}
    </div>
  );
}
