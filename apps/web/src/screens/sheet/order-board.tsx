import { useEffect, useRef, useState } from "react";
import { announce, Button } from "../../parts/index.ts";
import { DragList } from "./drag-list.tsx";
import { PairBoard } from "./pair-board.tsx";
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
import type { RankOrder } from "./sheet-fields.ts";
import { useHalfRanked } from "./use-half-ranked.ts";
import { usePairs } from "./use-pairs.ts";

export interface OrderBoardProps {
  /** What this phone keeps an unfinished order under. */
  readonly id: string;
  readonly codes: readonly string[];
  readonly whole: RankOrder;
  readonly onWhole: (order: RankOrder) => void;
  /** Whether glasses may share a place. */
  readonly ties: boolean;
  readonly meaning: "best first" | "closest first";
  readonly about: (code: string) => string;
}

const ASKS = {
  "best first": {
    pair: "Which do you like better?",
    tap: "Tap the glass you liked best, then the next, and so on.",
  },
  "closest first": {
    pair: "Which is closer to the target?",
    tap: "Tap the glass closest to the target, then the next, and so on.",
  },
} as const;

/** Glasses put in order: tapped in turn, dragged or stepped, or by questions of two. */
export function OrderBoard({ id, codes, whole, onWhole, ties, meaning, about }: OrderBoardProps) {
  const [half, setHalf] = useHalfRanked(id, codes);
  const [answers, setAnswers] = usePairs(id, codes);
  const [asking, setAsking] = useState(false);
  const box = useRef<HTMLDivElement>(null);
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
  }, [tiers, asking]);
  const keep = (next: Tiers, say: string): void => {
    const all = next.flat().length === codes.length;
    setHalf(all ? [] : next);
    if (all) onWhole(next.map((tier) => [...tier]));
    else if (whole !== null) onWhole(null);
    announce(say);
  };
  const place = (next: Tiers, code: string): void => {
    const at = next.findIndex((tier) => tier.includes(code));
    const level = (next[at]?.length ?? 1) > 1;
    keep(next, `Glass ${code}: place ${placeText(next, at)}${level ? ", level" : ""}`);
  };
  if (asking) {
    return (
      <PairBoard
        codes={codes}
        answers={answers}
        onAnswers={setAnswers}
        question={ASKS[meaning].pair}
        about={about}
        ties={ties}
        onLeave={() => {
          want("pairs");
          setAsking(false);
        }}
        onDone={(done) => {
          want(`${done[0]?.[0] ?? ""} move`);
          setAsking(false);
          setAnswers([]);
          keep(done, "The order is whole");
        }}
      />
    );
  }
  return (
    <div className="order" ref={box}>
      <p className="soft">
        {left.length === 0
          ? `Drag a glass by its dots, or use its buttons.${ties ? " Dropped onto another it is level with it." : ""}`
          : tiers.length === 0
            ? ASKS[meaning].tap
            : `Which is next? ${left.length} to go; an order is saved once every glass has a place.`}
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
          about={about}
          onBetween={(code, before) => place(putBetween(tiers, code, before), code)}
          onLevel={ties ? (code, at) => place(putLevel(tiers, code, at), code) : null}
          onRaise={(code) => place(raise(tiers, code), code)}
          onLower={(code) => place(lower(tiers, code), code)}
          onTie={(code) => place(tieAbove(tiers, code), code)}
          onTakeOut={(code) => keep(takeOut(tiers, code), `Glass ${code}: no place`)}
        />
      )}
      {codes.length > 2 && (
        <div>
          <Button kind="quiet" data-focus="pairs" onClick={() => setAsking(true)}>
            {answers.length > 0
              ? `Go on with the questions (${answers.length} answered)`
              : "Ask me two at a time"}
          </Button>
        </div>
      )}
    </div>
  );
}
