import type { ComponentProps, MouseEvent } from "react";
import { go } from "./place.ts";

export interface LinkProps extends Omit<ComponentProps<"a">, "href"> {
  readonly to: string;
}

/** A link inside the app; opens in a new tab as any link would when asked to. */
export function Link({ to, onClick, ...rest }: LinkProps) {
  const follow = (event: MouseEvent<HTMLAnchorElement>): void => {
    onClick?.(event);
    const plain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
    if (event.defaultPrevented || !plain || rest.target !== undefined) return;
    event.preventDefault();
    go(to);
  };
  return <a href={to} onClick={follow} {...rest} />;
}
