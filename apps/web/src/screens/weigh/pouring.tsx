import { type ReactNode, useEffect, useRef, useState } from "react";
import { readGrams } from "../../bench/index.ts";
import { printG, printMl } from "../../figures/index.ts";
import { announce, Button, Section } from "../../parts/index.ts";
import {
  band,
  type Next,
  type Pouring,
  scaleDigits,
  type Standing,
  standing,
  WATER,
  without,
} from "../../weighing/index.ts";
import { Decide } from "./decide.tsx";
import { Done } from "./done.tsx";
import { InVessel } from "./in-vessel.tsx";
import { KitchenNote } from "./kitchen-note.tsx";
import { useWakeLock } from "./use-wake-lock.ts";
import "./weigh.css";

export interface PouringScreenProps {
  readonly pouring: Pouring;
  readonly onChange: (pouring: Pouring) => void;
  /** Forgets it all. */
  readonly onDrop: () => void;
  /** What can be done with what was made. */
  readonly end: ReactNode;
}

/** One part at a time, by the scale. */
export function PouringScreen({ pouring, onChange, onDrop, end }: PouringScreenProps) {
  const now = standing(pouring);
  const awake = useWakeLock();
  const [dropping, setDropping] = useState(false);
  const step = useRef<HTMLDivElement>(null);
  const count = pouring.happened.length;
  const first = useRef(count);
  useEffect(() => {
    // After every step the next one takes the focus and comes into sight; not when the page has only just opened.
    if (first.current === count) return;
    first.current = -1;
    step.current?.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
    step.current?.scrollIntoView({ block: "start" });
  }, [count]);
  const add = (...happened: Pouring["happened"]): void =>
    onChange({ ...pouring, happened: [...pouring.happened, ...happened] });
  const last = pouring.happened.findLast(({ kind }) => kind === "pour" || kind === "empty");
  const undo =
    last === undefined ? null : (
      <Button
        onClick={() => {
          announce(
            last.kind === "pour"
              ? `Undone: ${printG(last.g)} of ${nameOf(pouring, last)}`
              : `There is more of ${nameOf(pouring, last)}`,
          );
          onChange(without(pouring));
        }}
      >
        {last.kind === "pour" ? "Undo the last pour" : "There is more of it"}
      </Button>
    );
  return (
    <div className="weigh">
      <div className="weigh-step" ref={step}>
        {now.question !== null && (
          <Decide pouring={pouring} now={now} onDecide={(kind) => add({ kind })} undo={undo} />
        )}
        {now.next !== null && (
          <Step
            key={`${now.next.source} ${count}`}
            pouring={pouring}
            now={now}
            next={now.next}
            onPoured={(g) => add({ kind: "pour", source: now.next?.source ?? WATER, g })}
            onEmpty={(g) =>
              add(...(g > 0 ? [{ kind: "pour" as const, source: now.next?.source ?? WATER, g }] : []), {
                kind: "empty",
                source: now.next?.source ?? WATER,
              })
            }
            undo={undo}
          />
        )}
        {now.finished && <Done pouring={pouring} now={now} end={end} undo={undo} />}
      </div>
      {!now.finished && (
        <div className="weigh-side">
          <Section title="In the vessel">
            <InVessel pouring={pouring} now={now} />
          </Section>
          <KitchenNote />
          <p className="soft small">
            {awake === "on"
              ? "The screen stays on. "
              : awake === "none"
                ? "This browser lets the screen go dark: tap it now and then. "
                : "The screen may go dark. "}
            Every step is kept on this device, so a reload loses nothing.
          </p>
        </div>
      )}
      <div className="form-actions weigh-drop">
        {dropping ? (
          <>
            <Button kind="danger" onClick={onDrop}>
              Forget this pouring
            </Button>
            <Button onClick={() => setDropping(false)}>Keep it</Button>
          </>
        ) : (
          <Button kind="quiet" onClick={() => setDropping(true)}>
            Drop it and begin again
          </Button>
        )}
      </div>
    </div>
  );
}

const nameOf = (pouring: Pouring, happening: Pouring["happened"][number]): string =>
  !("source" in happening) || happening.source === WATER
    ? "water"
    : (pouring.sources[happening.source]?.label ?? "");

interface StepProps {
  readonly pouring: Pouring;
  readonly now: Standing;
  readonly next: Next;
  readonly onPoured: (g: number) => void;
  readonly onEmpty: (g: number) => void;
  readonly undo: ReactNode;
}

function Step({ pouring, now, next, onPoured, onEmpty, undo }: StepProps) {
  const [typed, setTyped] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  const { scale, tare } = pouring;
  const water = next.source === WATER;
  const name = water ? "Water" : (pouring.sources[next.source]?.label ?? "");
  const started = next.showsG - next.g;
  const target = scaleDigits(next.showsG, scale);
  const around = band(next.g, scale, next.showsG);
  const by = scaleDigits(around.by, scale);
  const before = now.poured.some(({ source }) => source === next.source);
  const total = pouring.parts.length + (pouring.waterTo === null ? 0 : 1);
  const at = water ? total : (pouring.sources[next.source]?.part ?? 0) + 1;
  const how =
    tare === "each"
      ? now.poured.length === 0
        ? "Zero the scale with the vessel on it, then pour until it shows"
        : "Zero the scale, then pour until it shows"
      : "Pour until the scale shows";
  useEffect(() => {
    // The heading has the focus; what to pour is said once, after it.
    announce(`${name}. ${how} ${target} grams, give or take ${by}.`);
  }, [name, how, target, by]);
  const read = readGrams(typed, true);
  const poured = read.ok ? read.value - started : null;
  const commit = (then: (g: number) => void, needed: boolean): void => {
    if (!needed && typed.trim() === "") {
      then(0);
      return;
    }
    if (!read.ok || poured === null) setWrong(read.ok ? null : read.wrong);
    else if (poured < -1e-9) {
      const limit = scaleDigits(started, scale);
      setWrong(
        `scale reading requires at least the ${limit} g before this pour, got ${scaleDigits(read.value, scale)} g`,
      );
    } else if (needed && poured < 1e-9)
      setWrong("this pour requires more than 0 g, got nothing new on the scale");
    else if (poured > next.g * 20 + 100) {
      setWrong(
        `this pour requires about ${scaleDigits(next.g, scale)} g, got ${scaleDigits(poured, scale)} g: a slip of the keys?`,
      );
    } else then(Math.max(0, poured));
  };
  return (
    <>
      <header className="weigh-head">
        <p className="soft">
          {water ? "Last" : `Part ${at} of ${total}`}
          {before && ", a little more"}
        </p>
        <h2 tabIndex={-1}>{name}</h2>
      </header>
      <div className="weigh-target">
        <p className="weigh-how">{how}</p>
        <p className="weigh-number">
          <span className="weigh-digits" style={{ "--long": target.length } as Record<string, unknown>}>
            {target}
          </span>
          <span className="weigh-unit"> g</span>
        </p>
        <p className="weigh-band">
          <b>{scaleDigits(around.low, scale)}</b> to <b>{scaleDigits(around.high, scale)}</b> g will do: your
          scale cannot tell it nearer than {by}&nbsp;g.
        </p>
        <p className="soft small">
          {tare === "running" && `${scaleDigits(next.g, scale)} g of it. `}
          About {printMl(next.ml)}.
        </p>
      </div>
      <form
        className="weigh-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          commit(onPoured, true);
        }}
      >
        <Reading
          typed={typed}
          onType={(text) => {
            setTyped(text);
            setWrong(null);
          }}
          wrong={wrong}
          poured={poured}
          next={next}
          pouring={pouring}
        />
        <div className="form-actions">
          <Button kind="main" type="submit">
            It is in
          </Button>
          {!water && (
            <Button onClick={() => commit(onEmpty, false)} aria-label={`No more of it: ${name}`}>
              No more of it
            </Button>
          )}
          {water && <Button onClick={() => commit(onEmpty, false)}>Enough water</Button>}
          {undo}
        </div>
      </form>
    </>
  );
}

interface ReadingProps {
  readonly typed: string;
  readonly onType: (text: string) => void;
  readonly wrong: string | null;
  readonly poured: number | null;
  readonly next: Next;
  readonly pouring: Pouring;
}

/** How full the strip is drawn beyond the target. */
const BEYOND = 1.2;

/** What the scale shows, typed, and how far that is from the target. */
function Reading({ typed, onType, wrong, poured, next, pouring }: ReadingProps) {
  const { scale } = pouring;
  const { by } = band(next.g, scale);
  const left = poured === null ? next.g : next.g - poured;
  const said =
    poured === null
      ? "Type what it shows when you stop."
      : Math.abs(left) <= by + 1e-9
        ? "There: as near as your scale can tell."
        : left > 0
          ? `${scaleDigits(left, scale)} g to go.`
          : `${scaleDigits(-left, scale)} g too much.`;
  const share = (g: number): string => `${Math.min(100, Math.max(0, (100 * g) / (next.g * BEYOND)))}%`;
  return (
    <div className="field">
      <label htmlFor="weigh-reading" className="field-label">
        The scale shows
      </label>
      <div className="input-unit">
        <input
          id="weigh-reading"
          className="input weigh-reading"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="done"
          value={typed}
          aria-invalid={wrong !== null || undefined}
          aria-describedby={wrong === null ? "weigh-said" : "weigh-wrong weigh-said"}
          onChange={(event) => onType(event.target.value)}
        />
        <span aria-hidden="true">g</span>
      </div>
      <div className="weigh-strip" aria-hidden="true">
        <span className="weigh-fill" style={{ width: share(poured ?? 0) }} />
        <span
          className="weigh-zone"
          style={{ left: share(next.g - by), width: `max(6px, ${(100 * 2 * by) / (next.g * BEYOND)}%)` }}
        />
      </div>
      {wrong !== null && (
        <p className="field-issue" id="weigh-wrong" role="alert">
          {wrong.charAt(0).toUpperCase() + wrong.slice(1)}.
        </p>
      )}
      <p id="weigh-said" className={poured !== null && left < -by ? "weigh-over" : "soft"}>
        {said}
      </p>
    </div>
  );
}
