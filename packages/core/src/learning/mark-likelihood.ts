import { MARK_CHANCE, MARK_GAIN, MARK_LEVEL } from "./prior.data.ts";
import type { TastedMarks } from "./marks.ts";

/** ln of the chance of marks, over log worths, then the level of every sheet, then the gain of every scorer (both standard normal). */
export interface MarkLikelihood {
  /** How many parameters there are besides the log worths. */
  readonly extras: number;
  value(worths: Float64Array, extras: Float64Array): number;
  /**
   * Adds slope and curvature (minus the second derivatives; square of `stride`), the extras beginning at `from`; the value comes back.
   * `safe`: curvature kept positive, which it is at the top anyway.
   */
  add(at: Where): number;
}

interface Where {
  readonly worths: Float64Array;
  readonly extras: Float64Array;
  readonly from: number;
  readonly safe: boolean;
  readonly gradient: Float64Array;
  readonly curvature: Float64Array;
}

const fall = (x: number): number => (x > 0 ? Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x)) - x);
const share = (x: number): number => 1 / (1 + Math.exp(-x));

/** The sd of chance of noise 1. */
const CHANCE_SD = (MARK_CHANCE * Math.PI) / Math.sqrt(3);

/** Log worth in one spread of the marks, by its standard normal z; and how that changes. */
function gainAt(
  z: number,
  usual: number,
): { readonly gain: number; readonly slope: number; readonly bend: number } {
  const { middle, spread } = MARK_GAIN;
  const rate = usual / (fall(middle) + middle);
  const x = middle + spread * z;
  const s = share(x);
  return { gain: rate * (fall(x) + x), slope: rate * spread * s, bend: rate * spread ** 2 * s * (1 - s) };
}

/** Most that the bend of the gain may take off a curvature of 1, that of its own prior. */
const MOST_OFF = 0.9;

/**
 * Marks as the rounded image of what was felt: a glass is felt at its log worth and chance (logistic), and marked by whoever it is
 * with their own gain; the sheet's middle mark is the middle of its glasses, but for `MARK_LEVEL`. A mark says that what was felt lay
 * within its step, at an end of the scale that it lay there or beyond. Adding to all marks of a sheet says nothing, and stretching
 * them nothing but what steps and ends are.
 *
 * Concave in log worths, level and gain together (an interval of a log-concave law: Prékopa 1973, from memory), not quite in the gain's z.
 *
 * @param noises of every scorer, times `MARK_CHANCE`
 * @param differences scale of differences in log worth, beforehand
 */
export function markLikelihood(
  sheets: readonly TastedMarks[],
  noises: readonly number[],
  differences: number,
): MarkLikelihood {
  const usual = noises.map((noise) => Math.hypot(differences / Math.SQRT2, noise * CHANCE_SD));
  const gains = sheets.length;
  const extras = sheets.length + noises.length;
  const felt = new Float64Array(Math.max(0, ...sheets.map(({ at }) => at.length)));
  /** What was felt of each glass on a sheet but for chance, from the sheet's middle. */
  const feel = ({ at }: TastedMarks, worths: Float64Array, level: number): void => {
    let middle = 0;
    for (let i = 0; i < at.length; i += 1) middle += worths[at[i] as number] as number;
    middle /= at.length;
    for (let i = 0; i < at.length; i += 1) felt[i] = (worths[at[i] as number] as number) - middle + level;
  };
  return {
    extras,
    value(worths, more) {
      let value = 0;
      for (const [s, sheet] of sheets.entries()) {
        feel(sheet, worths, MARK_LEVEL * (more[s] as number));
        const { gain } = gainAt(more[gains + sheet.scorer] as number, usual[sheet.scorer] as number);
        const scale = MARK_CHANCE * (noises[sheet.scorer] as number);
        for (let i = 0; i < sheet.at.length; i += 1) {
          const [low, high] = [sheet.low[i] as number, sheet.high[i] as number];
          if (high < Infinity) value -= fall((gain * high - (felt[i] as number)) / scale);
          if (low > -Infinity) value -= fall(((felt[i] as number) - gain * low) / scale);
          if (high - low < Infinity) value += Math.log(-Math.expm1((-gain * (high - low)) / scale));
        }
      }
      return value;
    },
    add({ worths, extras: more, from, safe, gradient, curvature }) {
      const stride = gradient.length;
      const add = (i: number, j: number, by: number): void => {
        curvature[i * stride + j] = (curvature[i * stride + j] as number) + by;
      };
      const both = (i: number, j: number, by: number): void => {
        add(i, j, by);
        add(j, i, by);
      };
      const slopes = new Float64Array(noises.length);
      let value = 0;
      for (const [s, sheet] of sheets.entries()) {
        const n = sheet.at.length;
        const { at } = sheet;
        feel(sheet, worths, MARK_LEVEL * (more[s] as number));
        const gainAtZ = from + gains + sheet.scorer;
        const { gain, slope } = gainAt(more[gains + sheet.scorer] as number, usual[sheet.scorer] as number);
        const scale = MARK_CHANCE * (noises[sheet.scorer] as number);
        // Of each glass by what was felt (m), by the gain (h), and their curvatures.
        const [m, mm, mh] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
        let [h, hh, sumM, sumMm, sumMh] = [0, 0, 0, 0, 0];
        for (let i = 0; i < n; i += 1) {
          const [low, high, here] = [sheet.low[i] as number, sheet.high[i] as number, felt[i] as number];
          if (high < Infinity) {
            const x = (gain * high - here) / scale;
            const [p, q] = [share(x), share(-x)];
            value -= fall(x);
            m[i] = (m[i] as number) - q / scale;
            h += (q * high) / scale;
            const bent = (p * q) / scale ** 2;
            mm[i] = (mm[i] as number) + bent;
            mh[i] = (mh[i] as number) - bent * high;
            hh += bent * high ** 2;
          }
          if (low > -Infinity) {
            const x = (here - gain * low) / scale;
            const [p, q] = [share(x), share(-x)];
            value -= fall(x);
            m[i] = (m[i] as number) + q / scale;
            h -= (q * low) / scale;
            const bent = (p * q) / scale ** 2;
            mm[i] = (mm[i] as number) + bent;
            mh[i] = (mh[i] as number) - bent * low;
            hh += bent * low ** 2;
          }
          if (high - low < Infinity) {
            const wide = (high - low) / scale;
            value += Math.log(-Math.expm1(-gain * wide));
            const odds = 1 / Math.expm1(gain * wide);
            h += odds * wide;
            hh += odds * (1 + odds) * wide ** 2;
          }
          sumM += m[i] as number;
          sumMm += mm[i] as number;
          sumMh += mh[i] as number;
        }
        const levelAt = from + s;
        gradient[levelAt] = (gradient[levelAt] as number) + MARK_LEVEL * sumM;
        add(levelAt, levelAt, MARK_LEVEL ** 2 * sumMm);
        both(levelAt, gainAtZ, MARK_LEVEL * slope * sumMh);
        slopes[sheet.scorer] = (slopes[sheet.scorer] as number) + h;
        add(gainAtZ, gainAtZ, slope ** 2 * hh);
        for (let i = 0; i < n; i += 1) {
          const p = at[i] as number;
          const [own, ownMm, ownMh] = [m[i] as number, mm[i] as number, mh[i] as number];
          gradient[p] = (gradient[p] as number) + own - sumM / n;
          both(p, levelAt, MARK_LEVEL * (ownMm - sumMm / n));
          both(p, gainAtZ, slope * (ownMh - sumMh / n));
          add(p, p, ownMm);
          for (let j = 0; j < n; j += 1)
            add(p, at[j] as number, (-ownMm - (mm[j] as number) + sumMm / n) / n);
        }
      }
      for (const [scorer, h] of slopes.entries()) {
        const z = from + gains + scorer;
        const { slope, bend } = gainAt(more[gains + scorer] as number, usual[scorer] as number);
        gradient[z] = (gradient[z] as number) + slope * h;
        add(z, z, safe ? -Math.min(MOST_OFF, bend * h) : -bend * h);
      }
      return value;
    },
  };
}
