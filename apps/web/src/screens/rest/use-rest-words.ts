import type { LearnedWord } from "@partsproof/house/protocol";
import { useCallback, useMemo } from "react";
import { useAsk, useSay } from "../../api.ts";
import { useHousehold } from "../../session/index.ts";
import type { SheetWords } from "../sheet/use-sheet-words.ts";

/** The household's own words, by which a check tasting is read; what a chip teaches is taught to the household at once. */
export function useRestWords(): SheetWords {
  const at = { household: useHousehold().id };
  const { household } = at;
  const told = useAsk("listWords", { at }).answer;
  const { send } = useSay("teachWord");
  const words = useMemo(
    () =>
      (told?.items ?? []).flatMap(({ phrase, means }): LearnedWord[] =>
        means === null ? [] : [{ phrase, attribute: means }],
      ),
    [told],
  );
  const teach = useCallback(
    ({ phrase, attribute }: LearnedWord): void =>
      void send({ at: { household }, body: { phrase, means: attribute } }),
    [household, send],
  );
  return useMemo(() => ({ words, teach }), [words, teach]);
}
