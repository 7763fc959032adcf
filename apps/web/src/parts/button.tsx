import type { ComponentProps, MouseEvent } from "react";
import { Link, type LinkProps } from "../router/index.ts";
import "./button.css";

/** `main`: the one thing to do here. `plain`: others. `quiet`: looks like text. `danger`: takes something away. */
export type ButtonKind = "main" | "plain" | "quiet" | "danger";

export interface ButtonProps extends Omit<ComponentProps<"button">, "onClick"> {
  readonly onClick?: (event: MouseEvent<HTMLButtonElement>) => unknown;
  readonly kind?: ButtonKind;
  /** At work. Busy or disabled, it stays focusable, so that the focus is not lost, and does nothing. */
  readonly busy?: boolean;
}

export function Button({
  kind = "plain",
  busy = false,
  disabled = false,
  className,
  type,
  onClick,
  ...rest
}: ButtonProps) {
  return (
    <button
      type={type ?? "button"}
      className={`button button-${kind} ${className ?? ""}`}
      aria-disabled={busy || disabled || undefined}
      aria-busy={busy || undefined}
      onClick={(event) => {
        if (busy || disabled) event.preventDefault();
        else onClick?.(event);
      }}
      {...rest}
    />
  );
}

/** A link that looks like a button, for going somewhere. */
export function LinkButton({
  kind = "plain",
  className,
  ...rest
}: LinkProps & { readonly kind?: ButtonKind }) {
  return <Link className={`button button-${kind} ${className ?? ""}`} {...rest} />;
}
