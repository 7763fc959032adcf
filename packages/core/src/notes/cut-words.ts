/** A word, or what a mark of punctuation does. */
export interface Token {
  readonly mark: "" | "comma" | "colon" | "stop" | "ask" | "blank";
  /** Folded: lower case, no accents, plain apostrophes. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly capital: boolean;
}

const LONGEST_WORD = 40;
const MARKS: Readonly<Record<string, Token["mark"]>> = {
  ",": "comma",
  "(": "comma",
  ")": "comma",
  "/": "comma",
  "…": "comma",
  "—": "comma",
  "–": "comma",
  ":": "colon",
  ".": "stop",
  "!": "stop",
  ";": "stop",
  "?": "ask",
  "•": "stop",
  "|": "stop",
};
const LETTER = /[\p{L}\p{N}]/u;
const BEFORE_WORD = /^ ?[\p{L}\p{N}]/u;
const ACCENTS = /\p{M}+/gu;

const isWord = (code: number, text: string, at: number): boolean =>
  code < 128
    ? (code > 96 && code < 123) || (code > 64 && code < 91) || (code > 47 && code < 58)
    : (code < 0xd800 || code > 0xdfff) && (LETTER.test(text[at] ?? "") || (code > 0x2ff && code < 0x370));

const fold = (word: string): string => {
  const lower = word.toLowerCase().replaceAll("’", "'");
  for (let at = 0; at < lower.length; at++)
    if (lower.charCodeAt(at) > 127)
      return lower.normalize("NFD").replace(ACCENTS, "").replaceAll("œ", "oe").replaceAll("ß", "ss");
  return lower;
};

/** "Lane", not "LANE": shouting is no name. */
const isName = (word: string): boolean => {
  const [first = "", second = ""] = word;
  return first !== first.toLowerCase() && second === second.toLowerCase() && second !== "";
};

const isApostrophe = (code: number): boolean => code === 39 || code === 0x2019;

const INITIALS = /^(?:[a-z]\.){2,3}(?![a-z])/i;

const NONE: ReadonlySet<string> = new Set();

/**
 * Words and marks of a text, from left to right, each with where it stands in UTF-16 units. Linear in the text's length.
 *
 * @param shortened words whose full stop ends no sentence ("v. floral")
 */
export function cutWords(text: string, shortened: ReadonlySet<string> = NONE): Token[] {
  const tokens: Token[] = [];
  const mark = (kind: Token["mark"], start: number, end: number): void => {
    const last = tokens.at(-1);
    if (last !== undefined && last.mark !== "" && (kind === "comma" || last.mark === "blank")) return;
    tokens.push({ mark: kind, text: "", start, end, capital: false });
  };
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at);
    if (isWord(code, text, at)) {
      let end = at + 1;
      for (; end < text.length; end++) {
        const next = text.charCodeAt(end);
        if (isWord(next, text, end)) continue;
        const inside =
          isApostrophe(next) && end + 1 < text.length && isWord(text.charCodeAt(end + 1), text, end + 1);
        const decimal = next === 46 && code < 58 && code > 47 && /\d/.test(text[end + 1] ?? "");
        if (!inside && !decimal) break;
      }
      // "a.m.", "e.g."
      const letters = end === at + 1 ? (INITIALS.exec(text.slice(at, at + 8))?.[0] ?? "") : "";
      if (letters !== "") end = at + letters.length;
      const word = letters === "" ? text.slice(at, end) : letters.replaceAll(".", "");
      const folded = word.length > LONGEST_WORD ? "" : fold(word);
      tokens.push({ mark: "", text: folded, start: at, end, capital: isName(word) });
      at = end;
      continue;
    }
    const here = text[at] ?? "";
    if (here === "\n") {
      let end = at + 1;
      let lines = 1;
      for (; end < text.length && /\s/.test(text[end] ?? ""); end++) if (text[end] === "\n") lines++;
      mark(lines > 1 ? "blank" : "stop", at, end);
      at = end;
    } else if (here === "&" || here === "+") {
      let end = at + 1;
      while (text[end] === "+") end++;
      // "clove++" is how strong, "clove +" is there, "clove + oak" is both.
      const strong = end - at > 1;
      if (strong || BEFORE_WORD.test(text.slice(end, end + 2)))
        tokens.push({ mark: "", text: strong ? "++" : "and", start: at, end, capital: false });
      at = end;
    } else {
      const dash = here === "-" && (text[at - 1] ?? " ").trim() === "";
      const pause = here === "." && text[at + 1] === ".";
      const last = tokens.at(-1);
      // "no. 3", but "smoke, no. Honey": a full stop that shortens "no" has a number behind it.
      const numbered = last?.text !== "no" || /^\s*\d/.test(text.slice(at + 1, at + 4));
      // "faded a bit. Oak": a sentence begins behind it; not "St. Clement's".
      const begins = last?.capital === false && /^\.\s+[A-Z][a-z']/.test(text.slice(at, at + 6));
      const short = here === "." && last?.end === at && shortened.has(last.text) && numbered && !begins;
      const kind = short ? undefined : dash || pause ? "comma" : MARKS[here];
      if (kind !== undefined) mark(kind, at, at + 1);
      at++;
      if (pause) while (text[at] === ".") at++;
    }
  }
  return tokens;
}
