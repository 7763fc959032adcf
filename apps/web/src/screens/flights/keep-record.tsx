import type { FlightRecord } from "@partsproof/house/protocol";
import { Button } from "../../parts/index.ts";

/** Keeps the published record as a file, so that it can be checked on another phone, or another day. */
export function KeepRecord({ record }: { readonly record: NonNullable<FlightRecord["record"]> }) {
  const save = (): void => {
    const url = URL.createObjectURL(
      new Blob([JSON.stringify(record, null, 1)], { type: "application/json" }),
    );
    const link = document.createElement("a");
    link.href = url;
    link.download = `record-${record.commitment.slice(0, 8)}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
  };
  return (
    <div>
      <Button onClick={save}>Keep this record as a file</Button>
    </div>
  );
}
