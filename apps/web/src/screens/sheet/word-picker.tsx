import { useState } from "react";
import { familiesFor, hasWord, tapWord } from "./tap-words.ts";
import type { Sense } from "./sheet-fields.ts";

interface WordPickerProps {
  readonly sense: Sense;
  readonly note: string;
  readonly onChange: (note: string) => void;
}

/** Two taps to a word: its family, then the word, which goes into the note like one typed. */
export function WordPicker({ sense, note, onChange }: WordPickerProps) {
  const families = familiesFor(sense);
  const [open, setOpen] = useState(families[0]?.id ?? "");
  const shown = families.find(({ id }) => id === open);
  return (
    <div className="words" role="group" aria-label={`Words for the ${sense}`}>
      <ul className="words-row words-families" aria-label="Families">
        {families.map(({ id, name, words }) => {
          const count = words.filter((word) => hasWord(note, word)).length;
          return (
            <li key={id}>
              <button type="button" aria-pressed={id === open} onClick={() => setOpen(id)}>
                {name}
                {count > 0 && (
                  <span className="words-count">
                    {count}
                    <span className="unseen"> in the note</span>
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ul>
      {shown !== undefined && (
        <ul className="words-row words-words" aria-label={`Words: ${shown.name}`}>
          {shown.words.map((word) => {
            const has = hasWord(note, word);
            return (
              <li key={word}>
                <button type="button" aria-pressed={has} onClick={() => onChange(tapWord(note, word))}>
                  {has && <span aria-hidden="true">✓ </span>}
                  {word}
                </button>
              </li>
            );
          })}
        </ul>
      )}
    </div>
  );
}
