import { useState } from "react";
import { useSay } from "../../api.ts";
import { carriedFrom } from "../../bench/index.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { announce, Broken, Button, Busy, Empty, Form, LinkButton, Page } from "../../parts/index.ts";
import { go, usePlace, useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { fromBench } from "./from-bench.ts";
import { fromClosest } from "./from-closest.ts";
import { namedIssues } from "./named-issues.ts";
import { RecipeEditor } from "./recipe-editor.tsx";
import { BLANK, readBody } from "./recipe-typed.ts";

/** Writes a new recipe; an address that carries a result of the bench, or a recipe found, fills it in. */
export default function NewRecipe() {
  const household = useHousehold();
  const cellar = useCellar();
  return (
    <Page
      title="New recipe"
      wide
      lead="Small whole parts. What they come to follows as you go."
      back={{ to: `/h/${household.id}/recipes`, label: "Recipes" }}
    >
      {cellar.state === "busy" && <Busy what="the shelf" />}
      {cellar.state === "broken" && <Broken asked={cellar} title="The shelf could not be fetched" />}
      {cellar.state === "here" && cellar.answer.whiskeys.length === 0 && (
        <Empty
          title="No whiskey to make it from"
          action={
            <LinkButton kind="main" to={`/h/${household.id}/shelf/add`}>
              Add a bottle
            </LinkButton>
          }
        >
          <p>A recipe names whiskeys that the house knows.</p>
        </Empty>
      )}
      {cellar.state === "here" && cellar.answer.whiskeys.length > 0 && <Write cellar={cellar.answer} />}
    </Page>
  );
}

function Write({ cellar }: { readonly cellar: Cellar }) {
  const household = useHousehold();
  const { query } = usePlace();
  const say = useSay("addRecipe");
  const [brought] = useState(() => {
    const carried = carriedFrom(query);
    return carried === null ? null : fromBench(carried, cellar);
  });
  const [typed, setTyped] = useState(() => brought?.typed ?? fromClosest(query, cellar) ?? BLANK);
  const saved = useUnsaved(JSON.stringify(typed) !== JSON.stringify(BLANK));
  const send = async (): Promise<void> => {
    const read = readBody(typed);
    if (!read.ok) {
      say.refuse(read.issues);
      return;
    }
    const made = await say.send({
      at: { household: household.id },
      body: { name: typed.name, targetWhiskeyId: typed.target === "" ? null : typed.target, ...read.body },
    });
    if (made !== null) {
      saved();
      announce(`${made.name} written`);
      go(`/h/${household.id}/recipes/${made.id}`);
    }
  };
  return (
    <Form say={{ tries: say.tries, issues: namedIssues(say.issues, cellar.stocks) }} onSend={send}>
      {brought !== null && brought.notes.length > 0 && (
        <div className="meanwhile" role="group" aria-label="From the bench">
          <p>Brought over from the bench. What it could not know:</p>
          <ul>
            {brought.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </div>
      )}
      <RecipeEditor typed={typed} onChange={setTyped} cellar={cellar} />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Save the recipe
        </Button>
      </div>
    </Form>
  );
}
