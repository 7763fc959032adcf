import type { Whiskey } from "@partsproof/house/protocol";
import { memo, useCallback, useState } from "react";
import { api, useSay } from "../../api.ts";
import { INTENSITY_STEP } from "../../closest/index.ts";
import { announce, Button, Form, Strip, TextField, Tick } from "../../parts/index.ts";
import { useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { type Family, families, readTaste, tasteAsTyped, valueOf, withValue } from "./taste-typed.ts";
import "./taste-form.css";

export interface TasteFormProps {
  readonly whiskey: Whiskey;
  readonly onDone: () => void;
}

/** Says how strong each thing is in a whiskey. What is not touched stays not said; zero is said by a tick or by the dot. */
export function TasteForm({ whiskey, onDone }: TasteFormProps) {
  const household = useHousehold();
  const at = { household: household.id, whiskey: whiskey.id };
  const say = useSay("editWhiskey");
  const [base] = useState(whiskey);
  const [typed, setTyped] = useState(() => tasteAsTyped(base.profile));
  const saved = useUnsaved(JSON.stringify(typed) !== JSON.stringify(tasteAsTyped(base.profile)));
  const set = useCallback(
    (attribute: string, value: number | null) => setTyped((now) => withValue(now, attribute, value)),
    [],
  );
  const send = async (version: number): Promise<void> => {
    const read = readTaste(typed);
    if (!read.ok) return say.refuse(read.issues);
    const kept = await say.send({ at, body: { version, profile: read.profile } });
    if (kept === null) return undefined;
    saved();
    announce("Saved");
    return onDone();
  };
  const stale = say.issues.some(({ code }) => code === "stale_edit");
  return (
    <Form say={say} onSend={() => send(base.version)} label="What it tastes of">
      {stale && (
        <div className="meanwhile" role="group" aria-label="Changed meanwhile">
          <p>Someone changed this whiskey meanwhile. Their facts stay; what it tastes of becomes yours.</p>
          <Button kind="main" onClick={async () => send((await api("getWhiskey", { at })).version)}>
            Save what I say it tastes of
          </Button>
        </div>
      )}
      <TextField
        label="Tasted at"
        optional
        path={["profile", "tastedAt"]}
        value={typed.tastedAt}
        onChange={(tastedAt) => setTyped((now) => ({ ...now, tastedAt }))}
        hint="40% after water, say. Profiles tasted at one strength compare; others are mixed by what is poured."
      />
      {families.map((family) => (
        <FamilyField key={family.name} family={family} intensities={typed.intensities} onChange={set} />
      ))}
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Save what it tastes of
        </Button>
        <Button onClick={onDone}>Leave it as it was</Button>
      </div>
    </Form>
  );
}

interface FamilyFieldProps {
  readonly family: Family;
  readonly intensities: ReturnType<typeof tasteAsTyped>["intensities"];
  readonly onChange: (attribute: string, value: number | null) => void;
}

function FamilyField({ family, intensities, onChange }: FamilyFieldProps) {
  const said = family.attributes.filter(({ id }) => valueOf(intensities[id]) !== null).length;
  const [open] = useState(said > 0);
  return (
    <details className="taste-family" open={open || undefined}>
      <summary>
        {family.name}
        <span className="soft small">
          {" "}
          {said === 0 ? "not said" : `${said} of ${family.attributes.length} said`}
        </span>
      </summary>
      <div className="strips">
        {family.attributes.map(({ id, name, words }) => (
          <TasteStrip
            key={id}
            id={id}
            name={name}
            words={words.join(", ")}
            value={valueOf(intensities[id])}
            onChange={onChange}
          />
        ))}
      </div>
    </details>
  );
}

interface TasteStripProps {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly value: number | null;
  readonly onChange: FamilyFieldProps["onChange"];
}

const TasteStrip = memo(function TasteStrip({ id, name, words, value, onChange }: TasteStripProps) {
  return (
    <Strip
      id={id}
      name={name}
      value={value}
      onChange={onChange}
      max={10}
      step={INTENSITY_STEP}
      unset="not said"
    >
      <span className="soft small taste-words">{words}</span>
      <Tick
        label={`No ${name} at all`}
        value={value === 0}
        onChange={(none) => onChange(id, none ? 0 : null)}
      />
      {value !== null && value !== 0 && (
        <Button kind="quiet" aria-label={`Not said: ${name}`} onClick={() => onChange(id, null)}>
          Not said
        </Button>
      )}
    </Strip>
  );
});
