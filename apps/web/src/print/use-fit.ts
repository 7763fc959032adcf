import { type RefObject, useLayoutEffect, useRef } from "react";

/** Below this per cent of its size, print is too small to be read: 9 pt become 5.4. */
const LEAST = 60;

/**
 * Sets `--fit` on a paper of a fixed size: 1, or as much less as it takes until all of it is on the paper. Where even the least is too
 * much, `data-over` is set, by which the paper leaves out what it can do without and says so. Measured in millimetres of the page, which
 * are the same on screen and in print.
 */
export function useFit(of: unknown): RefObject<HTMLElement | null> {
  const paper = useRef<HTMLElement | null>(null);
  useLayoutEffect(() => {
    const fit = (): void => {
      const { current } = paper;
      if (current === null) return;
      for (const over of [false, true]) {
        current.toggleAttribute("data-over", over);
        for (let percent = 100; percent >= LEAST; percent -= 2) {
          current.style.setProperty("--fit", String(percent / 100));
          if (current.scrollHeight <= current.clientHeight && current.scrollWidth <= current.clientWidth)
            return;
        }
      }
    };
    fit();
    // Letters are as wide as their own face only once it is there.
    void document.fonts.ready.then(fit);
  }, [of]);
  return paper;
}
