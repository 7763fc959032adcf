import { type ReactNode, useState } from "react";
import { Button, TextField } from "../../parts/index.ts";
import { PlusGlyph } from "../../parts/glyphs.tsx";
import "./pick-from-shelf.css";

export interface ShelfChoice {
  readonly key: string;
  readonly label: string;
  readonly sub: ReactNode;
}

export interface PickFromShelfProps {
  /** What picking does: "Pour a glass of". */
  readonly verb: string;
  readonly choices: readonly ShelfChoice[];
  readonly onPick: (key: string) => void;
  /** Why nothing can be picked just now. */
  readonly full?: string | null;
  readonly path?: string;
}

const FEW = 5;

/** A list to pick from, one tap each; long ones can be searched. */
export function PickFromShelf({ verb, choices, onPick, full = null, path }: PickFromShelfProps) {
  const [text, setText] = useState("");
  const [whole, setWhole] = useState(false);
  const wanted = text.trim().toLowerCase();
  const found = choices.filter(({ label }) => label.toLowerCase().includes(wanted));
  const shown = whole || wanted !== "" ? found : found.slice(0, FEW);
  return (
    <div className="pick">
      {choices.length > FEW && (
        <TextField
          label={`Search what to ${verb.charAt(0).toLowerCase()}${verb.slice(1)}`}
          quietLabel
          value={text}
          onChange={setText}
          input={{
            type: "search",
            placeholder: `Search ${choices.length} on the shelf`,
            // Return would send the form around it.
            onKeyDown: (event) => {
              if (event.key === "Enter") event.preventDefault();
            },
          }}
        />
      )}
      {full !== null && <p className="soft">{full}</p>}
      <ul className="pick-list">
        {shown.map(({ key, label, sub }) => (
          <li key={key}>
            <button
              type="button"
              className="pick-one"
              disabled={full !== null}
              data-path={path}
              onClick={() => {
                // A search that outlived its find would hide the rest of the shelf.
                setText("");
                onPick(key);
              }}
            >
              <PlusGlyph />
              <span>
                <span className="unseen">{verb} </span>
                <span className="name">{label}</span>
                <span className="pick-sub">{sub}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p className="soft">Nothing on the shelf is called that.</p>}
      {shown.length < found.length && (
        <Button kind="quiet" onClick={() => setWhole(true)}>
          Show all {found.length}
        </Button>
      )}
    </div>
  );
}
