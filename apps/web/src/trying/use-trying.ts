import type { Parts, WhatIf } from "@partsproof/core/learning";
import type { NextFlightDraft } from "@partsproof/house/protocol";
import { useEffect, useRef, useState } from "react";
import type { Answered, Asking } from "./answer-trying.ts";
import type { FromTrying, ToTrying } from "./trying.worker.ts";

export interface Trying {
  /** The newest answer, perhaps to the question before; null before there is one. */
  readonly answered: Answered | null;
  /** Whether it answers what is asked now. */
  readonly current: boolean;
  /** What is believed of `mixes`, in their order; empty while it is being reckoned. */
  readonly beliefs: readonly WhatIf[];
  /** Why nothing could be reckoned, in words; null where it could. */
  readonly failed: string | null;
}

/**
 * Proposes a flight in a worker whenever what is asked changes, and says what is believed of some mixes whenever those change.
 */
export function useTrying(
  asked: NextFlightDraft | null,
  corners: Asking["corners"],
  mixes: readonly Parts[],
): Trying {
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [told, setTold] = useState<{ readonly key: string; readonly beliefs: readonly WhatIf[] } | null>(
    null,
  );
  const [failed, setFailed] = useState<string | null>(null);
  const [wanted, setWanted] = useState(0);
  const ifs = useRef(new Map<number, string>());

  useEffect(() => {
    const own = new Worker(new URL("./trying.worker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    own.addEventListener("message", ({ data }: MessageEvent<FromTrying>) => {
      if (data.kind === "failed") setFailed(data.message);
      else if (data.kind === "flight") {
        setFailed(null);
        setAnswered(data);
      } else {
        const key = ifs.current.get(data.turn);
        ifs.current.delete(data.turn);
        if (key !== undefined) setTold({ key, beliefs: data.beliefs });
      }
    });
    own.addEventListener("error", () => setFailed("the part of the app that reckons did not start"));
    return () => {
      own.terminate();
      worker.current = null;
    };
  }, []);

  const question = asked === null ? null : JSON.stringify([asked, corners]);
  useEffect(() => {
    if (question === null) return;
    const [own, at] = JSON.parse(question) as [NextFlightDraft, Asking["corners"]];
    turn.current += 1;
    setWanted(turn.current);
    worker.current?.postMessage({
      kind: "flight",
      turn: turn.current,
      asked: own,
      corners: at,
    } satisfies ToTrying);
  }, [question]);

  const anchor = answered?.anchor ?? null;
  const what = asked === null || answered === null ? null : JSON.stringify([asked, anchor, mixes]);
  useEffect(() => {
    if (what === null) return;
    const [own, held, some] = JSON.parse(what) as [NextFlightDraft, Parts | null, readonly Parts[]];
    turn.current += 1;
    ifs.current.set(turn.current, what);
    worker.current?.postMessage({
      kind: "if",
      turn: turn.current,
      asked: own,
      anchor: held,
      mixes: some,
    } satisfies ToTrying);
  }, [what]);

  return {
    answered,
    current: answered !== null && answered.turn === wanted,
    beliefs: told !== null && told.key === what ? told.beliefs : [],
    failed,
  };
}
