import { type RefObject, useEffect } from "react";
import { focusAfter, giveFocus } from "./focus-after.ts";

/** Commands answer within this, or the screen says that they are busy. */
const WATCHED_MS = 5_000;

/**
 * A button that its own command takes away (a form in its place, a row less) leaves the focus nowhere, and a screen reader begins the
 * page anew. Here it goes to what came in its stead, or to the heading of the part it stood in (`focusAfter`).
 * WCAG 2.2, 2.4.3; common practice for single pages. Watches only for a while after something was pressed.
 */
export function useKeptFocus(within: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const box = within.current;
    if (box === null) return undefined;
    const over = new AbortController();
    const { signal } = over;
    let above: readonly Element[] = [];
    let came: Element[] = [];
    let lost: Element | null = null;
    let rest = 0;
    let frame = 0;
    const settle = (): void => {
      frame = 0;
      if (lost === null || !isGone(lost) || document.activeElement !== document.body) {
        came = [];
        return;
      }
      const to = focusAfter(above, came);
      if (to !== undefined) giveFocus(to, came);
      came = [];
    };
    const watch = new MutationObserver((changes) => {
      for (const { addedNodes } of changes) {
        for (const node of addedNodes) if (node instanceof Element) came.push(node);
      }
      // A frame later: what takes the focus by itself has done so.
      if (frame === 0) frame = requestAnimationFrame(settle);
    });
    const stop = (): void => {
      watch.disconnect();
      came = [];
    };
    box.addEventListener(
      "focusin",
      ({ target }) => {
        if (!(target instanceof Element)) return;
        lost = target;
        above = ancestorsOf(target, box);
      },
      { signal },
    );
    box.addEventListener(
      "click",
      () => {
        watch.observe(box, { childList: true, subtree: true, attributeFilter: ["disabled"] });
        window.clearTimeout(rest);
        rest = window.setTimeout(stop, WATCHED_MS);
      },
      { signal, capture: true },
    );
    return () => {
      over.abort();
      stop();
      window.clearTimeout(rest);
      cancelAnimationFrame(frame);
    };
  }, [within]);
}

/** Nearest first, up to and with the box. */
function ancestorsOf(element: Element, box: Element): readonly Element[] {
  const found: Element[] = [];
  for (let at = element.parentElement; at !== null; at = at.parentElement) {
    found.push(at);
    if (at === box) break;
  }
  return found;
}

/** Taken away, or disabled by what it did itself. */
const isGone = (element: Element): boolean => !element.isConnected || element.matches(":disabled");
