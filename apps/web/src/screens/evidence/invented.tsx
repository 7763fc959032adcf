import { useHousehold } from "../../session/index.ts";
import "./evidence.css";

/** What the demo household says was never tasted; every page of findings says so. */
export function Invented() {
  return useHousehold().demo ? (
    <p className="invented">
      <strong>Invented.</strong> This is the demo household: its whiskeys, tasters and sheets are made up.
    </p>
  ) : null;
}
