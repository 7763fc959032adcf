/** A legitimate "no": nothing is wrong with the question, and this bound keeps it from having an answer. */
export type OutOfReach = {
  readonly ok: false;
  readonly issue: {
    readonly code: "target_above_start" | "target_without_alcohol" | "vessel_over_capacity";
    readonly limit: number;
    readonly received: number;
    readonly message: string;
  };
};
