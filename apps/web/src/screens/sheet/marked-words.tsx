import { type RefObject, useLayoutEffect, useRef } from "react";
import { createPortal } from "react-dom";

interface MarkedWordsProps {
  readonly around: RefObject<HTMLElement | null>;
  readonly text: string;
  readonly quote: readonly [start: number, end: number];
}

/** What decides where a word falls in a box. */
const LIKE_BOX = [
  "fontFamily",
  "fontSize",
  "fontWeight",
  "fontStyle",
  "fontVariantNumeric",
  "fontFeatureSettings",
  "letterSpacing",
  "wordSpacing",
  "lineHeight",
  "padding",
  "borderWidth",
  "textIndent",
  "tabSize",
] as const;

/** Marks words of a text box, which cannot mark its own: the same text over it, unseen but for them. */
export function MarkedWords({ around, text, quote: [start, end] }: MarkedWordsProps) {
  const layer = useRef<HTMLDivElement>(null);
  const mark = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const box = around.current?.querySelector("textarea");
    const over = layer.current;
    if (box === null || box === undefined || over === null || mark.current === null) return;
    const place = (): void => {
      const style = getComputedStyle(box);
      for (const name of LIKE_BOX) over.style[name] = style[name];
      // As wide as the text has room, which a scroll bar narrows.
      const edges = box.offsetWidth - box.clientWidth;
      const borders = Number.parseFloat(style.borderLeftWidth) + Number.parseFloat(style.borderRightWidth);
      over.style.paddingRight = `${Number.parseFloat(style.paddingRight) + Math.max(0, edges - borders)}px`;
      over.style.top = `${box.offsetTop}px`;
      over.style.left = `${box.offsetLeft}px`;
      over.style.width = `${box.offsetWidth}px`;
      over.style.height = `${box.offsetHeight}px`;
      over.scrollTop = box.scrollTop;
    };
    place();
    const { offsetTop, offsetHeight } = mark.current;
    if (offsetTop < box.scrollTop || offsetTop + offsetHeight > box.scrollTop + box.clientHeight)
      box.scrollTop = offsetTop - box.clientHeight / 3;
    const follow = (): void => {
      over.scrollTop = box.scrollTop;
    };
    follow();
    box.addEventListener("scroll", follow);
    // A phone that is turned, or a window made narrow, moves the words.
    const watch = new ResizeObserver(place);
    watch.observe(box);
    return () => {
      watch.disconnect();
      box.removeEventListener("scroll", follow);
    };
  }, [around, text, start, end]);
  if (around.current === null) return null;
  return createPortal(
    <div className="marked-words" aria-hidden="true" ref={layer}>
      {text.slice(0, start)}
      <mark ref={mark}>{text.slice(start, end)}</mark>
      {`${text.slice(end)}\n`}
    </div>,
    around.current,
  );
}
