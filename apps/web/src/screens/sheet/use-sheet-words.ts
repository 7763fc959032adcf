import type { LearnedWord, Sheet } from "@partsproof/house/protocol";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { api, asRefusal, inTime } from "../../api.ts";
import { keepWords, type KeptWords, keptWords, readBy } from "../../noting/index.ts";
import { announce } from "../../parts/index.ts";
import { drawKey } from "../../session/index.ts";

export interface SheetWords {
  readonly words: readonly LearnedWord[];
  /** Counts at once on this phone; the house hears of it when it can be reached. */
  readonly teach: (word: LearnedWord) => void;
}

/** The words that this sheet is read by: told with the sheet, kept for when there is no network, and taught here. */
export function useSheetWords(sheet: Sheet, household: string, token: string): SheetWords {
  const [words, setWords] = useState(() => keptWords(sheet.id));
  const sending = useRef(false);
  const keep = useCallback(
    (next: KeptWords): void => {
      keepWords(sheet.id, next);
      setWords(next);
    },
    [sheet.id],
  );
  const sync = useCallback(async (): Promise<void> => {
    if (sending.current) return;
    sending.current = true;
    const at = { household, flight: sheet.flightId, sheet: sheet.id };
    try {
      for (let [next] = keptWords(sheet.id).unsent; next !== undefined; [next] = keptWords(sheet.id).unsent) {
        const { key, phrase, attribute } = next;
        const refused = await inTime((signal) =>
          api("teachAtSheet", { at, token, body: { key, phrase, means: attribute }, signal }),
        ).then(
          () => null,
          (error: unknown) => asRefusal(error),
        );
        // Not reached: it stays, and is sent again.
        if (refused !== null && (refused.status < 400 || refused.status >= 500)) return;
        if (refused !== null) announce(refused.issues[0]?.message ?? `“${phrase}” could not be taught`);
        const now = keptWords(sheet.id);
        const told = refused === null ? [...now.told, { phrase, attribute }] : now.told;
        keep({ told, unsent: now.unsent.filter((one) => one.key !== key) });
      }
      const { items } = await inTime((signal) => api("getSheetWords", { at, token, signal }));
      keep({ ...keptWords(sheet.id), told: items });
    } catch {
      // What is kept is read by.
    } finally {
      sending.current = false;
    }
  }, [household, token, sheet.flightId, sheet.id, keep]);
  useEffect(() => {
    const online = (): void => void sync();
    const first = setTimeout(online);
    globalThis.addEventListener("online", online);
    return () => {
      clearTimeout(first);
      globalThis.removeEventListener("online", online);
    };
  }, [sync]);
  const teach = useCallback(
    (word: LearnedWord): void => {
      const now = keptWords(sheet.id);
      keep({ ...now, unsent: [...now.unsent, { ...word, key: drawKey() }] });
      void sync();
    },
    [sheet.id, keep, sync],
  );
  // Compared by what they say: a chip is read anew only when they change.
  const said = JSON.stringify(readBy(words));
  return useMemo(() => ({ words: JSON.parse(said) as readonly LearnedWord[], teach }), [said, teach]);
}
