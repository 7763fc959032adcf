import type { Rest } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { announce, Button, Form, IssueSummary, Stepper, TextField } from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { dayTyped, instantOfDay } from "./typed-day.ts";

interface TakeOutProps {
  readonly rest: Rest;
  readonly piece: Rest["oak"][number];
  /** Which it is, in words, for who does not see where the button stands. */
  readonly name: string;
}

/** One piece comes out while the others stay in, or is in still after all. */
export function TakeOut({ rest, piece, name }: TakeOutProps) {
  const household = useHousehold();
  const at = { household: household.id, rest: rest.id, piece: piece.id };
  const say = useSay("takeOakOut");
  const [open, setOpen] = useState(false);
  if (piece.outAt !== null) {
    const back = async (): Promise<void> => {
      const told = await say.send({ at, body: { version: piece.version, at: null } });
      if (told !== null) announce("It is in still");
    };
    return (
      <>
        <IssueSummary say={say} />
        <Button kind="quiet" busy={say.busy} onClick={back}>
          It is in still<span className="unseen">: {name}</span>
        </Button>
      </>
    );
  }
  if (open) return <OutForm rest={rest} piece={piece} name={name} onDone={() => setOpen(false)} />;
  return (
    <Button kind="quiet" onClick={() => setOpen(true)}>
      Take it out<span className="unseen">: {name}</span>
    </Button>
  );
}

function OutForm({ rest, piece, name, onDone }: TakeOutProps & { readonly onDone: () => void }) {
  const household = useHousehold();
  const now = useNow();
  const at = { household: household.id, rest: rest.id, piece: piece.id };
  const say = useSay("takeOakOut");
  const [count, setCount] = useState(piece.count);
  const [day, setDay] = useState(dayTyped(now));
  const [loss, setLoss] = useState("");
  const send = async (): Promise<void> => {
    const lossMl = loss.trim() === "" ? 0 : Number(loss.replace(",", "."));
    const some = count === piece.count ? {} : { count };
    const body = { version: piece.version, lossMl, ...some, ...instantOfDay(day, now) };
    const told = await say.send({ at, body });
    if (told === null) return;
    announce("It is out");
    onDone();
  };
  return (
    <Form say={say} onSend={send} label={`Take out: ${name}`}>
      <div className="form-row">
        {piece.count > 1 && (
          <Stepper
            label="How many come out"
            showLabel
            value={count}
            min={1}
            max={piece.count}
            path={["count"]}
            onChange={setCount}
          />
        )}
        <TextField label="Out on" path={["at"]} value={day} onChange={setDay} input={{ type: "date" }} />
        <TextField
          label="Lost with it"
          optional
          unit="mL"
          path={["lossMl"]}
          value={loss}
          onChange={setLoss}
          input={{ inputMode: "decimal" }}
        />
      </div>
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          It is out
        </Button>
        <Button onClick={onDone}>Leave it in</Button>
      </div>
    </Form>
  );
}
