import type { NextThing } from "@partsproof/house/protocol";
import { Button } from "../../parts/index.ts";
import { useReminders } from "../../reminding/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";

const DATED: ReadonlySet<NextThing["kind"]> = new Set([
  "batch resting",
  "check tasting due",
  "check tasting planned",
  "pull window",
  "flight planned",
]);

/** The same days said by this device, or by a calendar; offered where there are any. */
export function Remind({ things }: { readonly things: readonly NextThing[] }) {
  const household = useHousehold();
  const { state, ask } = useReminders(things);
  if (!things.some(({ kind }) => DATED.has(kind))) return null;
  return (
    <div className="front-remind">
      <div className="form-actions">
        {state === "ask" && <Button onClick={() => void ask()}>Remind me on this device</Button>}
        <Link to={`/h/${household.id}/calendar`}>These days in your own calendar</Link>
      </div>
      {state === "ask" && (
        <p className="soft small">While the app is open here: the house sends nothing to anybody.</p>
      )}
      {state === "on" && <p className="soft small">This device reminds you while the app is open here.</p>}
      {state === "off" && (
        <p className="soft small">This browser was told not to remind you; its own settings change that.</p>
      )}
    </div>
  );
}
