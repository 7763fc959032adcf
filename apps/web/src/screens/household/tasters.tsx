import type { Taster } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { announce, Broken, Button, Busy, Form, TextField } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import "./household.css";

/** Who tastes here: adding and renaming. */
export function Tasters() {
  const at = { household: useHousehold().id };
  const asked = useAskAll("listTasters", { at });
  const say = useSay("addTaster");
  const [name, setName] = useState("");
  const add = async (): Promise<void> => {
    const made = await say.send({ at, body: { name } });
    if (made !== null) {
      announce(`${made.name} added`);
      setName("");
    }
  };
  return (
    <>
      {asked.state === "busy" && <Busy what="the tasters" />}
      {asked.state === "broken" && <Broken asked={asked} title="The tasters could not be fetched" />}
      {asked.state === "here" && asked.answer.length > 0 && (
        <ul className="tasters">
          {asked.answer.map((taster) => (
            <li key={taster.id}>
              <One taster={taster} />
            </li>
          ))}
        </ul>
      )}
      <Form say={say} onSend={add} label="Add a taster">
        <div className="tasters-add">
          <TextField
            label="Another taster"
            path={["name"]}
            value={name}
            onChange={setName}
            hint="Of legal drinking age where they are"
            input={{ maxLength: 120 }}
          />
          <Button type="submit" busy={say.busy}>
            Add
          </Button>
        </div>
      </Form>
    </>
  );
}

function One({ taster }: { readonly taster: Taster }) {
  const at = { household: useHousehold().id, taster: taster.id };
  const say = useSay("editTaster");
  const [name, setName] = useState<string | null>(null);
  if (name === null) {
    return (
      <>
        <span className="name">{taster.name}</span>
        <Button kind="quiet" aria-label={`Rename ${taster.name}`} onClick={() => setName(taster.name)}>
          Rename
        </Button>
      </>
    );
  }
  const send = async (): Promise<void> => {
    const saved = await say.send({ at, body: { version: taster.version, name } });
    if (saved !== null) setName(null);
  };
  return (
    <Form say={say} onSend={send} label={`Rename ${taster.name}`}>
      <div className="tasters-add">
        <TextField label={`New name of ${taster.name}`} path={["name"]} value={name} onChange={setName} />
        <Button type="submit" busy={say.busy}>
          Save
        </Button>
      </div>
    </Form>
  );
}
