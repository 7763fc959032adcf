import { memo, useEffect, useId, useRef, useState } from "react";
import type { Chip, Put } from "../../noting/index.ts";
import { ChipPanel } from "./chip-panel.tsx";
import { chipAside, chipSaid, chipTitle, hasStrength } from "./chip-words.ts";
import type { Sense } from "./sheet-fields.ts";
import type { Chips } from "./use-chips.ts";
import "./note-chips.css";

interface NoteChipsProps {
  readonly sense: Sense;
  /** Those of this note. */
  readonly chips: readonly Chip[];
  readonly onPut: (chip: Chip, to: Put | null) => void;
  readonly onTeach: Chips["teach"];
  /** Whose words are to be marked; must stay the same function. */
  readonly onMark: (chip: Chip | null) => void;
  readonly hint: boolean;
}

const idOf = ({ quote, from }: Chip): string => `${quote[0]} ${from}`;

/** What was read in a note, one chip a flavour; one pressed opens to be put right, and its words are marked meanwhile. */
export const NoteChips = memo(function NoteChips({
  sense,
  chips,
  onPut,
  onTeach,
  onMark,
  hint,
}: NoteChipsProps) {
  const id = useId();
  const list = useRef<HTMLUListElement>(null);
  const [open, setOpen] = useState<string | null>(null);
  const [near, setNear] = useState<string | null>(null);
  const opened = chips.find((chip) => idOf(chip) === open);
  const marked = chips.find((chip) => idOf(chip) === near) ?? opened ?? null;
  useEffect(() => onMark(marked), [marked, onMark]);
  const focusOn = (wanted: Chip | undefined): void => {
    const at = wanted === undefined ? -1 : chips.indexOf(wanted);
    list.current?.querySelectorAll("button")[at]?.focus();
  };
  const close = (): void => {
    focusOn(opened);
    setOpen(null);
  };
  if (chips.length === 0) return null;
  return (
    <div className="chips">
      <ul className="chips-row" ref={list} aria-label={`Read in the note on the ${sense}`}>
        {chips.map((chip) => {
          const key = idOf(chip);
          const aside = chipAside(chip);
          const near = (is: boolean) => () => setNear((was) => (is ? key : was === key ? null : was));
          return (
            <li key={key}>
              <button
                type="button"
                className={`chip ${hasStrength(chip.attribute) ? "" : "chip-words"}`}
                aria-label={chipSaid(chip)}
                aria-expanded={key === open}
                aria-controls={key === open ? `${id}-panel` : undefined}
                onClick={() => setOpen(key === open ? null : key)}
                onFocus={near(true)}
                onBlur={near(false)}
                onPointerEnter={near(true)}
                onPointerLeave={near(false)}
                onKeyDown={(event) => event.key === "Escape" && setOpen(null)}
              >
                {chipTitle(chip)}
                {aside !== "" && <span className="chip-aside"> {aside}</span>}
                {hasStrength(chip.attribute) && <span className="chip-number"> {chip.strength}</span>}
              </button>
            </li>
          );
        })}
      </ul>
      {hint && <p className="field-hint">Read on this device, 0 to 10. Tap one to put it right.</p>}
      {opened !== undefined && (
        <ChipPanel
          key={open}
          id={`${id}-panel`}
          chip={opened}
          onPut={(to) => onPut(opened, to)}
          onTeach={(to) => onTeach(opened, to)}
          onClose={close}
          onRemove={() => {
            const at = chips.indexOf(opened);
            focusOn(chips[at + 1] ?? chips[at - 1]);
            setOpen(null);
            onPut(opened, null);
          }}
        />
      )}
    </div>
  );
});
