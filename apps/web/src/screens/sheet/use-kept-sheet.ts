import type { Refusal, Sheet } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { keepSheet, keptSheet } from "./kept-sheet.ts";

/** The sheet as the house tells it or, while the house cannot be reached, as this phone last saw it. */
export function useKeptSheet(id: string, told: Sheet | undefined, refusal: Refusal | null): Sheet | null {
  const [kept, setKept] = useState<Sheet | null>(null);
  useEffect(() => {
    if (told !== undefined) void keepSheet(told);
  }, [told]);
  const unreached = told === undefined && refusal !== null && (refusal.status === 0 || refusal.status >= 500);
  useEffect(() => {
    if (unreached) void keptSheet(id).then(setKept);
  }, [unreached, id]);
  return told ?? (unreached ? kept : null);
}
