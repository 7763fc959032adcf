import type { RestAdvice } from "@partsproof/house/protocol";
import { drawCourse, Figure } from "../../plots/index.ts";

type Answer = NonNullable<RestAdvice["answer"]>;

interface CourseFigureProps {
  readonly of: Answer["attributes"][number];
  readonly tasted: readonly { readonly day: number; readonly level: number }[];
  readonly pullAt: number | null;
  readonly window: { readonly from: number; readonly to: number } | null;
  readonly today: number;
  /** Of the files. */
  readonly name: string;
}

const LEAST_DAYS = 28;
const HALF_A_YEAR = 180;

/** One attribute over the days: what is believed of it, and what was tasted. */
export function CourseFigure({ of, tasted, pullAt, window, today, name }: CourseFigureProps) {
  const last = Math.max(0, ...tasted.map(({ day }) => day));
  const wanted = 1.15 * Math.max(today, last, window?.to ?? 0, LEAST_DAYS / 1.15);
  const until = Math.min(HALF_A_YEAR, Math.ceil(wanted));
  const shown = levelsUntil(of.levels, until);
  const now = shown.reduce((near, one) =>
    Math.abs(one.day - today) < Math.abs(near.day - today) ? one : near,
  );
  const [newest] = tasted.toReversed();
  const title =
    newest === undefined
      ? `${capital(of.attribute)} is believed to stand at ${now.middle.toFixed(1)} of 10 now`
      : `${capital(of.attribute)}: ${newest.level.toFixed(1)} of 10 tasted on day ${Math.round(newest.day)}`;
  return (
    <Figure
      title={title}
      name={name}
      note={`Line: the middle of what is believed; band: 80 % of it. Dots: your tastings.${window === null ? "" : " Bar below: when it is likely ready, 80 %."}`}
      draw={(width) => drawCourse({ levels: shown, tasted, pullAt, window, today, until }, width)}
      table={{
        heads: ["Day", "Believed, of 10", "80 % from", "to", "Tasted"],
        rows: rowsOf(shown, tasted),
      }}
    />
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Level = Answer["attributes"][number]["levels"][number];

/** Told days up to the last drawn one, that one put between its neighbours. */
function levelsUntil(levels: readonly Level[], until: number): readonly Level[] {
  const within = levels.filter(({ day }) => day <= until);
  const before = within.at(-1);
  const after = levels.find(({ day }) => day > until);
  if (before === undefined || after === undefined || before.day === until) return within;
  const share = (until - before.day) / (after.day - before.day);
  const between = (from: number, to: number): number => from + share * (to - from);
  return [
    ...within,
    {
      day: until,
      low: between(before.low, after.low),
      middle: between(before.middle, after.middle),
      high: between(before.high, after.high),
    },
  ];
}

function rowsOf(levels: readonly Level[], tasted: CourseFigureProps["tasted"]): (readonly string[])[] {
  const believed = levels.map(({ day, low, middle, high }) => ({
    day,
    cells: [day.toFixed(0), middle.toFixed(1), low.toFixed(1), high.toFixed(1), ""],
  }));
  const own = tasted.map(({ day, level }) => ({
    day,
    cells: [day.toFixed(0), "", "", "", level.toFixed(1)],
  }));
  return [...believed, ...own].toSorted((a, b) => a.day - b.day).map(({ cells }) => cells);
}
