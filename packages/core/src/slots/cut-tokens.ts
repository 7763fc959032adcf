/** A piece of a rule's text, and where it stands: UTF-16 units from `at` up to `end`. */
export type Token = {
  readonly kind: "word" | "quoted" | "number" | "sign" | "end" | "unreadable";
  /** A word or sign as written, the text within quotes, a number's digits. */
  readonly text: string;
  readonly at: number;
  readonly end: number;
};

/** Sticky, each without a choice to go back on, so that cutting takes time in proportion to the text. */
const SPACE = /[\s\u00a0]+/uy;
const WORD = /\p{L}[\p{L}\p{M}\p{N}'’&._-]*/uy;
const NUMBER = /\d+(?:\.\d+)?/uy;
const SIGN = />=|<=|[≥≤%,]/uy;
const QUOTED = /"((?:[^"\\]|\\["\\])*)"/uy;

const SIGNS: Readonly<Record<string, string>> = { "≥": ">=", "≤": "<=" };

/** The text in pieces; the last is the end, or the first that is none of the language's. */
export function cutTokens(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  const taken = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    return pattern.exec(text);
  };
  for (;;) {
    at += taken(SPACE)?.[0].length ?? 0;
    if (at >= text.length) return [...tokens, { kind: "end", text: "", at, end: at }];
    const found = readPiece(taken);
    if (found === null) {
      const one = String.fromCodePoint(text.codePointAt(at)!);
      return [...tokens, { kind: "unreadable", text: one, at, end: at + one.length }];
    }
    tokens.push({ kind: found.kind, text: found.text, at, end: at + found.length });
    at += found.length;
  }
}

function readPiece(
  taken: (pattern: RegExp) => RegExpExecArray | null,
): { readonly kind: Token["kind"]; readonly text: string; readonly length: number } | null {
  const word = taken(WORD);
  if (word) return { kind: "word", text: word[0], length: word[0].length };
  const number = taken(NUMBER);
  if (number) return { kind: "number", text: number[0], length: number[0].length };
  const sign = taken(SIGN);
  if (sign) return { kind: "sign", text: SIGNS[sign[0]] ?? sign[0], length: sign[0].length };
  const quoted = taken(QUOTED);
  if (!quoted) return null;
  return { kind: "quoted", text: quoted[1]!.replaceAll(/\\(["\\])/gu, "$1"), length: quoted[0].length };
}
