import { useState } from "react";
import { announce, Button } from "../../parts/index.ts";
import { GlassStrip } from "./glass-strip.tsx";
import { glassesNamed, leftOf, refusal } from "./guess-board.ts";
import { NameMat } from "./name-mat.tsx";
import { guessIn, guessKey, sureKey } from "./sheet-fields.ts";
import { HowSure } from "./how-sure.tsx";
import type { SheetStepProps } from "./sheet-step.ts";

export interface NameBoardProps extends SheetStepProps {
  readonly code: string;
  readonly onGlass: (code: string) => void;
  readonly onDone: () => void;
}

type Name = NameBoardProps["sheet"]["namesOnOffer"][number];

/** More glasses than this push the names off a phone's screen; there the glasses stand in a strip. */
const ROOM_FOR = 6;

/** Which glass is which: pick a glass on the mat, then its name. A name used up is marked, and says where it is. */
export function NameBoard({ sheet, fields, set, heading, code, onGlass, onDone }: NameBoardProps) {
  const [refused, setRefused] = useState<{ readonly code: string; readonly name: Name } | null>(null);
  const guesses = new Map(sheet.glasses.map((glass) => [glass.code, guessIn(fields, glass.code)]));
  const mine = guesses.get(code) ?? null;
  const at = sheet.glasses.findIndex((glass) => glass.code === code);
  const next = sheet.glasses[at + 1]?.code;
  const named = sheet.glasses.map((glass) => ({
    code: glass.code,
    label: sheet.namesOnOffer.find((name) => name.nameId === guesses.get(glass.code))?.label ?? null,
  }));
  const pick = (picked: string): void => {
    setRefused(null);
    onGlass(picked);
  };
  const give = (name: Name): void => {
    const back = mine === name.nameId;
    if (!back && refusal(guesses, code, name) !== null) {
      setRefused({ code, name });
      return;
    }
    setRefused(null);
    set(guessKey(code), back ? null : name.nameId);
    // How sure was said of another name.
    set(sureKey(code), null);
    announce(back ? `Glass ${code}: guess taken back` : `Glass ${code}: ${name.label}`);
  };
  const move = (name: Name, from: string): void => {
    // The old glass gets what this one had, so that nothing guessed is lost.
    set(guessKey(from), mine);
    set(guessKey(code), name.nameId);
    for (const moved of [from, code]) set(sureKey(moved), null);
    setRefused(null);
    // The button just pressed is gone.
    heading.current?.focus({ preventScroll: true });
    announce(`Glass ${code}: ${name.label}. Glass ${from}: ${mine === null ? "no guess" : "swapped"}`);
  };
  const place = sheet.pouring === "alone" ? "The glass at place" : "Glass";
  return (
    <section className={`board ${sheet.glasses.length > ROOM_FOR ? "board-many" : ""}`}>
      <div className="board-mat">
        <NameMat glasses={named} picked={code} onPick={pick} />
      </div>
      <div className="board-strip">
        <GlassStrip
          title="Names"
          picked={code}
          onPick={pick}
          glasses={named.map((glass) => ({
            code: glass.code,
            done: glass.label !== null,
            word: glass.label ?? "no guess",
          }))}
        />
      </div>
      <div className="board-side">
        <h2 ref={heading} tabIndex={-1}>
          {place} {code} is
        </h2>
        <ul className="board-names">
          {sheet.namesOnOffer.map((name) => {
            const left = leftOf(guesses, name);
            const here = mine === name.nameId;
            const used = left <= 0 && !here;
            const has = glassesNamed(guesses, name.nameId).filter((other) => other !== code);
            return (
              <li key={name.nameId}>
                <button
                  type="button"
                  className={`board-name ${used ? "board-used" : ""}`}
                  aria-pressed={here}
                  onClick={() => give(name)}
                >
                  <span className="board-mark" aria-hidden="true">
                    {here ? "●" : used ? "" : "○"}
                  </span>
                  <span className="name">{name.label}</span>
                  <span className="board-left">
                    {here
                      ? "chosen"
                      : used
                        ? `used for ${has.join(", ")}`
                        : name.count === 1
                          ? "1 left"
                          : `${left} of ${name.count} left`}
                  </span>
                </button>
                {refused !== null && refused.code === code && refused.name.nameId === name.nameId && (
                  <div className="board-refused" role="alert">
                    <p>{refusal(guesses, code, name)}.</p>
                    {has.map((from) => (
                      <Button key={from} onClick={() => move(name, from)}>
                        {mine === null ? `Take it from ${from}` : `Swap with ${from}`}
                      </Button>
                    ))}
                  </div>
                )}
              </li>
            );
          })}
        </ul>
        {mine !== null && <HowSure fields={fields} set={set} code={code} />}
        <p className="field-hint">
          Some names may be in no glass. Choose a name again to take the guess back; a glass may stay without
          one.
        </p>
        <div className="form-actions">
          {next === undefined ? (
            <Button kind="main" onClick={onDone}>
              Go to the ranking
            </Button>
          ) : (
            <Button kind="main" onClick={() => onGlass(next)}>
              Next: {sheet.pouring === "alone" ? "place" : "glass"} {next}
            </Button>
          )}
        </div>
      </div>
    </section>
  );
}
