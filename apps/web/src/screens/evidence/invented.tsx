import { useContext } from "react";
import { HouseholdContext } from "../../session/index.ts";
import "./evidence.css";

/** Whether this is the demo; a guest of one flight is told nothing of the household. */
export const useInvented = (): boolean => useContext(HouseholdContext)?.demo ?? false;

/** What the demo household says was never tasted; every page of findings says so. */
export function Invented() {
  return useInvented() ? (
    <p className="invented">
      <strong>Invented.</strong> This is the demo household: its whiskeys, tasters and sheets are made up.
    </p>
  ) : null;
}
