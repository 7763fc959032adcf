import { encode } from "uqr";

export interface Square {
  /** Modules a side, with the quiet zone of four. */
  readonly size: number;
  /** The dark modules as an SVG path to be stroked one unit wide. */
  readonly path: string;
}

/**
 * The largest code that is offered: 117 modules a side hold 1,273 bytes with the least correction (ISO/IEC 18004, table 7: version 25, L).
 * Larger ones have modules too small for a phone's camera across a table; common practice, no source.
 */
const VERSION = 25;
export const SQUARE_BYTES = 1273;

/** A link as a QR code, or null where it is too long. */
export function squareOf(link: string): Square | null {
  if (link.length > SQUARE_BYTES) return null;
  const { data, size } = encode(link, { ecc: "L", border: 4, maxVersion: VERSION });
  return { size, path: data.map(rowPath).join("") };
}

/** A row's dark runs as strokes one unit wide: a fifth of what a square for each module takes. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = "";
  let end = 0;
  for (let x = 0; x < row.length; x += 1) {
    if (row[x] !== true) continue;
    const from = x;
    while (row[x] === true) x += 1;
    path += path === "" ? `M${from} ${y}.5h${x - from}` : `m${from - end} 0h${x - from}`;
    end = x;
  }
  return path;
}

/** Black on white in every theme, since cameras expect it so. */
export const squareSvg = ({ size, path }: Square, label: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" width="${4 * size}" height="${4 * size}" role="img"><title>${label}</title><rect width="${size}" height="${size}" fill="#fff"/><path d="${path}" stroke="#000" shape-rendering="crispEdges"/></svg>`;
