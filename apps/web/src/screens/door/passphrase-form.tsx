import type { DoorShown } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, Form, TextField } from "../../parts/index.ts";

/** Sets the owner's passphrase, or another in its place; from the network only with the present one. */
export function PassphraseForm({ door }: { readonly door: DoorShown }) {
  const [passphrase, setPassphrase] = useState("");
  const [again, setAgain] = useState("");
  const [present, setPresent] = useState("");
  const say = useSay("setPassphrase");
  const send = async (): Promise<void> => {
    if (passphrase !== again) {
      const limit = "the same words twice";
      const message = `a passphrase requires ${limit}, got two that differ`;
      say.refuse([{ code: "passphrase_differs", path: ["again"], limit, received: null, message }]);
      return;
    }
    const done = await say.send({ body: { passphrase, ...(present === "" ? {} : { present }) } });
    if (done === null) return;
    for (const set of [setPassphrase, setAgain, setPresent]) set("");
    announce("The passphrase is set; everybody is signed out");
  };
  return (
    <Form say={say} onSend={() => void send()} label="Passphrase">
      {door.you === "owner" && (
        <TextField
          label="Present passphrase"
          path={["present"]}
          value={present}
          onChange={setPresent}
          input={{ type: "password", autoComplete: "current-password", maxLength: 256 }}
        />
      )}
      <TextField
        label="New passphrase"
        path={["passphrase"]}
        value={passphrase}
        onChange={setPassphrase}
        hint={`At least ${door.passphraseAtLeast} characters, of any kind: a few words in a row are easiest to keep.`}
        input={{ type: "password", autoComplete: "new-password", maxLength: 256 }}
      />
      <TextField
        label="Once more"
        path={["again"]}
        value={again}
        onChange={setAgain}
        input={{ type: "password", autoComplete: "new-password", maxLength: 256 }}
      />
      <div className="form-actions">
        <Button type="submit" busy={say.busy}>
          Set the passphrase
        </Button>
      </div>
      <p className="field-hint">Setting it signs everybody out, on every device.</p>
    </Form>
  );
}
