import { parseVolume } from "@partsproof/core/quantity";
import type { Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { readMoney } from "../../figures/index.ts";
import { whiskeyLabel } from "../../mixing/index.ts";
import { announce, Button, Form, Page, Section, SelectField } from "../../parts/index.ts";
import { go, usePlace, useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { BottleFields, FULL, type TypedBottle } from "./bottle-fields.tsx";
import { WhiskeyFields } from "./whiskey-fields.tsx";
import { BLANK, readWhiskey, type TypedWhiskey } from "./whiskey-typed.ts";

/** A bottle onto the shelf, with its whiskey if the house does not know it yet. */
export default function AddBottle() {
  const household = useHousehold();
  const { currency } = household;
  const at = { household: household.id };
  const { query } = usePlace();
  const known = useAskAll("listWhiskeys", { at });
  const [whiskeyId, setWhiskeyId] = useState(query.get("whiskey") ?? "");
  const [typed, setTyped] = useState<TypedWhiskey>(BLANK);
  const [bottle, setBottle] = useState<TypedBottle>(FULL);
  const saved = useUnsaved(JSON.stringify([typed, bottle]) !== JSON.stringify([BLANK, FULL]));
  const addWhiskey = useSay("addWhiskey");
  const addBottle = useSay("addBottle");
  const say = {
    issues: [...addWhiskey.issues, ...addBottle.issues],
    tries: addWhiskey.tries + addBottle.tries,
  };
  const chosen = known.answer?.find(({ id }) => id === whiskeyId);

  /** The whiskey to bottle: the known one, or the one just written down. */
  const whiskey = async (): Promise<Whiskey | null> => {
    if (chosen !== undefined) return chosen;
    const read = readWhiskey(typed, currency);
    if (!read.ok) {
      addWhiskey.refuse(read.issues);
      return null;
    }
    const made = await addWhiskey.send({ at, body: read.facts });
    // Should the bottle be refused, the whiskey is known by then and is not written down twice.
    if (made !== null) setWhiskeyId(made.id);
    return made;
  };
  const send = async (): Promise<void> => {
    addBottle.clear();
    const level = bottle.opened ? parseVolume(bottle.level) : null;
    const price = readMoney(bottle.paid, currency, ["paid"]);
    if (level?.ok === false || !price.ok) {
      addBottle.refuse([
        ...(level?.ok === false ? [{ ...level.issue, path: ["levelMl"] }] : []),
        ...(price.ok ? [] : [price.issue]),
      ]);
      return;
    }
    const found = await whiskey();
    if (found === null) return;
    const made = await addBottle.send({
      at,
      body: {
        whiskeyId: found.id,
        label: bottle.label.trim(),
        sealed: !bottle.opened,
        ...(level === null ? {} : { levelMl: level.value }),
        ...(price.minor === null ? {} : { priceMinor: price.minor }),
      },
    });
    if (made === null) return;
    saved();
    announce(`${whiskeyLabel(found)} is on the shelf`);
    go(`/h/${household.id}/shelf`);
  };
  const bottleMl =
    chosen?.bottleMl ??
    (() => {
      const read = parseVolume(typed.bottle);
      return read.ok ? read.value : 700;
    })();
  return (
    <Page title="Add a bottle" back={{ to: `/h/${household.id}/shelf`, label: "Shelf" }}>
      <Form say={say} onSend={send}>
        {known.answer !== undefined && known.answer.length > 0 && (
          <SelectField
            label="Which whiskey?"
            path={["whiskeyId"]}
            value={chosen === undefined ? "" : whiskeyId}
            onChange={setWhiskeyId}
            options={
              <>
                <option value="">A new one</option>
                <optgroup label="Known here">
                  {known.answer.map((one) => (
                    <option key={one.id} value={one.id}>
                      {whiskeyLabel(one)}
                    </option>
                  ))}
                </optgroup>
              </>
            }
          />
        )}
        {chosen === undefined && <WhiskeyFields typed={typed} onChange={setTyped} currency={currency} />}
        <Section title="This bottle">
          <BottleFields bottle={bottle} onChange={setBottle} bottleMl={bottleMl} currency={currency} />
        </Section>
        <div className="form-actions">
          <Button kind="main" type="submit" busy={addWhiskey.busy || addBottle.busy}>
            Put it on the shelf
          </Button>
        </div>
      </Form>
    </Page>
  );
}
