import type { Handlers } from "../handler.ts";
import { doseOf } from "./dose.ts";

/** Oak without a household: nothing is asked of the house. */
export const oakHandlers: Handlers<"oakDose"> = {
  oakDose: async ({ body }) => doseOf(body),
};
