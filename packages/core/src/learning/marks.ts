/** The numbers one taster gave in one flight: more is better. A glass poured twice may stand there twice. */
export interface MarkSheet {
  /** Who gave them; null or left out where that is not said. */
  readonly taster?: string | null;
  /** By id of what was tried. */
  readonly marks: readonly { readonly id: string; readonly mark: number }[];
  /** Least and most that could be given; a mark there may stand for anything beyond. None known where left out. */
  readonly scale?: readonly [low: number, high: number];
  /** Id of what stands at the top of the scale by what the marks mean, though nobody marked it: the target, where they are of closeness. */
  readonly top?: string;
}

/** A sheet by number: between which numbers each mark lay before it was rounded, in the taster's own spread, from the sheet's middle. */
export interface NumberedSheet {
  readonly taster: string;
  /** Who marks on which scale, by number: their marks share a gain and a noise. */
  readonly scorer: number;
  /** How many marks were given. */
  readonly given: number;
  readonly recipes: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** Steps in which marks are given; the coarsest that all of a taster's marks keep. */
const STEPS = [10, 5, 2, 1, 0.5, 0.25, 0.2, 0.1, 0.05, 0.01];
/** No step is coarser than this share of the scale, and none is needed finer than this share of the marks' spread. */
const COARSEST = 0.1;
const FINEST = 1e-3;

interface Marked {
  readonly recipe: number;
  readonly mark: number;
}

/**
 * Sheets of two glasses or more, by number: one mark alone stands beside nothing.
 *
 * @throws RangeError on marks of what was not tried, that are no numbers or outside their scale
 */
export function numberedSheets(
  sheets: readonly MarkSheet[],
  recipeOf: ReadonlyMap<string, number>,
): { readonly sheets: readonly NumberedSheet[]; readonly scorers: number } {
  const used = sheets
    .map((sheet) => ({
      key: JSON.stringify([sheet.taster ?? "", sheet.scale ?? null]),
      taster: sheet.taster ?? "",
      scale: sheet.scale,
      given: sheet.marks.length,
      rows: rowsOf(sheet, recipeOf),
    }))
    .filter(({ rows, given }) => given > 0 && rows.length > 1);
  const keys = [...new Set(used.map(({ key }) => key))].toSorted();
  const units = keys.map((key) => {
    const own = used.filter((sheet) => sheet.key === key);
    return unitOf(
      own.map(({ rows }) => rows.map(({ mark }) => mark)),
      own[0]?.scale ?? [0, Infinity],
    );
  });
  const told = used.map(({ key, taster, scale, given, rows }): NumberedSheet => {
    const scorer = keys.indexOf(key);
    const { step, spread } = units[scorer] as Unit;
    const middle = meanOf(rows.map(({ mark }) => mark));
    const [least, most] = scale ?? [-Infinity, Infinity];
    return {
      taster,
      scorer,
      given,
      recipes: rows.map(({ recipe }) => recipe),
      low: rows.map(({ mark }) => (mark <= least ? -Infinity : (mark - step / 2 - middle) / spread)),
      high: rows.map(({ mark }) => (mark >= most ? Infinity : (mark + step / 2 - middle) / spread)),
    };
  });
  return { sheets: told, scorers: keys.length };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Marks by number of the recipe, in an order of their own, with what stands at the top. */
function rowsOf({ marks, scale, top }: MarkSheet, recipeOf: ReadonlyMap<string, number>): readonly Marked[] {
  if (scale !== undefined && !(scale[0] < scale[1]))
    throw new RangeError(`a scale requires a least below its most, got ${scale.join(", ")}`);
  const [low, high] = scale ?? [-Infinity, Infinity];
  const numberOf = (id: string): number => {
    const at = recipeOf.get(id);
    if (at === undefined) throw new RangeError(`learnTaste requires marks of what was tried, got ${id}`);
    return at;
  };
  const rows = marks.map(({ id, mark }): Marked => {
    if (!(Number.isFinite(mark) && mark >= low && mark <= high))
      throw new RangeError(`a mark requires a number from ${low} to ${high}, got ${mark}`);
    return { recipe: numberOf(id), mark };
  });
  if (top !== undefined && scale !== undefined && rows.every(({ recipe }) => recipe !== numberOf(top)))
    rows.push({ recipe: numberOf(top), mark: high });
  return rows.toSorted((a, b) => a.recipe - b.recipe || a.mark - b.mark);
}

interface Unit {
  readonly step: number;
  readonly spread: number;
}

/** In what steps a taster marks, and how far apart: the standard deviation within sheets, of equal marks the step. */
function unitOf(sheets: readonly (readonly number[])[], [low, high]: readonly [number, number]): Unit {
  const all = sheets.flat();
  const onGrid = (step: number): boolean =>
    all.every((mark) => Math.abs((mark - low) / step - Math.round((mark - low) / step)) < 1e-6);
  const squares = sheets.reduce((sum, marks) => {
    const middle = meanOf(marks);
    return sum + marks.reduce((total, mark) => total + (mark - middle) ** 2, 0);
  }, 0);
  const spread = Math.sqrt(squares / (all.length - sheets.length));
  const found = STEPS.find((step) => step <= COARSEST * (high - low) && onGrid(step));
  const step = found ?? FINEST * (spread > 0 ? spread : 1);
  return { step, spread: Math.max(spread, step) };
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
