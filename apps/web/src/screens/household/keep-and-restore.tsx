import type { BodyOf } from "@partsproof/house/protocol";
import { useState } from "react";
import { api, asRefusal, useSay } from "../../api.ts";
import { announce, Button, IssueSummary, sentence } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import "./household.css";

/** The household's one file: saving it, and making a household from one. */
export function KeepAndRestore() {
  const household = useHousehold();
  const restore = useSay("restoreHousehold");
  const [wrong, setWrong] = useState<string | null>(null);

  const save = async (): Promise<void> => {
    setWrong(null);
    try {
      const archive = await api("exportHousehold", { at: { household: household.id } });
      offer(`${fileName(household.name)}.json`, JSON.stringify(archive, null, 1));
      announce("The file is being saved");
    } catch (error) {
      setWrong(asRefusal(error).message);
    }
  };
  const load = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    setWrong(null);
    let read: unknown;
    try {
      read = JSON.parse(await file.text());
    } catch {
      setWrong(`restoring requires a household file in JSON, got "${file.name}"`);
      return;
    }
    const made = await restore.send({ body: read as BodyOf<"restoreHousehold"> });
    if (made !== null) {
      announce(`${made.name} restored`);
      go(`/h/${made.id}`);
    }
  };
  return (
    <>
      <p>
        One file with everything: shelf, recipes, batches, flights, sheets. What is sealed stays sealed in it.
      </p>
      <IssueSummary say={restore} />
      {wrong !== null && (
        <p className="field-issue" role="alert">
          {sentence(wrong)}
        </p>
      )}
      <div className="form-actions">
        <Button onClick={save}>Save the file</Button>
        <label className="button button-plain file">
          Restore from a file
          <input
            type="file"
            accept="application/json,.json"
            onChange={(event) => {
              void load(event.target.files?.[0]);
              event.target.value = "";
            }}
          />
        </label>
      </div>
      <p className="soft small">
        Restoring never writes over a household: beside one that is here it makes a copy. A flight under way
        comes back called off, unless its recovery file is restored with it, on the house’s own machine (
        <code>household recovery</code>). A house started with <code>PARTSPROOF_BACKUPS=7</code> keeps such
        files by itself.
      </p>
    </>
  );
}

/** A name that every file system takes. */
function fileName(name: string): string {
  const safe = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `${safe === "" ? "household" : safe}-${new Date().toISOString().slice(0, 10)}`;
}

function offer(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken hold of the file by then.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
