import type { AnswerOf, Call, Issue, Refusal, RouteName } from "@partsproof/house/protocol";
import { useCallback, useRef, useState } from "react";
import { written } from "./answers.ts";
import { api, asRefusal } from "./client.ts";

export interface Say<N extends RouteName> {
  /** Sends it. The answer, or `null` when it was refused: the issues then tell why. */
  readonly send: (call: Call<N>) => Promise<AnswerOf<N> | null>;
  readonly busy: boolean;
  /** Grows with every refusal, so that a summary can take the focus each time. */
  readonly tries: number;
  readonly refusal: Refusal | null;
  readonly issues: readonly Issue[];
  /** Refuses before sending: what the app itself can see is wrong. */
  readonly refuse: (issues: readonly Issue[]) => void;
  readonly clear: () => void;
}

interface State {
  readonly busy: boolean;
  readonly tries: number;
  readonly refusal: Refusal | null;
  readonly issues: readonly Issue[];
}
const NOTHING: State = { busy: false, tries: 0, refusal: null, issues: [] };

/** Writes to the house by a route's name, and keeps what it refused. One write at a time. */
export function useSay<N extends RouteName>(name: N): Say<N> {
  const [state, setState] = useState(NOTHING);
  const busy = useRef(false);

  const send = useCallback(
    async (call: Call<N>): Promise<AnswerOf<N> | null> => {
      if (busy.current) return null;
      busy.current = true;
      setState((s) => ({ ...s, busy: true }));
      try {
        const answer = await api(name, call);
        setState((s) => ({ ...NOTHING, tries: s.tries }));
        written();
        // A route without an answer (204) still tells success from refusal.
        return answer ?? (true as unknown as AnswerOf<N>);
      } catch (error) {
        const refusal = asRefusal(error);
        setState((s) => ({ busy: false, tries: s.tries + 1, refusal, issues: refusal.issues }));
        return null;
      } finally {
        busy.current = false;
      }
    },
    [name],
  );
  const refuse = useCallback((issues: readonly Issue[]) => {
    setState((s) => ({ busy: false, tries: s.tries + 1, refusal: null, issues }));
  }, []);
  const clear = useCallback(() => setState((s) => ({ ...NOTHING, tries: s.tries })), []);
  return { send, ...state, refuse, clear };
}
