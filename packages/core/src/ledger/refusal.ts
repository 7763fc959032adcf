export type RefusalCode =
  | "seq_not_after"
  | "at_unreadable"
  | "vessel_unknown"
  | "account_same"
  | "account_direction"
  | "amount_kind"
  | "amount_not_finite"
  | "amount_not_positive"
  | "water_with_alcohol"
  | "vessel_empty"
  | "vessel_short"
  | "vessel_overflow"
  | "transfer_unknown"
  | "transfer_undone";

/** A legitimate "no": which transfer, which vessel, the bound that failed, and what was asked. */
export type Refusal = {
  readonly code: RefusalCode;
  readonly transferId: string;
  readonly vesselId: string | null;
  readonly limit: number | string | null;
  readonly received: number | string | null;
  readonly unit: "mL" | "g" | null;
  readonly message: string;
};

export type Refused = { readonly ok: false; readonly refusal: Refusal };

/** Builds a refusal whose text reads `<what> requires <condition>, got <value> <unit>`. */
export function refuse(
  code: RefusalCode,
  at: { readonly transferId: string; readonly vesselId?: string },
  bound: {
    readonly what: string;
    readonly requires: string;
    readonly limit?: number | string;
    readonly received: number | string;
    readonly unit?: "mL" | "g";
  },
): Refused {
  const unit = bound.unit ?? null;
  const got = `${printed(bound.received)}${unit === null ? "" : ` ${unit}`}`;
  return {
    ok: false,
    refusal: {
      code,
      transferId: at.transferId,
      vesselId: at.vesselId ?? null,
      limit: bound.limit ?? null,
      received: bound.received,
      unit,
      message: `${bound.what} requires ${bound.requires}, got ${got}`,
    },
  };
}

/** Nine digits tell any two amounts apart that the ledger's tolerance (1e-6) tells apart. */
export function printed(value: number | string): string {
  return typeof value === "number" ? String(Number(value.toPrecision(9))) : value;
}
