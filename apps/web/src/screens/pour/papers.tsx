import type { Flight, PourList } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { PaperMats } from "./paper-mats.tsx";
import { PaperSheets } from "./paper-sheets.tsx";

export type Paper = "list" | "mats" | "sheets";

/** What is put on paper, and the way to print it. */
export function usePaper(): [Paper, (paper: Paper) => void] {
  const [paper, setPaper] = useState<{ readonly which: Paper; readonly turn: number }>({
    which: "list",
    turn: 0,
  });
  useEffect(() => {
    // Printed after it is drawn; the first turn is the page itself.
    if (paper.turn > 0) globalThis.print();
  }, [paper]);
  return [paper.which, (which) => setPaper((last) => ({ which, turn: last.turn + 1 }))];
}

export interface PapersProps {
  readonly paper: Paper;
  readonly list: PourList;
  readonly flight: Flight;
}

/** Numbers only: nothing on these sheets tells what is in a glass. */
export function Papers({ paper, list, flight }: PapersProps) {
  if (paper === "list") return null;
  const tasters = list.tasters.map(({ taster, glasses }) => ({
    taster,
    codes: glasses.map(({ code }) => code),
  }));
  return (
    <div className="only-paper">
      {paper === "mats" ? (
        <PaperMats flight={flight} tasters={tasters} />
      ) : (
        <PaperSheets flight={flight} tasters={tasters} />
      )}
    </div>
  );
}
