import type { ReactNode } from "react";
import "./tag.css";

/** A word of state. `plain`, or `strong` where it asks for attention. */
export function Tag({
  children,
  kind = "plain",
}: {
  readonly children: ReactNode;
  readonly kind?: "plain" | "strong";
}) {
  return <span className={`tag tag-${kind}`}>{children}</span>;
}
