import type { LearnedWord, Meaning } from "@partsproof/house/protocol";
import { useState } from "react";
import { announce, Button, SelectField, TextField } from "../../parts/index.ts";
import { meaningName, meaningOptions } from "../household/meaning-options.tsx";
import type { SheetWords } from "./use-sheet-words.ts";

/** A word that nobody else would read: what the taster means by it, from now on. */
export function TeachWord({
  own,
  offers,
}: {
  readonly own: SheetWords;
  readonly offers: readonly LearnedWord[];
}) {
  const [open, setOpen] = useState(false);
  const [phrase, setPhrase] = useState("");
  const [means, setMeans] = useState<Meaning>("wood.old");
  const [wrong, setWrong] = useState<string | null>(null);
  const teach = (): void => {
    const said = phrase.trim();
    const count = said.split(/\s+/).length;
    if (!/[\p{L}\p{N}]/u.test(said) || count > 9) {
      setWrong(`a word requires one to nine words, of letters or digits, got ${said === "" ? "none" : said}`);
      return;
    }
    own.teach({ phrase: said, attribute: means });
    announce(`Learned: by “${said}” you mean ${meaningName(means)}`);
    setPhrase("");
    setWrong(null);
    setOpen(false);
  };
  return (
    <div className="teach-word">
      {offers.map((offer) => (
        <Button
          key={`${offer.phrase} ${offer.attribute}`}
          kind="quiet"
          onClick={() => {
            own.teach(offer);
            announce(`Learned: by “${offer.phrase}” you mean ${meaningName(offer.attribute)}`);
          }}
        >
          Learn it: by “{offer.phrase}” I mean {meaningName(offer.attribute)}
        </Button>
      ))}
      <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
        Teach a word of your own
      </Button>
      {open && (
        <div className="chip-panel" role="group" aria-label="Teach a word of your own">
          <div className="chip-choices">
            <TextField
              label="By"
              value={phrase}
              onChange={setPhrase}
              wrong={wrong}
              input={{ maxLength: 60, autoCapitalize: "none" }}
            />
            <SelectField
              label="I mean"
              value={means}
              onChange={(to) => setMeans(to as Meaning)}
              options={meaningOptions}
            />
          </div>
          <p className="field-hint">Yours alone until the reveal; then the household’s, who can forget it.</p>
          <div className="form-actions">
            <Button onClick={teach}>Teach it</Button>
          </div>
        </div>
      )}
    </div>
  );
}
