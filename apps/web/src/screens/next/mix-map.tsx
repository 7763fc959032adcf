import { type Parts, sameParts, type WhatIf } from "@partsproof/core/learning";
import type { TriedHistory } from "@partsproof/house/protocol";
import { type KeyboardEvent, type MouseEvent, useMemo } from "react";
import { Section, SelectField, Stepper } from "../../parts/index.ts";
import { type Answered, mapMixes } from "../../trying/index.ts";
import { inHundred, partsInWords, worthInWords } from "./in-words.ts";

interface MixMapProps {
  readonly history: TriedHistory;
  readonly corners: readonly [string, string, string];
  readonly all: readonly string[];
  readonly onCorners: (corners: readonly string[]) => void;
  readonly answered: Answered;
  readonly point: Parts;
  readonly belief: WhatIf | undefined;
  readonly onPoint: (point: Parts) => void;
}

const WIDTH = 340;
const TOP = 34;
const LEFT = 24;
const SIDE = WIDTH - 2 * LEFT;
const HEIGHT = (SIDE * Math.sqrt(3)) / 2;
const STEPS = 10;
/** A chance this far from one half is called sure. */
const SURE = 0.3;

/** Where a mix of the three lies: the first corner on top, the second at the left, the third at the right. */
function placeOf(parts: Parts, corners: MixMapProps["corners"]): { x: number; y: number } | null {
  const [a = 0, b = 0, c = 0] = corners.map((id) => parts[id] ?? 0);
  const others = Object.entries(parts).some(([id, part]) => part > 0 && !corners.includes(id));
  const all = a + b + c;
  if (others || all === 0) return null;
  return { x: LEFT + (SIDE * (a / 2 + c)) / all, y: TOP + HEIGHT * (1 - a / all) };
}

/** The mixes of three whiskeys on one map: what is believed of each, what was tried, what is proposed, and what if. */
export function MixMap(props: MixMapProps) {
  const { history, corners, all, onCorners, answered, point, belief, onPoint } = props;
  const { names } = history;
  const mixes = useMemo(() => mapMixes(corners), [corners]);
  const tried = history.asked.tried.flatMap(({ id, parts }) => {
    const at = placeOf(parts, corners);
    return at === null ? [] : [{ id, at }];
  });
  const proposed = answered.flight.glasses.flatMap(({ parts }, i) => {
    const at = placeOf(parts, corners);
    return at === null ? [] : [{ number: i + 1, at }];
  });
  const here = placeOf(point, corners);
  const steps = stepsOf(point, corners);
  const move = (key: string): boolean => {
    const [a, b, c] = steps;
    const moves: Readonly<Record<string, readonly [number, number, number]>> = {
      ArrowUp: [1, b >= c ? -1 : 0, b >= c ? 0 : -1],
      ArrowDown: [-1, b <= c ? 1 : 0, b <= c ? 0 : 1],
      ArrowLeft: [0, 1, -1],
      ArrowRight: [0, -1, 1],
    };
    const by = moves[key];
    if (by === undefined) return false;
    const next = [a + by[0], b + by[1], c + by[2]];
    if (next.every((step) => step >= 0)) onPoint(partsOf(next, corners));
    return true;
  };
  const best = bestOf(mixes, answered.map);
  const against = answered.anchor === null ? "an even mix" : "the glass from before";
  return (
    <Section title="The map of mixes">
      <figure className="plot">
        <figcaption className="plot-title">
          {best === null
            ? "Nothing is known of these mixes yet"
            : `Of these three, ${partsInWords(lowest(best.parts), names)} is believed best: better than ${against} with a chance of ${inHundred(best.belief.better)} in 100`}
        </figcaption>
        {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions, jsx-a11y/prefer-tag-over-role -- a map is moved about on; the steppers below do the same */}
        <svg
          className="mix-map"
          viewBox={`0 0 ${WIDTH} ${TOP + HEIGHT + 56}`}
          role="application"
          aria-label={`Map of mixes. Arrows move the point; it stands on ${partsInWords(point, names)}.`}
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- its arrows need the focus
          tabIndex={0}
          onKeyDown={(event: KeyboardEvent) => {
            if (move(event.key)) event.preventDefault();
          }}
          onClick={(event: MouseEvent<SVGSVGElement>) => {
            const box = event.currentTarget.getBoundingClientRect();
            const scale = WIDTH / box.width;
            const x = (event.clientX - box.left) * scale;
            const y = (event.clientY - box.top) * scale;
            onPoint(nearest(x, y, corners));
          }}
        >
          <path
            className="mix-edge"
            d={`M${LEFT + SIDE / 2} ${TOP}L${LEFT} ${TOP + HEIGHT}H${LEFT + SIDE}Z`}
          />
          {mixes.map(({ parts, steps: [a, b, c] }, i) => {
            const at = placeOf(parts, corners);
            const told = answered.map[i];
            if (at === null || told === undefined) return null;
            const sure = Math.abs(told.better - 0.5) >= SURE;
            return (
              <circle
                key={`${a}-${b}-${c}`}
                cx={at.x}
                cy={at.y}
                r={2 + 9 * told.better}
                className={sure ? "mix-sure" : "mix-unsure"}
              />
            );
          })}
          {tried.map(({ id, at }) => (
            <path key={id} className="mix-tried" d={`M${at.x - 7} ${at.y - 7}l14 14m0 -14l-14 14`} />
          ))}
          {proposed.map(({ number, at }) => (
            <g key={number}>
              <circle cx={at.x} cy={at.y} r="11" className="mix-proposed" />
              <text x={at.x} y={at.y + 5} textAnchor="middle" className="mix-number">
                {number}
              </text>
            </g>
          ))}
          {here !== null && <circle cx={here.x} cy={here.y} r="15" className="mix-here" />}
          <text x={LEFT + SIDE / 2} y={20} textAnchor="middle" className="mix-corner">
            A
          </text>
          <text x={LEFT} y={TOP + HEIGHT + 30} textAnchor="middle" className="mix-corner">
            B
          </text>
          <text x={LEFT + SIDE} y={TOP + HEIGHT + 30} textAnchor="middle" className="mix-corner">
            C
          </text>
        </svg>
        <p className="plot-key soft small">
          The larger the dot, the likelier better than {against}; full: sure, hollow: not sure. A cross was
          tried, a number is a proposed glass, the ring is where you are.
        </p>
      </figure>
      <div className="mix-corners">
        {corners.map((id, i) => (
          <SelectField
            key={["A", "B", "C"][i]}
            label={`Corner ${["A", "B", "C"][i]}`}
            value={id}
            onChange={(chosen) =>
              onCorners(corners.map((one, k) => (k === i ? chosen : one === chosen ? id : one)))
            }
            options={all.map((one) => (
              <option key={one} value={one}>
                {names[one] ?? one}
              </option>
            ))}
          />
        ))}
      </div>
      <div className="mix-if" role="group" aria-label="What if">
        <h3>What if</h3>
        <div className="next-edit">
          {corners.map((id) => (
            <Stepper
              key={id}
              showLabel
              label={names[id] ?? id}
              value={point[id] ?? 0}
              max={30}
              onChange={(part) => {
                const next = { ...point, [id]: part };
                if (Object.values(next).some((one) => one > 0)) onPoint(next);
              }}
            />
          ))}
        </div>
        <p aria-live="polite">
          {belief === undefined
            ? "Reckoning…"
            : sameParts(point, answered.anchor ?? {})
              ? "This is the glass from before, which the others are held against."
              : `${partsInWords(point, names)}: better than ${against} with a chance of ${inHundred(belief.better)} in 100. At one tasting it would be put first ${inHundred(belief.first)} times in 100.`}
        </p>
        {belief !== undefined && (
          <p className="soft small">
            Log worth {worthInWords(belief.mean, belief.sd)} against {against}; 0.7 is two to one.
          </p>
        )}
      </div>
      <details className="mix-table">
        <summary>The map as a table</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">Tenths of A, B, C</th>
              <th scope="col">Better, of 100</th>
              <th scope="col">Log worth</th>
            </tr>
          </thead>
          <tbody>
            {mixes.map(({ steps: tenths }, i) => {
              const told = answered.map[i];
              return told === undefined ? null : (
                <tr key={tenths.join()}>
                  <th scope="row">{tenths.join(" : ")}</th>
                  <td>{inHundred(told.better)}</td>
                  <td>{worthInWords(told.mean, told.sd)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </details>
    </Section>
  );
}

type Corners = MixMapProps["corners"];

/** Tenths nearest to a mix, which come to ten. */
function stepsOf(parts: Parts, corners: Corners): readonly [number, number, number] {
  const amounts = corners.map((id) => parts[id] ?? 0);
  const all = amounts.reduce((sum, part) => sum + part, 0) || 1;
  const a = Math.round((STEPS * (amounts[0] ?? 0)) / all);
  const b = Math.min(STEPS - a, Math.round((STEPS * (amounts[1] ?? 0)) / all));
  return [a, b, STEPS - a - b];
}

function lowest(parts: Parts): Parts {
  const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
  const common = Object.values(parts).reduce(gcd, 0) || 1;
  return Object.fromEntries(Object.entries(parts).map(([id, part]) => [id, part / common]));
}

const partsOf = (steps: readonly number[], corners: Corners): Parts =>
  lowest(Object.fromEntries(corners.map((id, i) => [id, steps[i] ?? 0])));

/** The mix in tenths nearest to a point of the drawing. */
function nearest(x: number, y: number, corners: Corners): Parts {
  const clamp = (value: number): number => Math.min(1, Math.max(0, value));
  const a = clamp(1 - (y - TOP) / HEIGHT);
  const c = clamp((x - LEFT) / SIDE - a / 2);
  const tenA = Math.round(STEPS * a);
  const tenC = Math.min(STEPS - tenA, Math.round(STEPS * c));
  return partsOf([tenA, STEPS - tenA - tenC, tenC], corners);
}

function bestOf(mixes: readonly { readonly parts: Parts }[], map: readonly WhatIf[]) {
  let best: { readonly parts: Parts; readonly belief: WhatIf } | null = null;
  for (const [i, { parts }] of mixes.entries()) {
    const belief = map[i];
    if (belief !== undefined && (best === null || belief.mean > best.belief.mean)) best = { parts, belief };
  }
  return best;
}
