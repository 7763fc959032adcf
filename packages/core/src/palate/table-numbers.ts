import { byTaster, contrasts } from "./contrasts.ts";
import { BELIEVED } from "./prior.data.ts";
import type { Study } from "./studied.ts";
import type { TableState } from "./table-state.ts";

/** The numbers of a state in a row: mixing, bias, noise by taster, offsets, stretches, and apart by attribute. */
export interface Layout {
  readonly tasters: number;
  readonly free: number;
  /** Numbers that all attributes share. */
  readonly shared: number;
  readonly size: number;
  readonly rows: Float64Array;
  readonly middles: Float64Array;
  readonly widths: Float64Array;
}

export function layoutOf({ tasters, attributes }: Study): Layout {
  const free = Math.max(0, tasters.length - 1);
  const { apart, mixing, attributeBias, noise, offsetSd, lnStretchSd } = BELIEVED;
  const priors: (readonly [number, number])[] = [
    [Math.log(mixing.middle), mixing.lnSd],
    [Math.log(attributeBias.middle), attributeBias.lnSd],
    ...tasters.map(() => [Math.log(noise.middle), noise.lnSd] as const),
    ...Array.from({ length: free }, () => [0, offsetSd] as const),
    ...Array.from({ length: free }, () => [0, lnStretchSd] as const),
    ...attributes.map(() => [Math.log(apart.middle), apart.lnSd] as const),
  ];
  return {
    tasters: tasters.length,
    free,
    shared: 2 + tasters.length + 2 * free,
    size: priors.length,
    rows: contrasts(tasters.length),
    middles: Float64Array.from(priors, ([middle]) => middle),
    widths: Float64Array.from(priors, ([, width]) => width),
  };
}

export function stateAt({ tasters, free, shared, rows }: Layout, x: Float64Array): TableState {
  const offsets = 2 + tasters;
  return {
    mixing: Math.exp(x[0] as number),
    bias: Math.exp(x[1] as number),
    noise: x.slice(2, offsets).map(Math.exp),
    offset: byTaster(rows, tasters, x.slice(offsets, offsets + free)),
    stretch: byTaster(rows, tasters, x.slice(offsets + free, shared)).map(Math.exp),
    apart: x.slice(shared).map(Math.exp),
    rows,
  };
}

/** About how far off each number may be: from what all that was said would tell if the levels were known. */
export function widthsOf(study: Study, { tasters, free, shared, widths, middles }: Layout): Float64Array {
  const told = Float64Array.from(widths, (width) => 1 / width ** 2);
  const add = (i: number, by: number): void => {
    told[i] = (told[i] as number) + by;
  };
  const noise = Math.exp(2 * (middles[2] ?? 0));
  const bias = Math.exp(2 * (middles[1] as number));
  for (const [a, { own, taster, liquids }] of study.attributes.entries()) {
    add(0, liquids.filter(({ mixed }) => mixed > 0).length / 2);
    add(1, free / 2);
    add(shared + a, study.labels.length / 3);
    for (let t = 0; t < tasters; t += 1) {
      let precision = 0;
      for (let n = 0; n < own.length; n += 1) {
        if (taster[n] !== t) continue;
        const off = (own[n] as number) + noise;
        precision += 1 / off;
        add(2 + t, (2 * noise * noise) / (off * off));
      }
      if (precision === 0) continue;
      for (let j = 0; j < free; j += 1) {
        add(2 + tasters + j, 1 / (bias + 1 / precision) / tasters);
        add(2 + tasters + free + j, precision / tasters);
      }
    }
  }
  return told.map((by) => 1 / Math.sqrt(by));
}
