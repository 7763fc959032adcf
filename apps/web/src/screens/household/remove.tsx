import { useState } from "react";
import { forgetAnswers, useSay } from "../../api.ts";
import { announce, Button, Form, TextField } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { keepHousehold, useHousehold } from "../../session/index.ts";

/** Removes the household for good, once its name has been typed. */
export function Remove() {
  const household = useHousehold();
  const say = useSay("removeHousehold");
  const [confirm, setConfirm] = useState("");
  const send = async (): Promise<void> => {
    const gone = await say.send({ at: { household: household.id }, query: { confirm } });
    if (gone === null) return;
    keepHousehold(null);
    forgetAnswers();
    announce(`${household.name} removed`);
    go("/");
  };
  return (
    <Form say={say} onSend={send} label="Remove the household">
      <p>Everything in it goes, and nothing brings it back but a file saved before.</p>
      <TextField
        label={`Type its name: ${household.name}`}
        path={["confirm"]}
        value={confirm}
        onChange={setConfirm}
      />
      <div className="form-actions">
        <Button kind="danger" type="submit" busy={say.busy}>
          Remove it for good
        </Button>
      </div>
    </Form>
  );
}
