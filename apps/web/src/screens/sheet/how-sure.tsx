import { announce } from "../../parts/index.ts";
import { type Fields, sureIn, sureKey } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";

/** Few and wide apart: nobody feels the difference between 65 and 70. Common practice, no source. */
const LEVELS = [10, 30, 50, 70, 90] as const;

interface Props {
  readonly fields: Fields;
  readonly set: SheetStepProps["set"];
  readonly code: string;
}

/** How sure a guess is, if one likes: said again, it is taken back. */
export function HowSure({ fields, set, code }: Props) {
  const sure = sureIn(fields, code);
  const levels =
    sure === null || LEVELS.some((level) => level === sure)
      ? LEVELS
      : [...LEVELS, sure].toSorted((a, b) => a - b);
  return (
    <fieldset className="field board-sure">
      <legend className="field-label">
        How sure are you?<span className="field-optional"> (if you like)</span>
      </legend>
      <div className="board-levels">
        {levels.map((level) => (
          <button
            key={level}
            type="button"
            className="button button-plain"
            aria-pressed={sure === level}
            onClick={() => {
              set(sureKey(code), sure === level ? null : level);
              announce(sure === level ? "How sure: taken back" : `${level} per cent sure`);
            }}
          >
            {level}&nbsp;%
          </button>
        ))}
      </div>
    </fieldset>
  );
}
