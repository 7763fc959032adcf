import { type CSSProperties, memo, type ReactNode, useId, useRef, useState } from "react";
import { MinusGlyph, PlusGlyph } from "./glyphs.tsx";
import { useAhead } from "./use-ahead.ts";
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
  const at = value ?? rest;
  const { newest, went } = useAhead(at, (next) => {
    const one = dot.current;
    if (one === null || number.current === null) return;
    if (Number(one.value) !== next) one.value = String(next);
    one.style.setProperty("--at", String(next / max));
    if (value === null || typed !== null) return;
    one.setAttribute("aria-valuetext", print(next));
    if (number.current.value !== print(next)) number.current.value = print(next);
  });
  const readable = typed === null || typed === "" || read(typed, max) !== null;
  const move = (next: number): void => {
    if (typed !== null) setTyped(null);
    went(next);
    onChange(id, next);
  };
  const nudge = (by: number): void => {
    move(Math.min(max, Math.max(0, Math.round((newest() + by) / step) * step)));
  };
  const type = (text: string): void => {
    setTyped(text);
    const number = read(text, max);
    if (text.trim() === "") onChange(id, null);
    else if (number !== null) onChange(id, number);
  };
  const shown = value === null ? unset : print(value);
  return (
    <div className={`strip ${value === null ? "strip-unset" : ""}`} role="group" aria-label={said}>
      <label className="strip-name" htmlFor={`${field}-typed`}>
        {name}
      </label>
      <span className="strip-typed">
        {value === null && <span className="strip-word">{unset}</span>}
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
      <button
        type="button"
        className="strip-nudge"
        aria-label={`${less}: ${said}`}
        onClick={() => nudge(-step)}
      >
        <MinusGlyph />
      </button>
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
        style={{ "--at": at / max } as CSSProperties}
        // A tap where the dot waits changes nothing for the browser, yet says that value.
        onClick={() => value === null && onChange(id, at)}
        onChange={(event) => move(Number(event.target.value))}
      />
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

function read(text: string, max: number): number | null {
  if (!/^\d{1,2}(?:[.,]\d{1,2})?$/.test(text.trim())) return null;
  const number = Number(text.trim().replace(",", "."));
  return number <= max ? number : null;
}
