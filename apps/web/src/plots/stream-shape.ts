/** What a vessel held from one moment on. */
export interface StreamPoint {
  /** Milliseconds of any clock, not falling. */
  readonly at: number;
  readonly ml: number;
  /** Shares of it, in the order of the layers. */
  readonly parts: readonly number[];
}

export interface StreamShape {
  /** One closed outline a layer, the lowest first. */
  readonly paths: readonly string[];
  /** Points that were drawn, of those there are. */
  readonly drawn: number;
}

export interface StreamPlace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly from: number;
  readonly until: number;
  readonly mostMl: number;
}

/** A boundary that moves by less than this is not seen to move. */
const SEEN_PX = 0.3;

/**
 * Layers of liquid over time. What is in a vessel stays what it is until something is moved, so outlines go in steps. Of the points that fall
 * on one column of pixels the first, the last, the fullest and the emptiest are drawn, and of these no more than can be seen to differ: at
 * most four a column, however many there are.
 */
export function streamShape(points: readonly StreamPoint[], layers: number, place: StreamPlace): StreamShape {
  const { left, right, top, bottom, from, until, mostMl } = place;
  const x = (at: number): number => left + ((at - from) / Math.max(1, until - from)) * (right - left);
  const y = (ml: number): number => bottom - (ml / mostMl) * (bottom - top);
  const columns = points.map(({ at }) => Math.round(x(at)));
  const kept: { readonly x: number; readonly edges: readonly number[] }[] = [];
  for (const i of telling(points, columns)) {
    const point = points[i] as StreamPoint;
    let sum = 0;
    const edges = [y(0)];
    for (let layer = 0; layer < layers; layer += 1) {
      sum += point.parts[layer] ?? 0;
      edges.push(y(point.ml * sum));
    }
    const before = kept.at(-1)?.edges;
    const seen =
      before === undefined || edges.some((edge, n) => Math.abs(edge - (before[n] ?? 0)) >= SEEN_PX);
    if (seen) kept.push({ x: x(point.at), edges });
  }
  const paths = Array.from({ length: layers }, (_, layer) => {
    const upper = kept.map((one, i) => step(one.x, one.edges[layer + 1] ?? 0, i === 0 ? "M" : "H"));
    const lower = kept.toReversed().map((one) => `V${few(one.edges[layer] ?? 0)}H${few(one.x)}`);
    return kept.length === 0 ? "" : `${upper.join("")}H${few(right)}${lower.join("")}Z`;
  });
  return { paths, drawn: kept.length };
}

const step = (x: number, y: number, how: "M" | "H"): string =>
  how === "M" ? `M${few(x)} ${few(y)}` : `H${few(x)}V${few(y)}`;

const few = (value: number): string => String(Math.round(value * 10) / 10);

/** Of every column of pixels the first point, the last, the fullest and the emptiest, in order. */
function telling(points: readonly StreamPoint[], columns: readonly number[]): number[] {
  const chosen: number[] = [];
  for (let begin = 0; begin < points.length; ) {
    let [end, full, empty] = [begin, begin, begin];
    while (end + 1 < points.length && columns[end + 1] === columns[begin]) {
      end += 1;
      if ((points[end]?.ml ?? 0) > (points[full]?.ml ?? 0)) full = end;
      if ((points[end]?.ml ?? 0) < (points[empty]?.ml ?? 0)) empty = end;
    }
    chosen.push(...[...new Set([begin, full, empty, end])].toSorted((a, b) => a - b));
    begin = end + 1;
  }
  return chosen;
}
