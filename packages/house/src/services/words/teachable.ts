import { ENGLISH, saysHow } from "@partsproof/core/notes";
import { refuse } from "../refuse.ts";

/** V5: a phrase that says how, where or whether would leave notes unreadable. */
export function needTeachable(phrase: string): void {
  if (!saysHow(phrase, ENGLISH)) return;
  refuse(422, {
    code: "word_says_how",
    path: ["phrase"],
    limit: "a phrase that does not say how, where or whether",
    received: phrase,
    message: `teaching requires a phrase that does not say how, where or whether something is there, got ${phrase}`,
  });
}

export function tooManyWords(most: number, whose: string, count: number): never {
  refuse(422, {
    code: "too_many_words",
    path: ["phrase"],
    limit: `${most} phrases`,
    received: count + 1,
    message: `${whose} requires at most ${most} taught phrases, got ${count + 1}: forget one first`,
  });
}
