/** From and to of a value in a text, in UTF-16 units. */
export interface TextPlace {
  readonly from: number;
  readonly to: number;
  /** Of its beginning, from 1. */
  readonly line: number;
}

const SPACE = /\s/;

/**
 * Where the value at `path` stands in a text of JSON; of a path that goes further than the text, the last of it that is there.
 *
 * @param text that JSON.parse reads
 */
export function placeInJson(text: string, path: readonly (string | number)[]): TextPlace {
  let at = 0;
  let found = { from: 0, to: text.length };
  const space = (): void => {
    while (SPACE.test(text[at] ?? "")) at += 1;
  };
  const string = (): string => {
    const from = at;
    for (at += 1; at < text.length && text[at] !== '"'; at += 1) if (text[at] === "\\") at += 1;
    at += 1;
    return JSON.parse(text.slice(from, at)) as string;
  };
  /** `depth` parts of the path lead here; -1 beside it. */
  const value = (depth: number): void => {
    space();
    const from = at;
    const open = text[at];
    if (open === "{" || open === "[") {
      at += 1;
      space();
      for (let n = 0; at < text.length && text[at] !== "}" && text[at] !== "]"; n += 1) {
        let key = String(n);
        if (open === "{") {
          key = string();
          space();
          at += 1;
        }
        value(depth >= 0 && depth < path.length && String(path[depth]) === key ? depth + 1 : -1);
        space();
        if (text[at] === ",") at += 1;
        space();
      }
      at += 1;
    } else if (open === '"') string();
    else while (at < text.length && !/[\s,\]}]/.test(text[at] ?? "")) at += 1;
    // Inner values end first: only what no deeper part of the path was found in is taken.
    if (depth > deepest) {
      deepest = depth;
      found = { from, to: at };
    }
  };
  let deepest = -1;
  value(0);
  return { ...found, line: text.slice(0, found.from).split("\n").length };
}
