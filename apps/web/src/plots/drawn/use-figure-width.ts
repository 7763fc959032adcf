import { useSyncExternalStore } from "react";
import { WIDTHS } from "./drawing.ts";

const wide = (): MediaQueryList => window.matchMedia("(min-width: 48rem)");

function follow(changed: () => void): () => void {
  const query = wide();
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

/** At which of the two widths figures are drawn now. */
export const useFigureWidth = (): number =>
  useSyncExternalStore(follow, () => (wide().matches ? WIDTHS.wide : WIDTHS.narrow));
