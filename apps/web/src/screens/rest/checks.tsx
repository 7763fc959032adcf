import { attributeName } from "@partsproof/core/sensory";
import type { Check, Rest } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { announce, Button, IssueSummary, Section } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { CheckForm } from "./check-form.tsx";

/** What was tasted during the rest, and one more of it. */
export function Checks({ rest }: { readonly rest: Rest }) {
  const [open, setOpen] = useState(false);
  const ended = rest.endedAt !== null;
  if (ended && rest.checks.length === 0) return null;
  return (
    <Section title="Check tastings">
      {rest.checks.length === 0 && !open && (
        <p>Nothing was tasted yet. Best before the wood goes in, then on the days that are named.</p>
      )}
      <ol className="rest-checks">
        {rest.checks.map((check) => (
          <OneCheck key={check.id} rest={rest} check={check} />
        ))}
      </ol>
      {open && <CheckForm rest={rest} onDone={() => setOpen(false)} />}
      {!open && !ended && (
        <div className="form-actions">
          <Button kind="main" onClick={() => setOpen(true)}>
            Taste it now
          </Button>
        </div>
      )}
    </Section>
  );
}

function OneCheck({ rest, check }: { readonly rest: Rest; readonly check: Check }) {
  const household = useHousehold();
  const say = useSay("removeCheck");
  const day = `day ${Math.round(check.day)}`;
  const levels = Object.entries(check.levels).toSorted(([, a], [, b]) => b - a);
  const words = Object.values(check.notes).filter((text) => text.trim() !== "");
  const remove = async (): Promise<void> => {
    const at = { household: household.id, rest: rest.id, check: check.id };
    const gone = await say.send({ at, query: { version: check.version } });
    if (gone !== null) announce(`The tasting of ${day} is taken away`);
  };
  return (
    <li>
      <IssueSummary say={say} />
      <p>
        <strong>{day.charAt(0).toUpperCase() + day.slice(1)}</strong>
        <span className="soft small">
          {" "}
          {printDay(check.at)}
          {check.taster !== null && `, ${check.taster}`}
        </span>
      </p>
      {words.map((text) => (
        <p key={text} className="rest-note">
          {text}
        </p>
      ))}
      {levels.length > 0 && (
        <p className="soft small">
          {levels.map(([id, level]) => `${attributeName(id)} ${level.toFixed(1)}`).join(", ")} of 10
        </p>
      )}
      {rest.endedAt === null && (
        <Button kind="quiet" busy={say.busy} onClick={remove}>
          Take it away<span className="unseen">: the tasting of {day}</span>
        </Button>
      )}
    </li>
  );
}
