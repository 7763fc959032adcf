import type { Handlers } from "./handler.ts";
import { tasterHandlers } from "./tasters.ts";

/** Every line of the table of routes has its handler; the type says so. */
export const allHandlers: Handlers = {
  ...tasterHandlers,
};
