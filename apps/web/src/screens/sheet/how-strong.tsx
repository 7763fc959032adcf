import { ATTRIBUTES } from "@partsproof/core/sensory";
import { useCallback, useState } from "react";
import { SelectField, Strip } from "../../parts/index.ts";
import { strengthsIn, withStrength } from "./note-strengths.ts";
import { QUICK } from "./quick-strengths.data.ts";

interface HowStrongProps {
  /** The note that the intensities stand in. */
  readonly note: string;
  /** That of the first pass, to see beside each strip of the second. */
  readonly before: string | null;
  readonly onChange: (note: string) => void;
}

const NAMES: ReadonlyMap<string, string> = new Map(ATTRIBUTES.map(({ id, name }) => [id, name]));

/** How strong a glass is in what it tastes of, folded away until it is wanted. */
export function HowStrong(props: HowStrongProps) {
  const set = strengthsIn(props.note);
  const [open, setOpen] = useState(set.size > 0);
  const words = [...set].map(([id, value]) => `${NAMES.get(id) ?? id} ${value}`).join(", ");
  return (
    <section className="strong" aria-label="How strong">
      <button type="button" className="strong-head" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span aria-hidden="true">{open ? "▾" : "▸"}</span>
        <span>How strong</span>
        <span className="strong-words">{words === "" ? "0 to 10, if you like" : words}</span>
      </button>
      {open && <Strips {...props} />}
    </section>
  );
}

/** A strip for each quick attribute, and any other on demand. Nothing set is not 0. */
function Strips({ note, before, onChange }: HowStrongProps) {
  const [more, setMore] = useState<readonly string[]>([]);
  const set = strengthsIn(note);
  const first = before === null ? null : strengthsIn(before);
  const shown = [...new Set<string>([...QUICK, ...set.keys(), ...(first?.keys() ?? []), ...more])];
  const others = ATTRIBUTES.filter(({ id }) => !shown.includes(id));
  const change = useCallback(
    (id: string, value: number | null) => onChange(withStrength(note, id, value)),
    [note, onChange],
  );
  return (
    <>
      <div className="strips">
        {shown.map((id) => {
          const was = first?.get(id);
          const said = set.has(id);
          return (
            <Strip
              key={id}
              id={id}
              name={NAMES.get(id) ?? id}
              value={set.get(id) ?? null}
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
                      Take it back<span className="unseen">: {NAMES.get(id)}</span>
                    </button>
                  )}
                </>
              ) : undefined}
            </Strip>
          );
        })}
      </div>
      <SelectField
        label="Another"
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
    </>
  );
}
