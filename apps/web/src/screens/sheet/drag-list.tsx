import { type KeyboardEvent, type PointerEvent, useId, useRef, useState } from "react";
import { type Drop, dropAt } from "./drop-at.ts";
import { placeText, type Tiers } from "./ranking-moves.ts";
import { useEdgeScroll } from "./use-edge-scroll.ts";

export interface DragListProps {
  readonly tiers: Tiers;
  /** Told which control, by its `data-focus`, keeps the focus through a move. */
  readonly onFocusWanted: (key: string) => void;
  readonly about: (code: string) => string;
  readonly onBetween: (code: string, before: number) => void;
  /** Null where no two may share a place. */
  readonly onLevel: ((code: string, at: number) => void) | null;
  readonly onRaise: (code: string) => void;
  readonly onLower: (code: string) => void;
  readonly onTie: (code: string) => void;
  readonly onTakeOut: (code: string) => void;
}

interface Drag {
  readonly code: string;
  /** Where on the page it was taken, and where it is, in pixels from the page's top. */
  readonly fromY: number;
  readonly y: number;
  /** From the window's top. */
  readonly clientY: number;
  readonly drop: Drop | null;
}

/** A finger that hardly moved has not begun to drag. */
const SLACK_PX = 6;

/** Places with their glasses. Each glass moves by its handle (finger, mouse, arrow keys) or by its buttons. */
export function DragList({ tiers, about, onFocusWanted, ...on }: DragListProps) {
  const id = useId();
  const list = useRef<HTMLOListElement>(null);
  const [drag, setDrag] = useState<Drag | null>(null);
  const boxes = (): readonly DOMRect[] =>
    [...(list.current?.querySelectorAll<HTMLElement>("[data-tier]") ?? [])].map((row) =>
      row.getBoundingClientRect(),
    );
  const begin =
    (code: string) =>
    (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const y = event.clientY + scrollY;
      setDrag({ code, fromY: y, y, clientY: event.clientY, drop: null });
    };
  const dropOf = (held: Drag, clientY: number): Drop | null => {
    const far = held.drop !== null || Math.abs(clientY + scrollY - held.fromY) > SLACK_PX;
    return far ? dropAt(boxes(), clientY) : null;
  };
  const over = (clientY: number): void => {
    if (drag === null) return;
    setDrag({ ...drag, y: clientY + scrollY, clientY, drop: dropOf(drag, clientY) });
  };
  useEdgeScroll(drag?.drop ? drag.clientY : null, () => {
    if (drag !== null) over(drag.clientY);
  });
  const end = (clientY: number): void => {
    // Where it is let go counts: after a quick move the last place may not be drawn yet.
    const drop = drag === null ? null : dropOf(drag, clientY);
    if (drag !== null && drop !== null) {
      // Onto another where none may be level: before it.
      if (drop.kind === "level" && on.onLevel === null) on.onBetween(drag.code, drop.at);
      else if (drop.kind === "level") on.onLevel?.(drag.code, drop.at);
      else on.onBetween(drag.code, drop.before);
    }
    setDrag(null);
  };
  const byKey =
    (code: string) =>
    (event: KeyboardEvent): void => {
      const act = {
        ArrowUp: on.onRaise,
        ArrowDown: on.onLower,
        "=": on.onLevel === null ? undefined : on.onTie,
      }[event.key];
      if (event.key === "Escape" && drag !== null) setDrag(null);
      if (act === undefined) return;
      event.preventDefault();
      onFocusWanted(`${code} move`);
      act(code);
    };
  return (
    <>
      <p className="unseen" id={`${id}-how`}>
        Arrow up and down move the glass
        {on.onLevel === null ? "." : ", the equals sign puts it level with the place above."}
      </p>
      <ol className={`tiers ${drag?.drop ? "tiers-dragging" : ""}`} ref={list}>
        {tiers.map((tier, place) => (
          <li
            key={tier.join(" ")}
            data-tier={place}
            className={`tier ${dropMark(drag?.drop ?? null, place, tiers.length)}`}
          >
            <p className="tier-place">
              <span className="unseen">Place </span>
              {placeText(tiers, place)}
              {tier.length > 1 && <span className="tier-level">level</span>}
            </p>
            <ul className="tier-glasses">
              {tier.map((code) => {
                const held = drag?.code === code && drag.drop !== null;
                return (
                  <li
                    key={code}
                    className={`tier-glass ${held ? "tier-held" : ""}`}
                    style={held ? { translate: `0 ${drag.y - drag.fromY}px` } : undefined}
                  >
                    <button
                      type="button"
                      className="tier-handle"
                      data-handle={code}
                      data-focus={`${code} move`}
                      aria-label={`Move glass ${code}`}
                      aria-describedby={`${id}-how`}
                      onPointerDown={begin(code)}
                      onPointerMove={(event) => over(event.clientY)}
                      onPointerUp={(event) => end(event.clientY)}
                      onPointerCancel={() => setDrag(null)}
                      onKeyDown={byKey(code)}
                    >
                      <Dots />
                      <span className="tier-code">{code}</span>
                    </button>
                    <span className="tier-about">{about(code)}</span>
                    <span className="tier-do">
                      <TierButton
                        focusKey={`${code} better`}
                        label={`Glass ${code} better`}
                        onFocusWanted={onFocusWanted}
                        off={place === 0 && tier.length === 1}
                        onDo={() => on.onRaise(code)}
                        d="M6 15l6-6 6 6"
                      />
                      <TierButton
                        focusKey={`${code} worse`}
                        label={`Glass ${code} worse`}
                        onFocusWanted={onFocusWanted}
                        off={place === tiers.length - 1 && tier.length === 1}
                        onDo={() => on.onLower(code)}
                        d="M6 9l6 6 6-6"
                      />
                      {on.onLevel !== null && (
                        <TierButton
                          focusKey={`${code} level`}
                          label={`Glass ${code} level with the place above`}
                          onFocusWanted={onFocusWanted}
                          off={place === 0}
                          onDo={() => on.onTie(code)}
                          d="M5 10h14M5 15h14"
                        />
                      )}
                      <TierButton
                        focusKey={`pick ${code}`}
                        label={`Take glass ${code} out of the ranking`}
                        onFocusWanted={onFocusWanted}
                        off={false}
                        onDo={() => on.onTakeOut(code)}
                        d="M7 7l10 10M17 7L7 17"
                      />
                    </span>
                  </li>
                );
              })}
            </ul>
          </li>
        ))}
      </ol>
    </>
  );
}

function dropMark(drop: Drop | null, place: number, places: number): string {
  if (drop === null) return "";
  if (drop.kind === "level") return drop.at === place ? "tier-onto" : "";
  if (drop.before === place) return "tier-before";
  return drop.before === places && place === places - 1 ? "tier-after" : "";
}

interface TierButtonProps {
  /** Which control has the focus after it: mostly itself. */
  readonly focusKey: string;
  readonly label: string;
  readonly off: boolean;
  readonly onDo: () => void;
  readonly onFocusWanted: (key: string) => void;
  readonly d: string;
}

function TierButton({ focusKey, label, off, onDo, onFocusWanted, d }: TierButtonProps) {
  return (
    <button
      type="button"
      aria-label={label}
      aria-disabled={off || undefined}
      data-focus={focusKey}
      onClick={() => {
        if (off) return;
        onFocusWanted(focusKey);
        onDo();
      }}
    >
      <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
        <path d={d} />
      </svg>
    </button>
  );
}

const Dots = () => (
  <svg viewBox="0 0 12 24" width="12" height="24" aria-hidden="true" className="tier-dots">
    {[6, 12, 18].map((y) => (
      <g key={y}>
        <circle cx="3" cy={y} r="1.5" />
        <circle cx="9" cy={y} r="1.5" />
      </g>
    ))}
  </svg>
);
