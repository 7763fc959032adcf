import type { Sheet } from "@partsproof/house/protocol";
import { Button } from "../../parts/index.ts";
import type { Choice, Clash } from "./clash.ts";
import { attributeName } from "@partsproof/core/sensory";
import type { FieldValue } from "./sheet-fields.ts";

interface ClashPanelProps {
  readonly clash: Clash;
  readonly sheet: Sheet;
  readonly onChoose: (choice: Choice) => void;
}

/** Two devices wrote on one sheet: both shown, side by side, and nothing sent until the taster says which. */
export function ClashPanel({ clash, sheet, onChoose }: ClashPanelProps) {
  return (
    <section className="clash" role="alert">
      <h2>This sheet was also written on another device</h2>
      <p>Nothing is merged by itself. What is here stays on this device until you choose.</p>
      <dl className="clash-lines">
        {clash.lines.map(({ key, here, there }) => (
          <div key={key}>
            <dt>{fieldWords(key)}</dt>
            <dd>
              <span className="clash-side">here</span> {valueWords(here, sheet)}
            </dd>
            <dd>
              <span className="clash-side">there</span> {valueWords(there, sheet)}
            </dd>
          </div>
        ))}
      </dl>
      <div className="form-actions">
        <Button kind="main" onClick={() => onChoose("both")}>
          Keep both texts
        </Button>
        <Button onClick={() => onChoose("here")}>Write mine over it</Button>
        <Button onClick={() => onChoose("there")}>Take the other device’s</Button>
      </div>
      <p className="field-hint">
        Where only one can stand, a guess, a score, a strength, a ranking, an answer, keeping both keeps the
        one that is here.
      </p>
    </section>
  );
}

function fieldWords(key: string): string {
  const [what = "", code = "", pass = "", sense = ""] = key.split("/");
  if (what === "note") return `Glass ${code}, ${sense}, ${pass} pass`;
  if (what === "strength")
    return `Glass ${code}, ${attributeName(key.split("/").at(-1) ?? "")} (${sense}), ${pass} pass`;
  if (what === "answer") return `Set ${code}, answer`;
  if (what === "score") return `Glass ${code}, score`;
  if (what === "sure") return `Glass ${code}, how sure of the guess, in per cent`;
  return what === "guess" ? `Glass ${code}, guess` : "Ranking";
}

function valueWords(value: FieldValue, sheet: Sheet): string {
  if (value === null || value === "") return "nothing";
  if (Array.isArray(value)) return value.map((tie) => tie.join(" level with ")).join(", then ");
  return sheet.namesOnOffer.find((name) => name.nameId === value)?.label ?? String(value);
}
