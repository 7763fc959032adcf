import { SafetyNote } from "../../parts/index.ts";

/** What can hurt at a kitchen table full of open bottles. */
export function KitchenNote() {
  return (
    <SafetyNote title="No flame, water on the table">
      <p>
        The vapour of strong spirit catches fire at the warmth of a kitchen: at 60 % vol from about 24 °C. Gas
        flames, hot plates and candles off, no smoking, a window open. Keep a glass of water at hand; weighing
        is not for tasting from.
      </p>
    </SafetyNote>
  );
}
