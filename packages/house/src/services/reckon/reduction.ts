import type { Pour } from "@partsproof/core/alcoholometry";

/** What is poured of the start and of each liquid that is added, at 20 °C, and what the head would have said. */
export interface Reduction {
  readonly start: readonly Pour[];
  readonly added: readonly Pour[];
  readonly liquidMl: number;
  readonly finalMl: number;
  readonly naiveWaterMl: number;
}
