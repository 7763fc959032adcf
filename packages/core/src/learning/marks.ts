/** The numbers one taster gave in one flight: more is better. A glass poured twice may stand there twice. */
export interface MarkSheet {
  /** Who gave them; null or left out where that is not said. */
  readonly taster?: string | null;
  /** By id of what was tried. */
  readonly marks: readonly { readonly id: string; readonly mark: number }[];
  /** Least and most that could be given; a mark there may stand for anything beyond. None known where left out. */
  readonly scale?: readonly [low: number, high: number];
}

/** A sheet by number: between which numbers each mark lay before it was rounded, in the taster's own spread, from the sheet's middle. */
export interface NumberedSheet {
  readonly taster: string;
  /** Who marks on which scale, by number: their marks share a gain and a noise. */
  readonly scorer: number;
  readonly recipes: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** Steps in which marks are given; the coarsest that all of a taster's marks keep. */
const STEPS = [10, 5, 2, 1, 0.5, 0.25, 0.2, 0.1, 0.05, 0.01];
/** No step is coarser than this share of the scale, and none is needed finer than this share of the marks' spread. */
const COARSEST = 0.1;
const FINEST = 1e-3;

/**
 * Sheets of two marks or more, by number: one mark alone stands beside nothing.
 *
 * @throws RangeError on marks of what was not tried, that are no numbers or outside their scale
 */
export function numberedSheets(
  sheets: readonly MarkSheet[],
  recipeOf: ReadonlyMap<string, number>,
): { readonly sheets: readonly NumberedSheet[]; readonly scorers: number } {
  for (const sheet of sheets) check(sheet, recipeOf);
  const keyOf = ({ taster, scale }: MarkSheet): string => JSON.stringify([taster ?? "", scale ?? null]);
  const used = sheets.filter(({ marks }) => marks.length > 1);
  const keys = [...new Set(used.map(keyOf))].toSorted();
  const units = keys.map((key) => unitOf(used.filter((sheet) => keyOf(sheet) === key)));
  const told = used.map((sheet): NumberedSheet => {
    const scorer = keys.indexOf(keyOf(sheet));
    const { step, spread } = units[scorer] as Unit;
    const marks = sheet.marks
      .map(({ id, mark }) => ({ recipe: recipeOf.get(id) as number, mark }))
      .toSorted((a, b) => a.recipe - b.recipe || a.mark - b.mark);
    const middle = marks.reduce((sum, { mark }) => sum + mark, 0) / marks.length;
    const [least, most] = sheet.scale ?? [-Infinity, Infinity];
    return {
      taster: sheet.taster ?? "",
      scorer,
      recipes: marks.map(({ recipe }) => recipe),
      low: marks.map(({ mark }) => (mark <= least ? -Infinity : (mark - step / 2 - middle) / spread)),
      high: marks.map(({ mark }) => (mark >= most ? Infinity : (mark + step / 2 - middle) / spread)),
    };
  });
  return { sheets: told, scorers: keys.length };
}

interface Unit {
  readonly step: number;
  readonly spread: number;
}

/** In what steps a taster marks, and how far apart: the standard deviation within sheets, of equal marks the step. */
function unitOf(sheets: readonly MarkSheet[]): Unit {
  const [low, high] = sheets[0]?.scale ?? [0, Infinity];
  const all = sheets.flatMap(({ marks }) => marks.map(({ mark }) => mark));
  const onGrid = (step: number): boolean =>
    all.every((mark) => Math.abs((mark - low) / step - Math.round((mark - low) / step)) < 1e-6);
  const squares = sheets.reduce((sum, { marks }) => {
    const middle = marks.reduce((total, { mark }) => total + mark, 0) / marks.length;
    return sum + marks.reduce((total, { mark }) => total + (mark - middle) ** 2, 0);
  }, 0);
  const spread = Math.sqrt(squares / (all.length - sheets.length));
  const found = STEPS.find((step) => step <= COARSEST * (high - low) && onGrid(step));
  const step = found ?? FINEST * (spread > 0 ? spread : 1);
  return { step, spread: Math.max(spread, step) };
}

function check({ marks, scale }: MarkSheet, recipeOf: ReadonlyMap<string, number>): void {
  if (scale !== undefined && !(scale[0] < scale[1]))
    throw new RangeError(`a scale requires a least below its most, got ${scale.join(", ")}`);
  const [low, high] = scale ?? [-Infinity, Infinity];
  for (const { id, mark } of marks) {
    if (!recipeOf.has(id)) throw new RangeError(`learnTaste requires marks of what was tried, got ${id}`);
    if (!(Number.isFinite(mark) && mark >= low && mark <= high))
      throw new RangeError(`a mark requires a number from ${low} to ${high}, got ${mark}`);
  }
}

/** A sheet of marks over what was tasted by number, and how much chance is in each of them. */
export interface TastedMarks {
  readonly scorer: number;
  readonly at: Int32Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** Sheets over what was tasted, in an order of their own: sums must not depend on the order of the evenings. */
export function marksOf(
  sheets: readonly NumberedSheet[],
  at: (recipe: number, taster: string) => number,
): TastedMarks[] {
  return sheets
    .map(({ taster, scorer, recipes, low, high }) => ({
      scorer,
      at: Int32Array.from(recipes, (recipe) => at(recipe, taster)),
      low: Float64Array.from(low),
      high: Float64Array.from(high),
    }))
    .map((sheet) => ({ sheet, key: `${sheet.scorer}|${sheet.at.join()}|${sheet.low.join()}` }))
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ sheet }) => sheet);
}

