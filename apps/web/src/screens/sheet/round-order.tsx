import type { Sheet } from "@partsproof/house/protocol";
import { OrderBoard } from "./order-board.tsx";
import { aboutGlass } from "./about-glass.ts";
import type { Fields, RankOrder } from "./sheet-fields.ts";

interface RoundOrderProps {
  readonly sheet: Sheet;
  readonly fields: Fields;
  readonly one: Sheet["sets"][number];
  readonly order: RankOrder;
  readonly onOrder: (order: RankOrder) => void;
}

/** A round's own order, without level ones; the other round has other numbers, so nobody can look it up. */
export function RoundOrder({ sheet, fields, one, order, onOrder }: RoundOrderProps) {
  return (
    <OrderBoard
      id={`${sheet.id}.${one.set}`}
      codes={one.glasses.map(({ code }) => code)}
      whole={order}
      onWhole={onOrder}
      ties={false}
      meaning="best first"
      about={(code) => aboutGlass(sheet, fields, code)}
    />
  );
}
