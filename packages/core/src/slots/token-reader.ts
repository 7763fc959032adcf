import { BETWEEN, DECIMALS, STARTERS } from "./reserved.data.ts";
import type { Token } from "./cut-tokens.ts";

/** Where a rule's text stops being a rule, and what could have stood there. */
export type RuleError = {
  readonly code: "rule_unreadable" | "rule_out_of_bounds";
  /** UTF-16 units of the text. */
  readonly at: number;
  readonly end: number;
  readonly expected: string;
  readonly received: string;
  readonly message: string;
};

/** Ends the reading of one text; it never leaves `parseRule`. */
export class Unreadable extends Error {
  readonly fault: RuleError;
  constructor(fault: RuleError) {
    super(fault.message);
    this.fault = fault;
  }
}

/** Reads pieces one after the other, looking at most at the next one. */
export class TokenReader {
  readonly #tokens: readonly Token[];
  #next = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  get next(): Token {
    return this.#tokens[this.#next]!;
  }

  take(): Token {
    const token = this.next;
    if (this.#next < this.#tokens.length - 1) this.#next += 1;
    return token;
  }

  is(text: string): boolean {
    const { kind, text: own } = this.next;
    return (kind === "word" || kind === "sign") && own.toLowerCase() === text;
  }

  takeIf(text: string): boolean {
    const there = this.is(text);
    if (there) this.take();
    return there;
  }

  /** The next pieces must be these. */
  need(...texts: readonly string[]): void {
    for (const text of texts) if (!this.takeIf(text)) this.fail(text);
  }

  /** Which of these stands here. */
  oneOf<T extends string>(...texts: readonly T[]): T {
    for (const text of texts) if (this.takeIf(text)) return text;
    return this.fail(texts.join(", "));
  }

  number(what: string, least: number, most: number, whole = false): number {
    const { kind, text } = this.next;
    if (kind !== "number") return this.fail(what);
    if ((text.split(".")[1]?.length ?? 0) > DECIMALS)
      this.fail(`${what} with at most ${DECIMALS} decimals`, "rule_out_of_bounds");
    const value = Number(text);
    if (value < least || value > most || (whole && !Number.isInteger(value)))
      this.fail(`${what}: ${whole ? "a whole number " : ""}${least} to ${most}`, "rule_out_of_bounds");
    this.take();
    return value;
  }

  /** One name: words of no other meaning, or anything in quotes. */
  name(what: string): { readonly name: string; readonly quoted: boolean } {
    if (this.next.kind === "quoted") {
      if (this.next.text.trim() === "") this.fail(what);
      return { name: this.take().text, quoted: true };
    }
    const words: string[] = [];
    if (STARTERS.has(this.next.text.toLowerCase())) this.fail(what);
    while (this.next.kind === "word" && !this.is(BETWEEN)) words.push(this.take().text);
    return words.length > 0 ? { name: words.join(" "), quoted: false } : this.fail(what);
  }

  fail(expected: string, code: RuleError["code"] = "rule_unreadable"): never {
    const { kind, text, at, end } = this.next;
    const received = kind === "end" ? "the end" : text;
    const message = `the rule requires ${expected} at character ${at + 1}, got ${received}`;
    throw new Unreadable({ code, at, end, expected, received, message });
  }
}
