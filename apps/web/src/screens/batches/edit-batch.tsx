import type { Batch } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { AreaField, Button, Dialog, Form, TextField } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

/** Changes a batch's name, rest and note. */
export function EditBatch({ batch, onClose }: { readonly batch: Batch; readonly onClose: () => void }) {
  const household = useHousehold();
  const say = useSay("editBatch");
  const [name, setName] = useState(batch.name);
  const [rest, setRest] = useState(batch.restDays === null ? "" : String(batch.restDays));
  const [note, setNote] = useState(batch.note);
  const send = async (): Promise<void> => {
    const typed = rest.trim();
    if (typed !== "" && !/^\d{1,4}$/.test(typed)) {
      const limit = "whole days, or nothing";
      const message = `rest requires ${limit}, got "${typed}"`;
      say.refuse([{ code: "rest_unreadable", path: ["restDays"], limit, received: typed, message }]);
      return;
    }
    const saved = await say.send({
      at: { household: household.id, batch: batch.id },
      body: { version: batch.version, name, restDays: typed === "" ? null : Number(typed), note },
    });
    if (saved !== null) onClose();
  };
  return (
    <Dialog title="Change the batch" open onClose={onClose}>
      <Form say={say} onSend={send}>
        <TextField label="Name" path={["name"]} value={name} onChange={setName} input={{ maxLength: 120 }} />
        <TextField
          label="Rest"
          optional
          path={["restDays"]}
          unit="days"
          value={rest}
          onChange={setRest}
          hint="Counted from the day it was made"
          input={{ inputMode: "numeric" }}
        />
        <AreaField label="Note" optional path={["note"]} value={note} onChange={setNote} />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Save
          </Button>
        </div>
      </Form>
    </Dialog>
  );
}
