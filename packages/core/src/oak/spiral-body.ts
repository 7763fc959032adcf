import type { Body, Spiral } from "./piece.ts";

/**
 * A rod with a fin that winds round it, both ends cut square. Both faces of the fin are helicoids between core and rim:
 * one turn has the area of 2π√(r² + h²) over r, with h = pitch / 2π, which has a closed form. The rim, the core between the
 * turns and the two ends are added; volume is exact (the fin fills fin / pitch of the ring).
 */
export function spiralBody({ outer, core, fin, pitch, length }: Spiral): Body {
  const all = { outer, core, fin, pitch, length };
  for (const [name, cm] of Object.entries(all)) {
    if (!(cm > 0 && cm < Infinity))
      throw new RangeError(`${name} of a spiral requires more than 0 cm, got ${cm} cm`);
  }
  if (!(core < outer))
    throw new RangeError(`core of a spiral requires less than its outer ${outer} cm, got ${core} cm`);
  if (!(fin < pitch))
    throw new RangeError(`fin of a spiral requires less than its pitch ${pitch} cm, got ${fin} cm`);
  const [rim, stem] = [outer / 2, core / 2];
  const h = pitch / (2 * Math.PI);
  const turns = length / pitch;
  const faces = 2 * turns * (helicoid(rim, h) - helicoid(stem, h));
  const filled = fin / pitch;
  const ring = Math.PI * (rim ** 2 - stem ** 2);
  const bars = 2 * Math.PI * length * (filled * rim + (1 - filled) * stem);
  const ends = 2 * (Math.PI * stem ** 2 + filled * ring);
  return {
    areaCm2: faces + bars + ends,
    volumeCm3: length * (Math.PI * stem ** 2 + filled * ring),
    thicknessCm: Math.min(fin, outer - core),
  };
}

/** Area of one turn of a helicoid from its axis out to r: ∫ 2π √(r² + h²) dr. */
function helicoid(r: number, h: number): number {
  const slant = Math.hypot(r, h);
  return Math.PI * (r * slant + h ** 2 * Math.log((r + slant) / h));
}
