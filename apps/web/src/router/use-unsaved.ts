import { useCallback, useEffect, useRef } from "react";
import { holdLeaving } from "./place.ts";

const QUESTION = "Leave this page? What was typed here is not saved.";

/**
 * While `unsaved`, asks before a link leads away or the page is closed. Call the answer once it is saved, before going
 * on. The browser's own step back cannot be asked about.
 */
export function useUnsaved(unsaved: boolean): () => void {
  const isSaved = useRef(false);
  useEffect(() => {
    if (!unsaved) return undefined;
    const stay = holdLeaving(() => !isSaved.current && !globalThis.confirm(QUESTION));
    const closing = (event: BeforeUnloadEvent): void => {
      if (!isSaved.current) event.preventDefault();
    };
    globalThis.addEventListener("beforeunload", closing);
    return () => {
      stay();
      globalThis.removeEventListener("beforeunload", closing);
    };
  }, [unsaved]);
  return useCallback(() => {
    isSaved.current = true;
  }, []);
}
