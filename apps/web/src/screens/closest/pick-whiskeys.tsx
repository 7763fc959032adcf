import type { ShelfWhiskey } from "@partsproof/core/blending";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import { SelectField } from "../../parts/index.ts";

export interface PickWhiskeysProps {
  readonly label: string;
  readonly path: readonly string[];
  readonly picked: readonly string[];
  readonly onChange: (ids: readonly string[]) => void;
  readonly whiskeys: readonly ShelfWhiskey[];
  readonly nameOf: (id: string) => string;
}

/** Several whiskeys, chosen one after the other. */
export function PickWhiskeys({ label, path, picked, onChange, whiskeys, nameOf }: PickWhiskeysProps) {
  return (
    <div className="pick">
      <SelectField
        label={label}
        path={path}
        value=""
        onChange={(id) => {
          if (id !== "") onChange([...picked, id]);
        }}
        options={
          <>
            <option value="">{picked.length === 0 ? "choose …" : "another …"}</option>
            {whiskeys
              .filter(({ id }) => !picked.includes(id))
              .map(({ id }) => (
                <option key={id} value={id}>
                  {nameOf(id)}
                </option>
              ))}
          </>
        }
      />
      <ul>
        {picked.map((id) => (
          <li key={id} className="pick-one">
            <span className="name">{nameOf(id)}</span>
            <button
              type="button"
              className="drop"
              aria-label={`Not ${nameOf(id)}`}
              onClick={() => onChange(picked.filter((other) => other !== id))}
            >
              <CrossGlyph />
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
