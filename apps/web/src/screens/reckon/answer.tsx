import type { ReactNode } from "react";
import type { No, Told } from "../../bench/index.ts";
import { NumberHero, Section, sentence } from "../../parts/index.ts";
import "./answer.css";

export interface FigureProps {
  readonly label: ReactNode;
  readonly told: Told;
  readonly unit: string;
  readonly note?: ReactNode;
  readonly hero?: boolean;
}

/** A figure with how far off it may be. */
export function Figure({ label, told, unit, note, hero = false }: FigureProps) {
  const give = told.by === "0" ? null : `give or take ${told.by}`;
  // Beside a large number there is room for it; under the smaller ones of a grid it has a line of its own.
  const under = hero || give === null ? note : note === undefined ? give : [give, <br key="line" />, note];
  return (
    <NumberHero
      size={hero ? "hero" : "large"}
      label={label}
      value={told.value}
      unit={unit.replace("% vol", "%\u00a0vol")}
      {...(hero && give !== null ? { give } : {})}
      {...(under === undefined ? {} : { note: under })}
    />
  );
}

/** Read out when it changes. */
export function Said({ children }: { readonly children: ReactNode }) {
  return (
    <div aria-live="polite" aria-atomic="true">
      {children}
    </div>
  );
}

/** Where a figure's give-or-take comes from: the largest first, each with its part. */
export function Blame({ told, what = "give or take" }: { readonly told: Told; readonly what?: string }) {
  if (told.from === "") return null;
  const shares = told.budget.filter(({ share }) => share >= 0.005);
  return (
    <details className="blame">
      <summary>
        The {what} comes from {told.from}.
      </summary>
      <ul>
        {shares.map(({ input, words, share }) => (
          <li key={input}>
            <span className="blame-bar" style={{ width: `${share * 100}%` }} aria-hidden="true" />
            <span>{words}</span>
            <span>{Math.round(share * 100)}&nbsp;%</span>
          </li>
        ))}
      </ul>
      <p className="soft small">
        In 95 of 100 such cases the true value lies within it: {told.low.toFixed(2)} to {told.high.toFixed(2)}
        . Shares are of the squared error. The density formula's own error and dissolved solids are not
        counted.
      </p>
    </details>
  );
}

/** Not every field can be read yet. */
export function Waiting({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <Section title={title} className="reckon-out">
      <p className="soft">{children}</p>
    </Section>
  );
}

/** The problem has no answer: why, and the nearest that can be had. */
export function NoAnswer({ title, no }: { readonly title: string; readonly no: No }) {
  return (
    <Section title={title} className="reckon-out">
      <Said>
        <p className="field-issue">{sentence(no.why)}</p>
        {no.nearest !== null && (
          <p className="reckon-nearest">
            <b>Nearest that can be had:</b> {no.nearest}
          </p>
        )}
      </Said>
    </Section>
  );
}
