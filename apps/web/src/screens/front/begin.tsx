import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, Form, TextField } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { CurrencyField } from "../household/currency-field.tsx";

/** Begins a household of one's own. */
export function Begin() {
  const say = useSay("addHousehold");
  const [name, setName] = useState("");
  const [currency, setCurrency] = useState("USD");
  const send = async (): Promise<void> => {
    const made = await say.send({ body: { name, currency } });
    if (made !== null) go(`/h/${made.id}`);
  };
  return (
    <Form say={say} onSend={send} label="Begin my own household">
      <div className="form-row">
        <TextField
          label="Name of the household"
          path={["name"]}
          value={name}
          onChange={setName}
          input={{ placeholder: "The kitchen table", maxLength: 120 }}
        />
        <CurrencyField value={currency} onChange={setCurrency} />
      </div>
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Begin
        </Button>
      </div>
    </Form>
  );
}
