import type { Rest } from "@partsproof/house/protocol";
import { useSay } from "../../api.ts";
import { announce, Button, IssueSummary, Section } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

/** Takes back a rest before anything was tasted of it. What was kept in a vial stays there. */
export function BegunByMistake({ rest }: { readonly rest: Rest }) {
  const household = useHousehold();
  const say = useSay("removeRest");
  if (rest.checks.length > 0) return null;
  const remove = async (): Promise<void> => {
    const at = { household: household.id, rest: rest.id };
    const gone = await say.send({ at, query: { version: rest.version } });
    if (gone !== null) announce("The rest is taken back");
  };
  return (
    <Section title="Begun by mistake?">
      <IssueSummary say={say} />
      {rest.sample !== null && <p>What is in the vial stays in the vial.</p>}
      <div className="form-actions">
        <Button busy={say.busy} onClick={remove}>
          Take this rest back
        </Button>
      </div>
    </Section>
  );
}
