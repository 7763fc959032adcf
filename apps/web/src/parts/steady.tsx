import type { CSSProperties } from "react";
import "./steady.css";

/**
 * A figure that changes while something is moved, in a box of its own in a line of boxes: only a plain block of a size of its own may
 * keep what changes in it to itself, and lay out nothing around it.
 */
export function Steady({
  text,
  letters = 0,
  className,
}: {
  readonly text: string;
  /** Room for so many at least, where it is sometimes longer and sometimes shorter. */
  readonly letters?: number;
  readonly className?: string;
}) {
  return (
    <span className="steady" style={{ "--letters": Math.max(letters, text.length) } as CSSProperties}>
      <span className={className}>{text}</span>
    </span>
  );
}
