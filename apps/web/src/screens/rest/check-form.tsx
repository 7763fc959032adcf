import type { BodyOf, Rest } from "@partsproof/house/protocol";
import { useCallback, useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { forgetSheet } from "../../noting/index.ts";
import { announce, Button, Form, SelectField, TextField } from "../../parts/index.ts";
import { useUnsaved } from "../../router/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { NoteField } from "../sheet/note-field.tsx";
import {
  type Fields,
  type FieldValue,
  noteKey,
  notesIn,
  type Section,
  SENSES,
  strengthKey,
  strengthsIn,
} from "../sheet/sheet-fields.ts";
import { useChips } from "../sheet/use-chips.ts";
import { WholeGlass } from "../sheet/whole-glass.tsx";
import { dayTyped, instantOfDay } from "./typed-day.ts";
import { useRestWords } from "./use-rest-words.ts";
import "../sheet/sheet.css";

/** A check tasting is one glass in one pass of a sheet. */
const CODE = "1";
const PASS = "first";
const SECTIONS = [...SENSES, "whole"] as const;

type Check = NonNullable<BodyOf<"addCheck">>;

/** What was tasted: the same notes, chips and strips as on a sheet. */
export function CheckForm({ rest, onDone }: { readonly rest: Rest; readonly onDone: () => void }) {
  const household = useHousehold();
  const now = useNow();
  const at = { household: household.id };
  const say = useSay("addCheck");
  const tasters = useAskAll("listTasters", { at });
  const own = useRestWords();
  const [fields, setFields] = useState<Fields>(new Map());
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [day, setDay] = useState(dayTyped(now));
  const [tasterId, setTasterId] = useState("");
  const sheet = `rest-${rest.id}`;
  const set = useCallback((key: string, value: FieldValue): void => {
    setTouched((before) => new Set(before).add(key));
    setFields((before) => new Map(before).set(key, value));
  }, []);
  const saved = useUnsaved(touched.size > 0);
  const notes = notesIn(fields, CODE)[PASS];
  const read = useChips({ sheet, code: CODE, pass: PASS, fields, notes, set, own });
  const strong = (section: Section) => ({
    strengths: strengthsIn(fields, CODE, PASS, section),
    before: null,
    onChange: (attribute: string, value: number | null): void =>
      set(strengthKey(CODE, PASS, section, attribute), value),
  });
  const send = async (): Promise<void> => {
    const told = await say.send({
      at: { ...at, rest: rest.id },
      body: {
        notes,
        strengths: strengthsOf(fields, touched),
        ...(tasterId === "" ? {} : { tasterId }),
        ...instantOfDay(day, now),
      },
    });
    if (told === null) return;
    saved();
    forgetSheet(sheet);
    announce("The tasting is kept");
    onDone();
  };
  return (
    <Form say={say} onSend={send} label="A check tasting" className="rest-check">
      <div className="form-row">
        <TextField label="Tasted on" path={["at"]} value={day} onChange={setDay} input={{ type: "date" }} />
        <SelectField
          label="By"
          optional
          path={["tasterId"]}
          value={tasterId}
          onChange={setTasterId}
          options={
            <>
              <option value="">not said</option>
              {(tasters.answer ?? []).map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </>
          }
        />
      </div>
      <p className="soft small">
        A sip is enough. Best without looking at the last one; spit, drink water, never drive after it.
      </p>
      {SENSES.map((sense) => (
        <NoteField
          key={sense}
          sense={sense}
          note={notes[sense]}
          onChange={(text) => set(noteKey(CODE, PASS, sense), text)}
          strong={strong(sense)}
          read={read}
          {...(sense === "nose" ? { hint: "In your own words: “vanilla, a little toasted oak”." } : {})}
        />
      ))}
      <WholeGlass {...strong("whole")} />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Keep this tasting
        </Button>
        <Button
          onClick={() => {
            saved();
            forgetSheet(sheet);
            onDone();
          }}
        >
          Leave it
        </Button>
      </div>
    </Form>
  );
}

/** What stands, and what was taken back: the house reads the notes too, and is not to count that. */
function strengthsOf(fields: Fields, touched: ReadonlySet<string>): Check["strengths"] {
  return SECTIONS.flatMap((section) => {
    const stand = strengthsIn(fields, CODE, PASS, section);
    const said = [...stand].map(([attribute, strength]) => ({ section, attribute, strength }));
    const start = strengthKey(CODE, PASS, section, "");
    const back = [...touched].flatMap((key) => {
      const attribute = key.startsWith(start) ? key.slice(start.length) : "";
      return attribute === "" || stand.has(attribute as never)
        ? []
        : [{ section, attribute: attribute as (typeof said)[number]["attribute"], strength: null }];
    });
    return [...said, ...back];
  });
}
