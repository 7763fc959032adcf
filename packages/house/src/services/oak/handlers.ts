import type { Handlers } from "../handler.ts";
import { doseOf } from "./dose.ts";
import { restOf } from "./rest.ts";

/** Oak without a household: nothing is asked of the house. */
export const oakHandlers: Handlers<"oakDose" | "rest"> = {
  oakDose: async ({ body }) => doseOf(body),
  rest: async ({ body }) => restOf(body),
};
