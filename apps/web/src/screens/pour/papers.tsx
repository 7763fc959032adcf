import { type Flight, type PourList, REFERENCE_LABEL } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { Stickers } from "../../print/stickers.tsx";
import { PaperMats } from "./paper-mats.tsx";
import { PaperSheets } from "./paper-sheets.tsx";

export type Paper = "list" | "stickers" | "mats" | "sheets";

/** What is put on paper, and the way to print it. */
export function usePaper<P extends string>(first: P): [P, (paper: P) => void] {
  const [paper, setPaper] = useState<{ readonly which: P; readonly turn: number }>({
    which: first,
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
    glasses: glasses.map(({ code, set }) => ({ code, set })),
  }));
  return (
    <div className="only-paper">
      {paper === "stickers" && (
        <Stickers
          title={flight.name}
          stickers={tasters.flatMap(({ taster, glasses }) =>
            // In the taster's order, so that a row of stickers is a row of glasses.
            glasses.map(({ code, set }) => ({
              key: `${taster} ${set ?? 0} ${code}`,
              mark: code,
              small: code === REFERENCE_LABEL && set !== null ? `${taster}, set ${set}` : taster,
            })),
          )}
        />
      )}
      {paper === "mats" && <PaperMats flight={flight} tasters={tasters} />}
      {paper === "sheets" && <PaperSheets flight={flight} tasters={tasters} />}
    </div>
  );
}
