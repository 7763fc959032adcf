import { ATTRIBUTES } from "@partsproof/core/sensory";
import { useCallback, useState } from "react";
import { SelectField, Strip } from "../../parts/index.ts";
import { attributeName } from "@partsproof/core/sensory";
import { QUICK } from "./quick-strengths.data.ts";
import type { Section } from "./sheet-fields.ts";
import type { Strengths } from "./strength-words.ts";

export interface HowStrongProps {
  readonly section: Section;
  readonly strengths: Strengths;
  /** Those of the first pass, to see beside each strip of the second. */
  readonly before: Strengths | null;
  readonly onChange: (attribute: string, value: number | null) => void;
}

/** A strip for each quick attribute, and any other on demand. Nothing set is not 0. */
export function HowStrong({ section, strengths, before, onChange }: HowStrongProps) {
  const [more, setMore] = useState<readonly string[]>([]);
  const shown = [...new Set([...QUICK[section], ...strengths.keys(), ...(before?.keys() ?? []), ...more])];
  const others = ATTRIBUTES.filter(({ id }) => !shown.includes(id));
  const change = useCallback((id: string, value: number | null) => onChange(id, value), [onChange]);
  const of = section === "whole" ? "all in all" : section;
  return (
    <div className="strong" role="group" aria-label={`How strong, ${of}, 0 to 10`}>
      <div className="strips">
        {shown.map((id) => {
          const was = before?.get(id);
          const said = strengths.has(id);
          return (
            <Strip
              key={id}
              id={id}
              name={attributeName(id)}
              said={`${attributeName(id)}, ${of}`}
              value={strengths.get(id) ?? null}
              onChange={change}
              max={10}
              step={1}
              unset="not said"
            >
              {said || was !== undefined ? (
                <>
                  {was !== undefined && <span className="strong-was">first pass: {was}</span>}
                  {said && (
                    <button type="button" className="strong-back" onClick={() => change(id, null)}>
                      Take it back
                      <span className="unseen">
                        : {attributeName(id)}, {of}
                      </span>
                    </button>
                  )}
                </>
              ) : undefined}
            </Strip>
          );
        })}
      </div>
      <SelectField
        label={`Another${section === "whole" ? "" : `, ${section}`}`}
        value=""
        onChange={(id) => id !== "" && setMore([...more, id])}
        options={
          <>
            <option value="">Choose what else it has</option>
            {others.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </>
        }
      />
    </div>
  );
}
