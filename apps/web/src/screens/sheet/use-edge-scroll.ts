import { useEffect, useRef } from "react";

const NEAR_PX = 96;
const STEP_PX = 9;

/** While something is dragged near the upper or lower edge of the window, scrolls that way and tells of it. */
export function useEdgeScroll(clientY: number | null, onScrolled: () => void): void {
  const latest = useRef({ clientY, onScrolled });
  useEffect(() => {
    latest.current = { clientY, onScrolled };
  });
  const dragging = clientY !== null;
  useEffect(() => {
    if (!dragging) return undefined;
    let frame = 0;
    const tick = (): void => {
      const y = latest.current.clientY;
      const way = y === null ? 0 : y < NEAR_PX ? -STEP_PX : y > innerHeight - NEAR_PX ? STEP_PX : 0;
      const before = scrollY;
      if (way !== 0) scrollBy({ top: way, behavior: "instant" });
      if (scrollY !== before) latest.current.onScrolled();
      frame = requestAnimationFrame(tick);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [dragging]);
}
