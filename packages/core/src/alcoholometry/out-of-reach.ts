/** The "no"s of reducing with water and of filling. */
type WaterOrVessel = "target_above_start" | "target_without_alcohol" | "vessel_over_capacity";

/** A legitimate "no": nothing is wrong with the question, and this bound keeps it from having an answer. */
export type OutOfReach<Code extends string = WaterOrVessel> = {
  readonly ok: false;
  readonly issue: {
    readonly code: Code;
    readonly limit: number;
    readonly received: number;
    readonly message: string;
  };
};

/** A "no" that also says what comes nearest to the question and can be done. */
export type OutOfReachBut<Code extends string, Nearest> = OutOfReach<Code> & { readonly nearest: Nearest };
