import { type RefObject, useEffect, useLayoutEffect, useRef } from "react";

/** What a slider takes for itself. */
const ITS_KEYS = new Set([
  "ArrowLeft",
  "ArrowRight",
  "ArrowUp",
  "ArrowDown",
  "Home",
  "End",
  "PageUp",
  "PageDown",
]);

/**
 * Hears the browser's slider, moved by keys or a screen reader, at the slider itself: React asks at each key what is selected, and the
 * page is styled anew to answer it, which takes a slow phone longer than the move.
 */
export function useMoved(dot: RefObject<HTMLInputElement | null>, onMove: (value: number) => void): void {
  const newest = useRef(onMove);
  useLayoutEffect(() => {
    newest.current = onMove;
  });
  useEffect(() => {
    const slider = dot.current;
    if (slider === null) return undefined;
    const over = new AbortController();
    const { signal } = over;
    const own = (event: KeyboardEvent): void => {
      if (ITS_KEYS.has(event.key)) event.stopPropagation();
    };
    slider.addEventListener("keydown", own, { signal });
    slider.addEventListener("keyup", own, { signal });
    slider.addEventListener(
      "input",
      (event) => {
        event.stopPropagation();
        newest.current(Number(slider.value));
      },
      { signal },
    );
    return () => over.abort();
  }, [dot]);
}
