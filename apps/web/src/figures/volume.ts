/** Millilitres with as many digits as a kitchen measures: tenths below 10 mL, whole ones above. */
export function printMl(ml: number): string {
  return `${mlDigits(ml)}\u00a0mL`;
}

/** The digits of `printMl` without the unit. */
export function mlDigits(ml: number): string {
  return Math.abs(ml) < 9.95 ? trimmed(ml.toFixed(1)) : plain(Math.round(ml));
}

/** Grams as kitchen scales show them: tenths below 100 g, whole ones above. */
export function printG(g: number): string {
  return `${Math.abs(g) < 99.95 ? trimmed(g.toFixed(1)) : plain(Math.round(g))}\u00a0g`;
}

const trimmed = (text: string): string => text.replace(/^-(0(\.0)?)$/, "$1").replace(/\.0$/, "");
const plain = (n: number): string => String(n === 0 ? 0 : n);
