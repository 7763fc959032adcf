import { scaleLinear } from "d3-scale";
import { type Drawing, isWide, type Point, type Shape } from "./drawing.ts";

interface CourseDay {
  readonly day: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

interface Course {
  /** What the level is believed to be, in order of days. */
  readonly levels: readonly CourseDay[];
  /** What was tasted. */
  readonly tasted: readonly { readonly day: number; readonly level: number }[];
  /** The level of the rule; null for an attribute that decides nothing. */
  readonly pullAt: number | null;
  /** In which the rule's level is likely reached. */
  readonly window: { readonly from: number; readonly to: number } | null;
  readonly today: number;
  /** Drawn up to this day. */
  readonly until: number;
}

const MOST = 10;

/** A level of 0 to 10 over the days: the band that is believed, its middle, what was tasted, the rule and its window. */
export function drawCourse({ levels, tasted, pullAt, window, today, until }: Course, width: number): Drawing {
  const [left, right, top, bottom] = [26, width - 8, 24, isWide(width) ? 236 : 206];
  const height = bottom + 42;
  const x = scaleLinear().domain([0, until]).range([left, right]).clamp(true);
  const y = scaleLinear().domain([0, MOST]).range([bottom, top]);
  const within = levels.filter(({ day }) => day <= until);
  const at = (day: number, level: number): Point => [x(day), y(level)];
  const grid = [0, 2, 4, 6, 8, 10].flatMap((level): Shape[] => [
    { kind: "line", from: [left, y(level)], to: [right, y(level)], tone: "line" },
    {
      kind: "text",
      at: [left - 6, y(level) + 4],
      says: String(level),
      tone: "soft",
      anchor: "end",
      size: 12,
    },
  ]);
  // One at the very end would run over the edge.
  const ticks = x.ticks(isWide(width) ? 6 : 4).filter((day) => x(day) < right - 20);
  const days = ticks.map((day): Shape => {
    const anchor = day === 0 ? "start" : "middle";
    return { kind: "text", at: [x(day), bottom + 18], says: `day ${day}`, tone: "soft", anchor, size: 12 };
  });
  const band: Shape = {
    kind: "area",
    tone: "line",
    points: [
      ...within.map(({ day, high }) => at(day, high)),
      ...within.toReversed().map(({ day, low }) => at(day, low)),
    ],
  };
  const middle = within.slice(1).map((one, i): Shape => {
    const before = within[i] as CourseDay;
    return {
      kind: "line",
      from: at(before.day, before.middle),
      to: at(one.day, one.middle),
      tone: "ink",
      width: 2,
    };
  });
  const rule: Shape[] =
    pullAt === null
      ? []
      : [
          { kind: "line", from: [left, y(pullAt)], to: [right, y(pullAt)], tone: "edge", width: 2 },
          {
            kind: "text",
            at: [left + 4, y(pullAt) - 6],
            says: `pull at ${pullAt}`,
            tone: "ink",
            anchor: "start",
            size: 13,
          },
        ];
  const ready: Shape[] =
    window === null
      ? []
      : [
          {
            kind: "line",
            from: [x(window.from), bottom + 28],
            to: [x(window.to), bottom + 28],
            tone: "ink",
            width: 6,
          },
          ...[window.from, window.to].map(
            (day): Shape => ({
              kind: "line",
              from: [x(day), bottom + 22],
              to: [x(day), bottom + 34],
              tone: "ink",
              width: 2,
            }),
          ),
        ];
  const nearEnd = x(today) > right - 40;
  const now: Shape[] = [
    { kind: "line", from: [x(today), top - 4], to: [x(today), bottom], tone: "edge" },
    {
      kind: "text",
      at: [x(today), top - 9],
      says: "today",
      tone: "soft",
      anchor: nearEnd ? "end" : x(today) < left + 20 ? "start" : "middle",
      size: 12,
    },
  ];
  const dots = tasted
    .filter(({ day }) => day <= until)
    .map(({ day, level }): Shape => ({ kind: "dot", at: at(day, level), r: 6, tone: "fill" }));
  return { width, height, shapes: [band, ...grid, ...days, ...now, ...rule, ...middle, ...ready, ...dots] };
}
