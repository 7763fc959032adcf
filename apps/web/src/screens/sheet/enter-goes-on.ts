import type { KeyboardEvent } from "react";

/** Enter goes to the next field, as the pen did. */
export function enterGoesOn(event: KeyboardEvent<HTMLElement>): void {
  if (
    event.key !== "Enter" ||
    event.target instanceof HTMLButtonElement ||
    event.target instanceof HTMLAnchorElement
  )
    return;
  event.preventDefault();
  const fields = [...event.currentTarget.querySelectorAll<HTMLElement>("input, select, a.button-main")];
  fields[fields.indexOf(event.target as HTMLElement) + 1]?.focus();
}
