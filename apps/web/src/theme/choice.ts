import { useSyncExternalStore } from "react";
import { keep, kept, onKept } from "../session/kept.ts";

export type ThemeChoice = "system" | "light" | "dark";

const KEY = "theme";

function chosen(): ThemeChoice {
  const value = kept(KEY);
  return value === "light" || value === "dark" ? value : "system";
}

/** Puts the choice on the page; `system` leaves it to the device. */
export function applyTheme(): void {
  const choice = chosen();
  if (choice === "system") delete document.documentElement.dataset["theme"];
  else document.documentElement.dataset["theme"] = choice;
}

export function chooseTheme(choice: ThemeChoice): void {
  keep(KEY, choice === "system" ? null : choice);
  applyTheme();
}

export function useThemeChoice(): ThemeChoice {
  return useSyncExternalStore(onKept, chosen);
}
