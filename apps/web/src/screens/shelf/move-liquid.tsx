import { parseAmount } from "@partsproof/core/quantity";
import type { Account, TransferAmount, Vessel, Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printMl, readMoney } from "../../figures/index.ts";
import { whiskeyLabel } from "../../mixing/index.ts";
import { announce, Button, Choice, Dialog, Form, SelectField, TextField, Tick } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

export type Move = "out" | "in" | "move";

const TITLES: Readonly<Record<Move, string>> = {
  out: "Pour out",
  in: "Top up",
  move: "Move to another vessel",
};

export interface MoveLiquidProps {
  readonly move: Move;
  readonly vessel: Vessel;
  readonly vessels: readonly Vessel[];
  readonly whiskeys: readonly Whiskey[];
  readonly onClose: () => void;
}

/** One transfer into or out of a vessel. */
export function MoveLiquid({ move, vessel, vessels, whiskeys, onClose }: MoveLiquidProps) {
  const household = useHousehold();
  const say = useSay("addTransfer");
  const others = vessels.filter(({ id }) => id !== vessel.id);
  const full = others.filter(({ contents }) => contents.volumeMl > 0);
  const [amount, setAmount] = useState(move === "out" ? "30 mL" : "");
  const [all, setAll] = useState(false);
  const [outside, setOutside] = useState<"glass" | "drain" | "air">("glass");
  const [source, setSource] = useState<string>(vessel.whiskeyId === null ? "tap" : "shop");
  const [other, setOther] = useState(others[0]?.id ?? "");
  const [whiskeyId, setWhiskeyId] = useState(vessel.whiskeyId ?? whiskeys[0]?.id ?? "");
  const [paid, setPaid] = useState("");
  const [note, setNote] = useState("");
  const here: Account = { kind: "vessel", vesselId: vessel.id };
  const amountPath = ["amount"];

  const send = async (): Promise<void> => {
    const read = parseAmount(amount);
    const price = readMoney(paid, household.currency, ["priceMinor"]);
    if ((!all && !read.ok) || !price.ok) {
      say.refuse([
        ...(all || read.ok ? [] : [{ ...read.issue, path: amountPath }]),
        ...(price.ok ? [] : [price.issue]),
      ]);
      return;
    }
    const far: Account =
      move === "out"
        ? { kind: "outside", name: outside }
        : move === "move"
          ? { kind: "vessel", vesselId: other }
          : source === "shop" || source === "tap"
            ? { kind: "outside", name: source }
            : { kind: "vessel", vesselId: source };
    const asked: TransferAmount =
      all || !read.ok
        ? { kind: "all" }
        : read.value.kind === "mass"
          ? { kind: "mass", g: read.value.massG }
          : { kind: "volume", ml: read.value.volumeMl };
    const shop = move === "in" && source === "shop";
    const done = await say.send({
      at: { household: household.id },
      body: {
        from: move === "in" ? far : here,
        to: move === "in" ? here : far,
        amount: asked,
        note,
        ...(shop ? { whiskeyId } : {}),
        ...(shop && price.minor !== null ? { priceMinor: price.minor } : {}),
      },
    });
    if (done !== null) {
      announce(`${TITLES[move]}: done`);
      onClose();
    }
  };
  return (
    <Dialog title={TITLES[move]} open onClose={onClose}>
      <Form say={say} onSend={send}>
        <p>
          <span className="name">{vessel.label}</span> holds {printMl(vessel.contents.volumeMl)} of{" "}
          {printMl(vessel.capacityMl)}
          {vessel.keptMl > 0 && `, ${printMl(vessel.keptMl)} of it kept for a sealed flight`}.
        </p>
        {move === "out" && (
          <Choice
            label="Where does it go?"
            path={["to"]}
            value={outside}
            onChange={setOutside}
            options={[
              { value: "glass", label: "A glass" },
              { value: "drain", label: "The drain" },
              { value: "air", label: "Evaporated" },
            ]}
          />
        )}
        {move === "in" && (
          <SelectField
            label="Where from?"
            path={["from"]}
            value={source}
            onChange={(value) => {
              setSource(value);
              setAll(false);
            }}
            options={
              <>
                <option value="shop">A new bottle from the shop</option>
                <option value="tap">Water</option>
                <optgroup label="Another vessel">
                  {full.map((one) => (
                    <option key={one.id} value={one.id}>
                      {one.label}, {printMl(one.contents.volumeMl)}
                    </option>
                  ))}
                </optgroup>
              </>
            }
          />
        )}
        {move === "in" && source === "shop" && (
          <div className="form-row">
            <SelectField
              label="Which whiskey?"
              path={["whiskeyId"]}
              value={whiskeyId}
              onChange={setWhiskeyId}
              options={whiskeys.map((one) => (
                <option key={one.id} value={one.id}>
                  {whiskeyLabel(one)}
                </option>
              ))}
            />
            <TextField
              label="Paid for this amount"
              optional
              path={["priceMinor"]}
              unit={household.currency}
              value={paid}
              onChange={setPaid}
              input={{ inputMode: "decimal" }}
            />
          </div>
        )}
        {move === "move" && (
          <SelectField
            label="Into which vessel?"
            path={["to"]}
            value={other}
            onChange={setOther}
            options={others.map((one) => (
              <option key={one.id} value={one.id}>
                {one.label}, {printMl(one.contents.volumeMl)} of {printMl(one.capacityMl)}
              </option>
            ))}
          />
        )}
        {!all && (
          <TextField
            label="How much?"
            path={amountPath}
            value={amount}
            onChange={setAmount}
            hint="50 mL, 2 oz, or grams by the scale: 46 g"
          />
        )}
        {!(move === "in" && (source === "shop" || source === "tap")) && (
          <Tick label="All of it" value={all} onChange={setAll} />
        )}
        <TextField label="Note" optional path={["note"]} value={note} onChange={setNote} />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            {TITLES[move]}
          </Button>
          <Button onClick={onClose}>Leave it</Button>
        </div>
      </Form>
    </Dialog>
  );
}
