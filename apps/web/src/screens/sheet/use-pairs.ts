import { useState } from "react";
import { keep, kept } from "../../session/index.ts";
import type { PairAnswer } from "./pair-questions.ts";

/** What was said of pairs so far, kept on this phone so that it can be left and gone on with. */
export function usePairs(
  id: string,
  codes: readonly string[],
): [readonly PairAnswer[], (next: readonly PairAnswer[]) => void] {
  const key = `pairs.${id}`;
  const [answers, setAnswers] = useState<readonly PairAnswer[]>(() => readPairs(kept(key), codes));
  return [
    answers,
    (next) => {
      setAnswers(next);
      keep(key, next.length === 0 ? null : JSON.stringify(next));
    },
  ];
}

function readPairs(text: string | null, codes: readonly string[]): readonly PairAnswer[] {
  try {
    const read = JSON.parse(text ?? "[]") as PairAnswer[];
    const whole = read.every(
      ({ pair, ahead }) =>
        pair.length === 2 && pair.every((code) => codes.includes(code)) && [...pair, "level"].includes(ahead),
    );
    return whole ? read : [];
  } catch {
    return [];
  }
}
