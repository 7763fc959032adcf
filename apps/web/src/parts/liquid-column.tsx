import { type CSSProperties, type ReactNode, useId } from "react";
import { spreadLabels } from "./spread-labels.ts";
import { stackAmounts } from "./stack-amounts.ts";
import "./liquid-column.css";

export interface Segment {
  readonly label: ReactNode;
  /** Its share of the height: parts, or millilitres for water beside parts in millilitres. */
  readonly amount: number;
  /** How the amount is written: "2 parts", "35 mL". */
  readonly amountText: string;
  /** A second line: strength, age. */
  readonly sub?: ReactNode;
  readonly water?: boolean;
  /** Which of the six tones, from 1, where the same liquid stands in several columns; else by its place. */
  readonly tone?: number;
}

export interface LiquidColumnProps {
  readonly segments: readonly Segment[];
  /** What the figure shows, for those who cannot see it. */
  readonly title: string;
  readonly size?: "list" | "card" | "print";
}

/** Units are sixteenths of a rem, so that the drawing grows with the reader’s letters. Up to four labels a card keeps one height. */
const SIZES = {
  list: { height: 84, width: 34, label: 22 },
  card: { height: 232, width: 76, label: 58 },
  print: { height: 168, width: 54, label: 48 },
} as const;
const HEAD = 14;
const LEADER = 22;

/** The recipe as a measured column of liquid: heights are the parts, each labelled. */
export function LiquidColumn({ segments, title, size = "card" }: LiquidColumnProps) {
  const id = useId();
  const shown = segments.filter((segment) => segment.amount > 0);
  const { height: least, width, label } = SIZES[size];
  const liquid = Math.max(least, shown.length * label);
  const whole = shown.reduce((sum, segment) => sum + segment.amount, 0);
  const slices = stackAmounts(
    shown.map(({ amount }) => amount),
    HEAD,
    liquid,
  );
  const drawn = shown.map((segment, i) => {
    const { top: y, height } = slices[i] ?? { top: HEAD, height: 0 };
    return {
      segment,
      y,
      height,
      middle: y + height / 2,
      tone: segment.water ? "water" : String((((segment.tone ?? i + 1) - 1) % 6) + 1),
    };
  });
  const total = HEAD + liquid + 4;
  const centres = spreadLabels(
    drawn.map((one) => one.middle - HEAD),
    label,
    liquid,
  ).map((centre) => centre + HEAD);
  const rem = (units: number): string => `${units / 16}rem`;
  const parts = shown.every((segment) => Number.isInteger(segment.amount)) && whole <= 24 ? whole : 0;
  return (
    <figure className={`column column-${size}`} style={{ height: rem(total) }}>
      <figcaption className="unseen">{title}</figcaption>
      <svg
        viewBox={`0 0 ${width + LEADER} ${total}`}
        style={{ width: rem(width + LEADER), height: rem(total) }}
        aria-hidden="true"
      >
        <Patterns id={id} tones={new Set(drawn.map(({ tone }) => tone))} />
        <clipPath id={`${id}-glass`}>
          <path d={glass(width, total)} />
        </clipPath>
        <path d={glass(width, total)} className="column-glass" />
        <g clipPath={`url(#${id}-glass)`}>
          {drawn.map(({ y, height, tone }, place) => (
            <g key={place}>
              <rect x="0" y={y} width={width} height={height + 4} style={{ fill: `var(--liquid-${tone})` }} />
              <rect x="0" y={y} width={width} height={height + 4} fill={`url(#${id}-${tone})`} />
              <path d={`M0 ${y}H${width}`} className="column-line" />
            </g>
          ))}
          {drawn.length > 0 && (
            <ellipse
              cx={width / 2}
              cy={HEAD}
              rx={width / 2}
              ry={size === "list" ? 2 : 4}
              className="column-top"
            />
          )}
        </g>
        <path d={ticks(parts, liquid, width, size === "list" ? 5 : 10)} className="column-tick" />
        <path d={glass(width, total)} className="column-outline" />
        <path
          d={drawn.map(({ middle }, i) => leader(width, middle, centres[i] ?? middle)).join("")}
          className="column-leader"
        />
      </svg>
      <ul
        style={
          { "--amount": Math.max(0, ...shown.map(({ amountText }) => amountText.length)) } as CSSProperties
        }
      >
        {drawn.map(({ segment }, i) => (
          <li key={i} style={{ top: rem((centres[i] ?? 0) - label / 2), height: rem(label) }}>
            <span className="column-amount">{segment.amountText}</span>
            <span className="column-words">
              <span className="column-name">{segment.label}</span>
              {segment.sub !== undefined && size !== "list" && (
                <span className="column-sub">{segment.sub}</span>
              )}
            </span>
          </li>
        ))}
      </ul>
    </figure>
  );
}

/** A mark at every part, down the right wall; one path, as a column is drawn anew at every move of a weight. */
const ticks = (parts: number, liquid: number, width: number, length: number): string =>
  Array.from(
    { length: Math.max(0, parts - 1) },
    (_, i) => `M${width - 1} ${HEAD + ((i + 1) * liquid) / parts}h-${length}`,
  ).join("");

const leader = (width: number, from: number, to: number): string =>
  `M${width + 1} ${from}h4L${width + LEADER - 6} ${to}h5`;

const glass = (width: number, total: number): string => {
  const r = Math.min(10, width / 4);
  const b = total - 1;
  return `M1 0V${b - r}Q1 ${b} ${1 + r} ${b}H${width - 1 - r}Q${width - 1} ${b} ${width - 1} ${b - r}V0`;
};

/** Each tone has its own hatching, so that segments are told apart in grey and on paper. */
function Patterns({ id, tones }: { readonly id: string; readonly tones: ReadonlySet<string> }) {
  const paths: Readonly<Record<string, string>> = {
    "1": "",
    "2": "M-2 2L2 -2M0 8L8 0M6 10L10 6",
    "3": "M0 2H8M0 6H8",
    "4": "M2 2h.01M6 6h.01",
    "5": "M-2 2L2 -2M0 8L8 0M6 10L10 6M-2 6L2 10M0 0L8 8M6 -2L10 2",
    "6": "M2 0V8M6 0V8",
    water: "M0 5Q2 3 4 5T8 5",
  };
  return (
    <defs>
      {Object.entries(paths)
        .filter(([tone]) => tones.has(tone))
        .map(([tone, d]) => (
          <pattern key={tone} id={`${id}-${tone}`} width="8" height="8" patternUnits="userSpaceOnUse">
            <path d={d} className={tone === "4" ? "column-dots" : "column-hatch"} />
          </pattern>
        ))}
    </defs>
  );
}
