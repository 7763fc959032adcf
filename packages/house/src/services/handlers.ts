import { findingHandlers } from "./finding.ts";
import { flightHandlers } from "./flights.ts";
import type { Handlers } from "./handler.ts";
import { pouringHandlers } from "./pouring.ts";
import { revealHandlers } from "./reveal.ts";
import { sheetHandlers } from "./sheets.ts";
import { tasterHandlers } from "./tasters.ts";
import { undersidesHandlers } from "./undersides.ts";

/** Every line of the table of routes has its handler; the type says so. */
export const allHandlers: Handlers = {
  ...tasterHandlers,
  ...flightHandlers,
  ...pouringHandlers,
  ...sheetHandlers,
  ...undersidesHandlers,
  ...revealHandlers,
  ...findingHandlers,
};
