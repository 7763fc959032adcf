import { useEffect, useRef } from "react";
import { announce, Button } from "../../parts/index.ts";
import { DragList } from "./drag-list.tsx";
import {
  lower,
  placeText,
  putBetween,
  putLevel,
  raise,
  takeOut,
  tieAbove,
  type Tiers,
} from "./ranking-moves.ts";
import { guessIn, notesIn, RANKING, rankingIn } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";
import { useHalfRanked } from "./use-half-ranked.ts";

export interface RankBoardProps extends SheetStepProps {
  readonly onDone: () => void;
}

/** Best first: tap the glasses in turn, then drag or step them; level ones share a place. */
export function RankBoard({ sheet, fields, set, heading, onDone }: RankBoardProps) {
  const codes = sheet.glasses.map(({ code }) => code);
  const whole = rankingIn(fields);
  const [half, setHalf] = useHalfRanked(sheet.id, codes);
  const box = useRef<HTMLElement>(null);
  const wanted = useRef<string | null>(null);
  const want = (key: string): void => {
    wanted.current = key;
  };
  const tiers: Tiers = whole ?? half;
  const ranked = new Set(tiers.flat());
  const left = codes.filter((code) => !ranked.has(code));
  useEffect(() => {
    // What was pressed may be drawn anew, or be gone: the focus goes where the hand goes on.
    if (wanted.current === null) return;
    box.current?.querySelector<HTMLElement>(`[data-focus="${wanted.current}"]`)?.focus();
    wanted.current = null;
  }, [tiers]);
  const keep = (next: Tiers, say: string): void => {
    const all = next.flat().length === codes.length;
    setHalf(all ? [] : next);
    if (all)
      set(
        RANKING,
        next.map((tier) => [...tier]),
      );
    else if (whole !== null) set(RANKING, null);
    announce(say);
  };
  const place = (next: Tiers, code: string): void => {
    const at = next.findIndex((tier) => tier.includes(code));
    const level = (next[at]?.length ?? 1) > 1;
    keep(next, `Glass ${code}: place ${placeText(next, at)}${level ? ", level" : ""}`);
  };
  return (
    <section className="rank" ref={box}>
      <h2 ref={heading} tabIndex={-1}>
        Ranking, best first
      </h2>
      <p className="soft">
        {left.length === 0
          ? "Drag a glass by its dots, or use its buttons. Dropped onto another it is level with it."
          : tiers.length === 0
            ? "Tap the glass you liked best, then the next, and so on."
            : `Which is next? ${left.length} to go; a ranking is saved once every glass has a place.`}
      </p>
      {left.length > 0 && (
        <ul className="rank-left" aria-label="Without a place yet">
          {left.map((code) => (
            <li key={code}>
              <button
                type="button"
                className="rank-pick"
                data-focus={`pick ${code}`}
                onClick={() => {
                  const other = left[left.indexOf(code) + 1] ?? left.find((one) => one !== code);
                  want(other === undefined ? `${code} move` : `pick ${other}`);
                  place([...tiers, [code]], code);
                }}
              >
                <span className="unseen">Put next: glass </span>
                {code}
              </button>
            </li>
          ))}
        </ul>
      )}
      {tiers.length > 0 && (
        <DragList
          tiers={tiers}
          onFocusWanted={want}
          about={(code) => aboutGlass(sheet, fields, code)}
          onBetween={(code, before) => place(putBetween(tiers, code, before), code)}
          onLevel={(code, at) => place(putLevel(tiers, code, at), code)}
          onRaise={(code) => place(raise(tiers, code), code)}
          onLower={(code) => place(lower(tiers, code), code)}
          onTie={(code) => place(tieAbove(tiers, code), code)}
          onTakeOut={(code) => keep(takeOut(tiers, code), `Glass ${code}: no place`)}
        />
      )}
      <div className="form-actions">
        <Button kind="main" onClick={onDone}>
          Go to the lock
        </Button>
      </div>
    </section>
  );
}

/** What helps to remember a glass: the guess, else the beginning of a note, and the score. */
function aboutGlass(sheet: RankBoardProps["sheet"], fields: RankBoardProps["fields"], code: string): string {
  const notes = notesIn(fields, code);
  const guess = guessIn(fields, code);
  const named = sheet.namesOnOffer.find((name) => name.nameId === guess)?.label;
  const words = [notes.first.nose, notes.first.palate, notes.second.nose, notes.second.palate].find(
    (text) => text.trim() !== "",
  );
  const note = words === undefined ? null : words.trim().split("\n")[0];
  return [notes.score === null ? null : `${notes.score}`, note, named === undefined ? null : `${named}?`]
    .filter((part) => part !== null && part !== undefined)
    .join(" · ");
}
