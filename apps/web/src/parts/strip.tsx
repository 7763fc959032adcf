import { type CSSProperties, memo, type ReactNode, useId, useRef, useState } from "react";
import { MinusGlyph, PlusGlyph } from "./glyphs.tsx";
import { useAhead } from "./use-ahead.ts";
import { useDrag } from "./use-drag.ts";
import { useMoved } from "./use-moved.ts";
import "./strip.css";

export interface StripProps {
  /** Tells the strips of a list apart in `onChange`. */
  readonly id: string;
  readonly name: string;
  /** What it is called where its surroundings are not seen; the name, if left out. */
  readonly said?: string;
  /** null: nothing is set. */
  readonly value: number | null;
  readonly onChange: (id: string, value: number | null) => void;
  readonly max: number;
  readonly step: number;
  /** What it means that nothing is set: "not known". */
  readonly unset: string;
  /** Where the dot waits while nothing is set. */
  readonly rest?: number;
  /** The words on the two buttons: less smoke, more smoke. */
  readonly less?: string;
  readonly more?: string;
  /** Set small under the strip: buttons, a tick. */
  readonly children?: ReactNode;
}

/** The number of a dot that is held lays out and paints a box: in a frame out of some, not in each. */
const NUMBER_AFTER_MS = 100;

/** A dot on a strip: dragged, moved by arrow keys, nudged by taps, or typed as a number. Nothing set is shown as that, never as 0. */
export const Strip = memo(function Strip({
  id,
  name,
  said = name,
  value,
  onChange,
  max,
  step,
  unset,
  rest = max / 2,
  less = "Less",
  more = "More",
  children,
}: StripProps) {
  const field = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const dot = useRef<HTMLInputElement>(null);
  const number = useRef<HTMLInputElement>(null);
  const rail = useRef<HTMLSpanElement>(null);
  const slide = useRef<HTMLSpanElement>(null);
  const fill = useRef<HTMLSpanElement>(null);
  const at = value ?? rest;
  const held = useRef(false);
  // What is moved is given away in a task of its own: the frame draws the dot alone.
  const gives = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const follows = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const write = (): void => {
    clearTimeout(follows.current);
    follows.current = undefined;
    const shows = number.current;
    if (shows !== null && value !== null && typed === null && shows.value !== print(newest()))
      shows.value = print(newest());
  };
  const { newest, went } = useAhead(at, (next) => {
    if (dot.current === null || number.current === null) return;
    for (const moved of [slide, fill]) moved.current?.style.setProperty("--at", String(next / max));
    // What only a screen reader or a key needs waits for the finger to let go; the number follows it at its own pace.
    if (held.current) {
      follows.current ??= setTimeout(write, NUMBER_AFTER_MS);
      return;
    }
    if (Number(dot.current.value) !== next) dot.current.value = String(next);
    if (value === null || typed !== null) return;
    dot.current.setAttribute("aria-valuetext", print(next));
    write();
  });
  const readable = typed === null || typed === "" || read(typed, max) !== null;
  const move = (next: number): void => {
    if (typed !== null) setTyped(null);
    went(next);
    gives.current ??= setTimeout(() => {
      gives.current = undefined;
      onChange(id, newest());
    }, 0);
  };
  const nudge = (by: number): void => {
    move(stepped(newest() + by, max, step));
  };
  const type = (text: string): void => {
    setTyped(text);
    const number = read(text, max);
    if (text.trim() === "") onChange(id, null);
    else if (number !== null) onChange(id, number);
  };
  const drag = useDrag(rail, {
    onHold: () => {
      held.current = true;
      rail.current?.toggleAttribute("data-held", true);
      // In a task of its own: the dot is under the finger first.
      setTimeout(() => dot.current?.focus({ preventScroll: true }), 0);
      return newest();
    },
    onMove: (share) => {
      const next = stepped(share * max, max, step);
      if (value === null || next !== newest()) move(next);
    },
    onLoose: (before) => {
      held.current = false;
      rail.current?.toggleAttribute("data-held", false);
      // A page that scrolls under the finger was meant, not the dot.
      if (before !== null && value !== null) move(before);
      else setTimeout(() => went(newest()), 0);
    },
  });
  useMoved(dot, move);
  const shown = value === null ? unset : print(value);
  const place = { "--at": at / max } as CSSProperties;
  return (
    <div className={`strip ${value === null ? "strip-unset" : ""}`} role="group" aria-label={said}>
      <label className="strip-name" htmlFor={`${field}-typed`}>
        {name}
      </label>
      <span className="strip-typed">
        {value === null && <span className="strip-word">{unset}</span>}
        <span className="strip-number">
          <input
            ref={number}
            id={`${field}-typed`}
            className="input"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            aria-label={said}
            aria-invalid={!readable || undefined}
            aria-describedby={readable ? undefined : `${field}-issue`}
            value={typed ?? (value === null ? "" : shown)}
            onChange={(event) => type(event.target.value)}
            onBlur={() => setTyped(null)}
          />
        </span>
      </span>
      <button
        type="button"
        className="strip-nudge"
        aria-label={`${less}: ${said}`}
        onClick={() => nudge(-step)}
      >
        <MinusGlyph />
      </button>
      <span className="strip-way">
        <span ref={rail} className="strip-rail" onPointerDown={drag}>
          <input
            ref={dot}
            className="strip-dot"
            type="range"
            min={0}
            max={max}
            step={step}
            aria-label={`${said}, 0 to ${max}`}
            aria-valuetext={shown}
            defaultValue={at}
            // Activated where it waits, as a screen reader may: nothing changes for the browser, yet it says that value.
            onClick={() => value === null && onChange(id, at)}
          />
          <span className="strip-track">
            <span ref={fill} className="strip-fill" style={place} />
          </span>
          <span ref={slide} className="strip-slide" style={place}>
            <span className="strip-thumb" />
          </span>
        </span>
      </span>
      <button
        type="button"
        className="strip-nudge strip-more"
        aria-label={`${more}: ${said}`}
        onClick={() => nudge(step)}
      >
        <PlusGlyph />
      </button>
      {!readable && (
        <p className="field-issue strip-issue" id={`${field}-issue`}>
          {`${said} requires a number from 0 to ${max}, got "${typed}"`}
        </p>
      )}
      {children !== undefined && <div className="strip-below">{children}</div>}
    </div>
  );
});

const print = (value: number): string => String(Number(value.toFixed(2)));

/** The nearest step there is. */
const stepped = (value: number, max: number, step: number): number =>
  Math.min(max, Math.max(0, Number((Math.round(value / step) * step).toFixed(6))));

function read(text: string, max: number): number | null {
  if (!/^\d{1,2}(?:[.,]\d{1,2})?$/.test(text.trim())) return null;
  const number = Number(text.trim().replace(",", "."));
  return number <= max ? number : null;
}
