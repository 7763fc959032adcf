import { columnOf } from "./column.ts";
import { escaped } from "./escaped.ts";
import type { Passed } from "./passed.ts";
import { CARE } from "./words.ts";

const WIDE = 1080;
const TALL = 1350;
const INK = "#261d15";
const SOFT = "#64564a";
const PAPER = "#fffcf6";
const SIDE = 72;
const TOP = 330;
const BOTTOM = 1000;
const SQUARE = 260;

/** A picture of the recipe, 1080 by 1350: the measured column, each part named, a square code where the link fits one. */
export function shareCard({ words, amounts, square }: Passed): string {
  const title = lines(words.name, 30, 2);
  const column = columnOf(
    words.slots.map(({ parts }) => parts),
    { x: SIDE, y: TOP, width: 190, height: BOTTOM - TOP },
  );
  const each = (BOTTOM - TOP) / words.slots.length;
  const small = words.slots.length > 6;
  const rows = words.slots.flatMap(({ parts, title: name, facts, rule }, n) => {
    const middle = TOP + each * (n + 0.5);
    const from = column.middles[n]!;
    const said = small ? [] : lines(rule ?? facts, 46, each > 150 ? 2 : 1);
    const x = SIDE + 190 + 60;
    const top = middle - (said.length * 30) / 2;
    return [
      `<path d="M${SIDE + 190} ${fixed(from)}H${SIDE + 205}L${x - 12} ${fixed(middle)}" fill="none" stroke="${SOFT}" stroke-width="2"/>`,
      text(x, top + 14, `${parts}`, small ? 36 : 54, INK, true),
      text(
        x + (parts > 9 ? 84 : 56),
        top + 12,
        lines(facts === "" || rule === null ? name : `${name}, ${facts}`, 38, 1)[0] ?? "",
        small ? 26 : 30,
        INK,
      ),
      ...said.map((line, i) =>
        text(x, top + 54 + i * 32, i === 0 && rule !== null ? `or any: ${line}` : line, 25, SOFT),
      ),
    ];
  });
  const water = amounts.abv === null ? null : `${amounts.abv.toFixed(1)} % vol`;
  const after = lines(words.after.join(". "), square === null ? 62 : 46, 3);
  const credits = words.credits === null ? [] : lines(words.credits, 46, 1);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDE}" height="${TALL}" viewBox="0 0 ${WIDE} ${TALL}" font-family="Literata, Georgia, serif" role="img">`,
    `<title>${escaped(`${words.name}: ${words.ratio}`)}</title>`,
    `<rect width="${WIDE}" height="${TALL}" fill="${PAPER}"/>`,
    ...title.map((line, i) => text(SIDE, 118 + i * 66, line, 58, INK, true)),
    text(SIDE, 132 + title.length * 66, words.ratio, 54, "#87460f", true),
    column.svg,
    ...rows,
    `<path d="M${SIDE} 1046H${WIDE - SIDE}" stroke="${SOFT}" stroke-width="2"/>`,
    ...(water === null ? [] : [text(SIDE, 1116, water, 54, INK, true)]),
    ...[...after, ...credits].map((line, i) => text(SIDE, 1166 + i * 36, line, 27, INK)),
    ...lines(CARE, square === null ? 92 : 58, 3).map((line, i) => text(SIDE, 1276 + i * 24, line, 18, SOFT)),
    ...(square === null
      ? []
      : [
          `<g transform="translate(${WIDE - SIDE - SQUARE} 1066) scale(${fixed(SQUARE / square.size)})"><rect width="${square.size}" height="${square.size}" fill="#fff"/><path d="${square.path}" stroke="#000" shape-rendering="crispEdges"/></g>`,
        ]),
    "</svg>",
  ].join("\n");
}

const fixed = (x: number): string => String(Number(x.toFixed(3)));
const text = (x: number, y: number, says: string, size: number, colour: string, strong = false): string =>
  `<text x="${fixed(x)}" y="${fixed(y)}" font-size="${size}" fill="${colour}"${strong ? ' font-weight="600"' : ""}>${escaped(says)}</text>`;

/** Words in lines of at most so many characters; what does not fit the last line ends in three dots. */
function lines(said: string, characters: number, most: number): string[] {
  const all: string[] = [];
  for (const word of said.split(/\s+/u)) {
    const last = all.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= characters)
      all[all.length - 1] = `${last} ${word}`;
    else if (word !== "") all.push(word);
  }
  const shown = all
    .slice(0, most)
    .map((line) => (line.length > characters + 4 ? `${line.slice(0, characters)} …` : line));
  return all.length > most ? [...shown.slice(0, -1), `${shown.at(-1)} …`] : shown;
}
