/** Last answers by question, so that going back shows at once what was there. Memory only: gone with the page. */
const answers = new Map<string, unknown>();
const MOST = 60;
const listeners = new Set<() => void>();

export function answerKept(key: string): unknown {
  return answers.get(key);
}

export function keepAnswer(key: string, answer: unknown): void {
  answers.delete(key);
  answers.set(key, answer);
  const oldest = answers.keys().next();
  if (answers.size > MOST && oldest.done !== true) answers.delete(oldest.value);
}

/** Forgets everything, as after leaving a household for good; what is kept for pages without a network too. */
export function forgetAnswers(): void {
  answers.clear();
  void import("./kept-pages.ts").then(({ forgetPages }) => forgetPages());
}

/** Told after every write: whatever is on screen asks again. */
export function onWritten(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function written(): void {
  for (const listener of listeners) listener();
}
