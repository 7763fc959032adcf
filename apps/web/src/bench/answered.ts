/** A problem without an answer: why, and the nearest that can be had, in words. */
export interface No {
  readonly ok: false;
  readonly why: string;
  readonly nearest: string | null;
}

/** Core's numbers in a message, no longer than can be read: "62.39999999" becomes "62.4". */
export function short(message: string): string {
  return message.replace(/\d+\.\d{3,}/g, (digits) => String(Number(Number(digits).toFixed(2))));
}

export function no(message: string, nearest: string | null = null): No {
  return { ok: false, why: short(message), nearest };
}

/**
 * The answer, or core's refusal as a "no": two numbers that are each in order can still be none together (weak and frozen, say),
 * and core then throws a RangeError. Any other fault goes on.
 */
export function answered<T extends { readonly ok: true }>(reckon: () => T | No): T | No {
  try {
    return reckon();
  } catch (error) {
    if (error instanceof RangeError) return no(error.message);
    throw error;
  }
}
