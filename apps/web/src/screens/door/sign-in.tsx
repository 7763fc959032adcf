import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, LinkButton, TextField } from "../../parts/index.ts";
import { go, usePlace } from "../../router/index.ts";
import { ownPath } from "./own-path.ts";

/** The owner's passphrase. The cookie that answers it is read by no script. */
export function SignIn({ passphraseSet }: { readonly passphraseSet: boolean }) {
  const { query } = usePlace();
  const [passphrase, setPassphrase] = useState("");
  const say = useSay("signIn");
  const send = async (): Promise<void> => {
    const done = await say.send({ body: { passphrase } });
    setPassphrase("");
    if (done !== null) go(ownPath(query.get("to")), { replace: true });
  };
  if (!passphraseSet) {
    return (
      <p>
        No passphrase is set yet, so nobody can sign in. Set one on the house’s own machine, on this page.
      </p>
    );
  }
  return (
    <Form say={say} onSend={() => void send()}>
      <TextField
        label="Passphrase"
        path={["passphrase"]}
        value={passphrase}
        onChange={setPassphrase}
        input={{ type: "password", autoComplete: "current-password", maxLength: 256 }}
      />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Sign in
        </Button>
        <LinkButton to="/join">I am a guest: join a flight</LinkButton>
      </div>
    </Form>
  );
}
