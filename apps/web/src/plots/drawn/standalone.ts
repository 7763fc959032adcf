import type { Drawing, Shape, Table, Tone } from "./drawing.ts";

/** Ink on paper, as in the light theme; a file has no theme. Contrast of text on paper is above 7 to 1. */
const COLOURS: Readonly<Record<Tone, string>> = {
  ink: "#241a12",
  soft: "#5b4c3f",
  line: "#d9cdbd",
  edge: "#8a7763",
  fill: "#d99a3d",
  paper: "#fffdf9",
};

export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const n = (x: number): string => String(Number(x.toFixed(2)));

function drawn(shape: Shape): string {
  const colour = COLOURS[shape.tone];
  switch (shape.kind) {
    case "line":
      return `<line x1="${n(shape.from[0])}" y1="${n(shape.from[1])}" x2="${n(shape.to[0])}" y2="${n(shape.to[1])}" stroke="${colour}" stroke-width="${shape.width ?? 1}"/>`;
    case "dot":
      return `<circle cx="${n(shape.at[0])}" cy="${n(shape.at[1])}" r="${n(shape.r)}" ${shape.ring === true ? `fill="${COLOURS.paper}" stroke="${colour}" stroke-width="2"` : `fill="${colour}" stroke="${COLOURS.ink}"`}/>`;
    case "oval":
      return `<ellipse cx="${n(shape.at[0])}" cy="${n(shape.at[1])}" rx="${n(shape.r[0])}" ry="${n(shape.r[1])}" transform="rotate(${n(shape.turn)} ${n(shape.at[0])} ${n(shape.at[1])})" fill="none" stroke="${colour}" stroke-width="1.5"/>`;
    case "area":
      return `<polygon points="${shape.points.map(([x, y]) => `${n(x)},${n(y)}`).join(" ")}" fill="${colour}"${shape.tone === "fill" ? ` stroke="${COLOURS.ink}"` : ""}/>`;
    case "text":
      return `<text x="${n(shape.at[0])}" y="${n(shape.at[1])}" fill="${colour}" font-size="${shape.size ?? 14}" text-anchor="${shape.anchor ?? "start"}"${shape.strong === true ? ' font-weight="700"' : ""}>${escaped(shape.says)}</text>`;
  }
}

const LINE = 22;

/** A title broken into lines that fit. */
function lines(title: string, width: number): string[] {
  const most = Math.floor(width / 8.6);
  return title.split(" ").reduce<string[]>((all, word) => {
    const last = all.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      return [...all.slice(0, -1), `${last} ${word}`];
    return [...all, word];
  }, []);
}

/** A figure as an SVG file: its title says the finding, and what is small below it where that comes from. */
export function standaloneSvg(drawing: Drawing, title: string, note: string): string {
  const [heading, small] = [lines(title, drawing.width), lines(note, drawing.width * 1.2)];
  const top = heading.length * LINE + 12;
  const height = top + drawing.height + small.length * 18 + 10;
  const width = drawing.width + 32;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${n(height + 24)}" viewBox="-16 -12 ${width} ${n(height + 24)}" font-family="sans-serif" role="img">`,
    `<title>${escaped(title)}</title>`,
    `<rect x="-16" y="-12" width="${width}" height="${n(height + 24)}" fill="${COLOURS.paper}"/>`,
    ...heading.map(
      (line, i) =>
        `<text x="0" y="${(i + 1) * LINE - 4}" fill="${COLOURS.ink}" font-size="18" font-weight="700" font-family="serif">${escaped(line)}</text>`,
    ),
    `<g transform="translate(0 ${top})">`,
    ...drawing.shapes.map(drawn),
    "</g>",
    ...small.map(
      (line, i) =>
        `<text x="0" y="${n(top + drawing.height + (i + 1) * 18)}" fill="${COLOURS.soft}" font-size="13">${escaped(line)}</text>`,
    ),
    "</svg>",
  ].join("\n");
}

/** A table as comma-separated values (RFC 4180); a cell that a spreadsheet would take for a formula is given a quote first. */
export function csvOf({ heads, rows }: Table): string {
  const cell = (text: string): string => {
    const safe = /^[=+@\t\r]|^-(?!\d)/.test(text) ? `'${text}` : text;
    return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
  };
  return [heads, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}
