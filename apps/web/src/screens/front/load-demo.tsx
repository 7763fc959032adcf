import { useSay } from "../../api.ts";
import { Button, IssueSummary } from "../../parts/index.ts";
import { go } from "../../router/index.ts";

/** Loads the demo household, and says that it is invented. */
export function LoadDemo() {
  const say = useSay("loadDemo");
  const load = async (): Promise<void> => {
    const made = await say.send({});
    if (made !== null) go(`/h/${made.id}`);
  };
  return (
    <>
      <IssueSummary say={say} />
      <p>
        A full shelf, recipes, batches and flights round a closed island distillery called Saltreach. All of
        it is invented: no such makers, whiskeys, prices or people exist. It can be removed at any time.
      </p>
      <div>
        <Button onClick={load} busy={say.busy}>
          Load the demo household
        </Button>
      </div>
    </>
  );
}
