import type { Flight } from "@partsproof/house/protocol";
import { listed } from "../../figures/index.ts";

/** What the flight waits for. */
export type Waits = "the pourer" | "marking and pouring" | "sheets" | "undersides" | "reveal" | "nothing";

export function waitsFor(flight: Flight): Waits {
  if (flight.state === "pouring") return flight.pouring === "alone" ? "marking and pouring" : "the pourer";
  if (flight.state !== "tasting") return "nothing";
  if (flight.sheets.some((sheet) => sheet.state !== "locked")) return "sheets";
  return flight.pouring === "alone" && !flight.undersidesEntered ? "undersides" : "reveal";
}

export function notLocked(flight: Flight): readonly string[] {
  return flight.sheets.filter((sheet) => sheet.state !== "locked").map((sheet) => sheet.taster);
}

/** Where a flight stands and what comes next, in one sentence. */
export function stateSentence(flight: Flight): string {
  switch (waitsFor(flight)) {
    case "the pourer":
      return `${flight.pourer ?? "Somebody"} pours, then says that the glasses stand ready.`;
    case "marking and pouring":
      return "Mark the undersides, pour, and mix the glasses up.";
    case "sheets": {
      const open = notLocked(flight);
      const locked = flight.sheets.length - open.length;
      return `${locked} of ${flight.sheets.length} sheets locked; waiting for ${listed(open)}.`;
    }
    case "undersides":
      return "Look under the glasses and enter the marks.";
    case "reveal":
      return flight.sheets.length === 1
        ? "The sheet is locked. The key can be opened."
        : "Every sheet is locked. The key can be opened.";
    case "nothing":
      return flight.state === "revealed"
        ? "Revealed."
        : "Called off before it was tasted; the key is destroyed.";
  }
}

/** The state in a word or two, for a list. */
export function stateWord(flight: Flight): string {
  switch (waitsFor(flight)) {
    case "the pourer":
    case "marking and pouring":
      return "to pour";
    case "sheets":
      return "tasting";
    case "undersides":
      return "undersides to enter";
    case "reveal":
      return "to reveal";
    case "nothing":
      return flight.state === "revealed" ? "revealed" : "called off";
  }
}

export const countGlasses = (count: number): string => (count === 1 ? "1 glass" : `${count} glasses`);
