import { Button } from "../../parts/index.ts";
import { aboutGlass } from "./about-glass.ts";
import { OrderBoard } from "./order-board.tsx";
import { RANKING, rankingIn } from "./sheet-fields.ts";
import type { SheetStepProps } from "./sheet-step.ts";

export interface RankBoardProps extends SheetStepProps {
  readonly onDone: () => void;
}

/** All glasses in order, best or closest first; level ones share a place. */
export function RankBoard({ sheet, fields, set, heading, onDone }: RankBoardProps) {
  const meaning = sheet.asks.ranking ?? "best first";
  return (
    <section className="rank">
      <h2 ref={heading} tabIndex={-1}>
        {meaning === "best first" ? "Ranking, best first" : "Closest to the target first"}
      </h2>
      {meaning === "closest first" && (
        <p>
          The target is <strong className="name">{sheet.target ?? "the one named"}</strong>
          {sheet.reference ? ", known in the glass labelled R and" : ","} hidden among these glasses.
        </p>
      )}
      <OrderBoard
        id={sheet.id}
        codes={sheet.glasses.map(({ code }) => code)}
        whole={rankingIn(fields)}
        onWhole={(order) => set(RANKING, order)}
        ties
        meaning={meaning}
        about={(code) => aboutGlass(sheet, fields, code)}
      />
      <div className="form-actions">
        <Button kind="main" onClick={onDone}>
          Go to the lock
        </Button>
      </div>
    </section>
  );
}
