import type { Drawing, Shape } from "./drawing.ts";
import { isWide } from "./drawing.ts";
import { fitted } from "./draw-rows.ts";

/** Who was called what: rows were poured, columns were named, both by the same numbers; the way down from the left is right. */
export function drawBoard(
  names: readonly string[],
  board: readonly (readonly number[])[],
  width: number,
): Drawing {
  const wide = isWide(width);
  const labels = wide ? 330 : 0;
  const lead = wide ? 0 : 22;
  const cell = Math.min(46, (width - labels - lead) / names.length);
  const each = wide ? cell : cell + 20;
  const top = 28;
  const left = labels + lead;
  const most = Math.max(1, ...board.flat());
  const shapes: Shape[] = names.flatMap((name, i): Shape[] => {
    const y = top + i * each + (wide ? 0 : 20);
    const middle = y + cell / 2;
    return [
      {
        kind: "text",
        at: [left + (i + 0.5) * cell, 18],
        says: String(i + 1),
        tone: "soft",
        anchor: "middle",
        size: 13,
      },
      {
        kind: "text",
        at: [0, wide ? middle + 5 : y - 5],
        says: fitted(`${i + 1} ${name}`, (wide ? labels : width) - 8, 14),
        tone: "ink",
        size: 14,
      },
      { kind: "line", from: [left, y], to: [left + names.length * cell, y], tone: "line" },
      ...names.flatMap((_, j): Shape[] => {
        const count = board[i]?.[j] ?? 0;
        const x = left + (j + 0.5) * cell;
        if (count === 0) return i === j ? [{ kind: "dot", at: [x, middle], r: 2, tone: "edge" }] : [];
        const r = Math.max(9, (cell / 2 - 2) * Math.sqrt(count / most));
        return [
          { kind: "dot", at: [x, middle], r, tone: i === j ? "fill" : "ink", ring: i !== j },
          {
            kind: "text",
            at: [x, middle + 5],
            says: String(count),
            tone: "ink",
            anchor: "middle",
            size: 14,
            strong: true,
          },
        ];
      }),
    ];
  });
  return { width, height: top + names.length * each + 6, shapes };
}
