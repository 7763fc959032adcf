interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Liquids of the light theme; beside their colour they differ by the slant of their lines, so that grey paper tells them apart. */
const LIQUIDS = ["#f0c877", "#d98f3d", "#b0662a", "#f5dfae", "#8f4a1e", "#e3aa58"];
const INK = "#261d15";

/** Parts as a measured column of liquid, the first on top, and the height of each segment's middle. */
export function columnOf(
  parts: readonly number[],
  { x, y, width, height }: Box,
): { readonly svg: string; readonly middles: readonly number[] } {
  const all = parts.reduce((sum, own) => sum + own, 0);
  const middles: number[] = [];
  const drawn: string[] = [];
  let top = y;
  for (const [n, own] of parts.entries()) {
    const tall = (own / all) * height;
    middles.push(top + tall / 2);
    drawn.push(
      `<rect x="${x}" y="${at(top)}" width="${width}" height="${at(tall)}" fill="${LIQUIDS[n % LIQUIDS.length]}" stroke="${INK}" stroke-width="2"/>`,
    );
    drawn.push(slanted(n, { x, y: top, width, height: tall }));
    if (tall >= 26)
      drawn.push(
        `<circle cx="${x + width / 2}" cy="${at(top + tall / 2)}" r="13" fill="#fffcf6"/><text x="${x + width / 2}" y="${at(top + tall / 2 + 6)}" font-size="18" font-weight="600" text-anchor="middle" fill="${INK}">${own}</text>`,
      );
    top += tall;
  }
  return { svg: `<g>${drawn.join("")}</g>`, middles };
}

/** No lines for the first, then more and more of them. */
function slanted(n: number, { x, y, width, height }: Box): string {
  const apart = [0, 22, 14, 34, 10, 18][n % 6]!;
  if (apart === 0) return "";
  const path: string[] = [];
  for (let down = apart; down < height; down += apart) path.push(`M${x} ${at(y + down)}h${width}`);
  return path.length === 0
    ? ""
    : `<path d="${path.join("")}" stroke="${INK}" stroke-opacity="0.35" stroke-width="1.5"/>`;
}

const at = (value: number): string => String(Number(value.toFixed(2)));
