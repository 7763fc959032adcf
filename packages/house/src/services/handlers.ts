import { batchHandlers } from "./batches.ts";
import { bottleHandlers } from "./bottles.ts";
import { demoHandlers } from "./demo/load-demo.ts";
import { exportHandlers } from "./export.ts";
import { findingHandlers } from "./finding.ts";
import { flightHandlers } from "./flights.ts";
import type { Handlers } from "./handler.ts";
import { healthHandlers } from "./health.ts";
import { householdHandlers } from "./households.ts";
import { nextHandlers } from "./next.ts";
import { planHandlers } from "./plan.ts";
import { pouringHandlers } from "./pouring.ts";
import { previewHandlers } from "./preview.ts";
import { recipeHandlers } from "./recipes.ts";
import { reckonHandlers } from "./reckon.ts";
import { restoreHandlers } from "./restore.ts";
import { revealHandlers } from "./reveal.ts";
import { sheetHandlers } from "./sheets.ts";
import { tasterHandlers } from "./tasters.ts";
import { transferHandlers } from "./transfers.ts";
import { undersidesHandlers } from "./undersides.ts";
import { vesselHandlers } from "./vessels.ts";
import { whiskeyHandlers } from "./whiskeys.ts";

/** Every line of the table of routes has its handler; the type says so. */
export const allHandlers: Handlers = {
  ...tasterHandlers,
  ...healthHandlers,
  ...reckonHandlers,
  ...householdHandlers,
  ...demoHandlers,
  ...exportHandlers,
  ...restoreHandlers,
  ...nextHandlers,
  ...whiskeyHandlers,
  ...bottleHandlers,
  ...vesselHandlers,
  ...transferHandlers,
  ...recipeHandlers,
  ...previewHandlers,
  ...planHandlers,
  ...batchHandlers,
  ...flightHandlers,
  ...pouringHandlers,
  ...sheetHandlers,
  ...undersidesHandlers,
  ...revealHandlers,
  ...findingHandlers,
};
