import { useEffect, useRef } from "react";
import { ATTRIBUTES } from "@partsproof/core/sensory";
import { announce, Button, SelectField, Strip } from "../../parts/index.ts";
import type { Chip, Put } from "../../noting/index.ts";
import type { Meaning } from "@partsproof/house/protocol";
import { chipName, hasStrength, sectionName } from "./chip-words.ts";
import { TeachChip } from "./teach-chip.tsx";
import { type Section, SENSES } from "./sheet-fields.ts";

interface ChipPanelProps {
  readonly id: string;
  readonly chip: Chip;
  readonly onPut: (to: Put) => void;
  /** False where nothing can be learned from its words. */
  readonly onTeach: (to: Meaning) => boolean;
  readonly onRemove: () => void;
  readonly onClose: () => void;
}

/** Puts one chip right: what it is, how strong, where. What is changed here counts at once. */
export function ChipPanel({ id, chip, onPut, onTeach, onRemove, onClose }: ChipPanelProps) {
  const { attribute, section, strength } = chip;
  const put = (some: Partial<Put>): void => onPut({ attribute, section, strength, ...some });
  const name = chipName(attribute);
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const within = panel.current;
    const key = (event: KeyboardEvent): void => {
      if (event.key === "Escape") onClose();
    };
    within?.addEventListener("keydown", key);
    return () => within?.removeEventListener("keydown", key);
  }, [onClose]);
  return (
    <div id={id} ref={panel} className="chip-panel" role="group" aria-label={`Put right: “${chip.words}”`}>
      <p className="chip-of">“{chip.words}”</p>
      <div className="chip-choices">
        <SelectField
          label="What it is"
          value={attribute}
          onChange={(to) => put({ attribute: to })}
          options={
            <>
              {!hasStrength(attribute) && <option value={attribute}>{name}</option>}
              {ATTRIBUTES.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </>
          }
        />
        <SelectField
          label="Where"
          value={section}
          onChange={(to) => put({ section: to as Section })}
          options={[...SENSES, "whole" as const].map((one) => (
            <option key={one} value={one}>
              {sectionName(one)}
            </option>
          ))}
        />
      </div>
      {hasStrength(attribute) ? (
        <Strip
          id={attribute}
          name="How strong"
          said={`${name}, how strong`}
          value={strength}
          onChange={(_, value) => value !== null && put({ strength: value })}
          max={10}
          step={1}
          unset="not said"
        />
      ) : (
        <p className="field-hint">Kept as words: it has no strength until it is called something else.</p>
      )}
      <TeachChip chip={chip} onTeach={onTeach} onTaught={onClose} />
      <div className="form-actions">
        <Button
          kind="danger"
          onClick={() => {
            onRemove();
            announce(`${name} removed`);
          }}
        >
          Remove<span className="unseen"> {name}</span>
        </Button>
        <Button onClick={onClose}>Done</Button>
      </div>
    </div>
  );
}
