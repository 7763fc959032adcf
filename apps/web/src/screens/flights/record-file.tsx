import { useId, useState } from "react";
import type { Stored } from "../../session/index.ts";
import { type Checked, checked } from "./checked.ts";
import { Outcome } from "./outcome.tsx";

/** Checks a record that came as a file, such as one kept by another phone. */
export function RecordFile({ stored }: { readonly stored: Stored }) {
  const id = useId();
  const [seen, setSeen] = useState<Checked | null>(null);
  const read = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const text = await file.text();
    try {
      setSeen(checked(JSON.parse(text), stored));
    } catch {
      setSeen({
        headline: "This is no record that can be read",
        findings: ["The file is no JSON."],
        unchecked: [],
      });
    }
  };
  return (
    <>
      <label htmlFor={id} className="field-label">
        Record
      </label>
      <input
        id={id}
        type="file"
        accept="application/json,.json"
        className="input"
        onChange={(event) => void read(event.target.files?.[0])}
      />
      {seen !== null && <Outcome seen={seen} />}
    </>
  );
}
