import { type PointerEvent as Pressed, type RefObject, useCallback, useLayoutEffect, useRef } from "react";

export interface Drag {
  /** The value that was held when it began. */
  readonly onHold: () => number;
  /** How far along, 0 to 1. */
  readonly onMove: (share: number) => void;
  /** What was held at first when the page took the finger for itself, else null. */
  readonly onLoose: (before: number | null) => void;
}

/**
 * A finger or mouse along a rail. The browser's own slider lays its page out at every move, which takes a slow phone longer than a
 * frame; this one measures once, as it is pressed. Keys and screen readers have the browser's slider.
 *
 * @returns what to call when the rail is pressed
 */
export function useDrag(rail: RefObject<HTMLElement | null>, drag: Drag): (event: Pressed) => void {
  const newest = useRef(drag);
  useLayoutEffect(() => {
    newest.current = drag;
  });
  return useCallback(
    (event) => {
      const along = rail.current;
      if (along === null || event.button !== 0 || !event.isPrimary) return;
      // No mouse events beside the pointer's, no selection; the focus is given by hand.
      event.preventDefault();
      const { left, width } = along.getBoundingClientRect();
      const dot = along.querySelector(".strip-thumb")?.getBoundingClientRect().width ?? 0;
      const { pointerId } = event;
      const before = newest.current.onHold();
      const over = new AbortController();
      const to = ({ clientX }: { readonly clientX: number }): void =>
        newest.current.onMove(Math.min(1, Math.max(0, (clientX - left - dot / 2) / (width - dot))));
      const loose = (value: number | null): void => {
        over.abort();
        newest.current.onLoose(value);
      };
      const own = (then: (event: PointerEvent) => void) => (one: PointerEvent) => {
        if (one.pointerId !== pointerId) return;
        one.stopPropagation();
        then(one);
      };
      const { signal } = over;
      along.setPointerCapture(pointerId);
      along.addEventListener("pointermove", own(to), { signal });
      along.addEventListener(
        "pointerup",
        own(() => loose(null)),
        { signal },
      );
      along.addEventListener(
        "pointercancel",
        own(() => loose(before)),
        { signal },
      );
      to(event);
    },
    [rail],
  );
}
