import highs from "highs";

// Its types describe the CommonJS build; the ES module that is loaded here gives the function itself.
const loadHighs = highs as unknown as typeof highs.default;

const terms = (list: readonly string[]): string => list.join(" + ").replaceAll("+ -", "- ");

/** The recipe with exactly so many parts that has the least absolute distance, as a mixed-integer program in LP format. */
function lpOf(
  shelf: readonly (readonly number[])[],
  target: readonly number[],
  bottles: number,
  parts: number,
): string {
  const d = target.length;
  const rows = target.flatMap((t, a) => {
    const off = terms(shelf.map((row, i) => `${(((row[a] ?? 0) - t) / parts).toFixed(12)} p${i}`));
    return [` over${a}: ${off} - r${a} <= 0`, ` under${a}: ${off} + r${a} >= 0`];
  });
  const p = shelf.map((_, i) => `p${i}`);
  const z = shelf.map((_, i) => `z${i}`);
  return [
    "Minimize",
    ` distance: ${terms(target.map((_, a) => `${(1 / d).toFixed(15)} r${a}`))}`,
    "Subject To",
    ...rows,
    ` parts: ${terms(p)} = ${parts}`,
    ` bottles: ${terms(z)} <= ${bottles}`,
    ...shelf.map((_, i) => ` used${i}: p${i} - ${parts} z${i} <= 0`),
    "Bounds",
    ...p.map((name) => ` ${name} <= ${parts}`),
    "General",
    ` ${p.join(" ")}`,
    "Binary",
    ` ${z.join(" ")}`,
    "End",
  ].join("\n");
}

/**
 * The least absolute distance by HiGHS, one program for each number of parts that is not half of another or less: a recipe of 6 parts
 * is one of 12 too. Milliseconds are for the solver alone. Null when a program did not finish in its time.
 */
export async function byHighs(
  shelf: readonly (readonly number[])[],
  target: readonly number[],
  bottles: number,
  maxParts: number,
  secondsEach: number,
): Promise<{ readonly distance: number | null; readonly milliseconds: number }> {
  const solver = await loadHighs();
  let distance: number | null = Infinity;
  let milliseconds = 0;
  for (let parts = Math.floor(maxParts / 2) + 1; parts <= maxParts; parts += 1) {
    const lp = lpOf(shelf, target, bottles, parts);
    const start = performance.now();
    const { Status, ObjectiveValue } = solver.solve(lp, { mip_rel_gap: 1e-9, time_limit: secondsEach });
    milliseconds += performance.now() - start;
    if (Status !== "Optimal") distance = null;
    else if (distance !== null) distance = Math.min(distance, ObjectiveValue);
  }
  return { distance, milliseconds };
}
