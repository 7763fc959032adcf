import { parseVolume } from "@partsproof/core/quantity";
import type { VesselKind } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, Choice, Dialog, Form, TextField } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

type Kind = Exclude<(typeof VesselKind)["options"][number], "bottle">;

/** Adds an empty vessel to blend or keep in. */
export function AddVessel({ onClose }: { readonly onClose: () => void }) {
  const household = useHousehold();
  const say = useSay("addVessel");
  const [kind, setKind] = useState<Kind>("blending bottle");
  const [label, setLabel] = useState("");
  const [capacity, setCapacity] = useState("750 mL");
  const send = async (): Promise<void> => {
    const read = parseVolume(capacity);
    if (!read.ok) {
      say.refuse([{ ...read.issue, path: ["capacityMl"] }]);
      return;
    }
    const made = await say.send({
      at: { household: household.id },
      body: { kind, label, capacityMl: read.value },
    });
    if (made !== null) {
      announce(`${made.label} added`);
      onClose();
    }
  };
  return (
    <Dialog title="Add a vessel" open onClose={onClose}>
      <Form say={say} onSend={send}>
        <Choice
          label="Kind"
          path={["kind"]}
          value={kind}
          onChange={setKind}
          options={[
            { value: "blending bottle", label: "Blending bottle" },
            { value: "vial", label: "Vial" },
            { value: "jug", label: "Jug" },
          ]}
        />
        <TextField
          label="Label"
          path={["label"]}
          value={label}
          onChange={setLabel}
          input={{ maxLength: 120 }}
        />
        <TextField
          label="Holds"
          path={["capacityMl"]}
          value={capacity}
          onChange={setCapacity}
          hint="To the brim: 750 mL, 70 cl, 2 oz. Plain glass: lead crystal gives off lead."
        />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Add it, empty
          </Button>
        </div>
      </Form>
    </Dialog>
  );
}
