import type { AnswerOf, Call } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { useAsk } from "./use-ask.ts";
import type { Asked } from "./use-asked.ts";

/**
 * What pages are made of that open again without a network. None of it tells what is sealed: a flight shows nothing of its key,
 * and a finding is there only after the reveal. What is written on a sheet is kept apart (screens/sheet).
 */
type Kept = "getHousehold" | "getFlight" | "getFinding";

/** Loaded when it is wanted: nothing on the way to the first page needs a database. */
const pages = () => import("./kept-pages.ts");
// On plain HTTP no page opens without a network, so there is nothing to keep it for.
const keeps = (): boolean => globalThis.isSecureContext;

/**
 * Asks as `useAsk` does; while the house cannot be reached the answer is the one this device last had, with the refusal beside
 * it. Whoever is shut out has none.
 */
export function useAskKept<N extends Kept>(name: N, call: Call<N>): Asked<AnswerOf<N>> {
  const asked = useAsk(name, call);
  const { answer, refusal } = asked;
  const key = JSON.stringify([name, call.at]);
  const [kept, setKept] = useState<{ readonly key: string; readonly answer: unknown } | null>(null);
  useEffect(() => {
    if (answer !== undefined && refusal === null && keeps())
      void pages().then(({ keepPage }) => keepPage(key, answer));
  }, [key, answer, refusal]);
  const status = refusal?.status ?? null;
  const unreached = answer === undefined && status !== null && (status === 0 || status >= 500);
  useEffect(() => {
    let gone = false;
    if (unreached && keeps()) {
      void pages()
        .then(({ keptPage }) => keptPage(key))
        .then((found) => !gone && setKept(found === undefined ? null : { key, answer: found }));
    }
    return () => {
      gone = true;
    };
  }, [key, unreached]);
  useEffect(() => {
    if (status !== null && [401, 403, 404].includes(status) && keeps())
      void pages().then(({ forgetPages }) => forgetPages(key));
  }, [key, status]);
  if (unreached && kept !== null && kept.key === key) {
    return { state: "here", answer: kept.answer as AnswerOf<N>, refusal, again: asked.again };
  }
  return asked;
}
