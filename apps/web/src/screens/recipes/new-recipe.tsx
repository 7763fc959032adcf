import { useState } from "react";
import { useSay } from "../../api.ts";
import { useCellar } from "../../cellar/index.ts";
import { announce, Broken, Button, Busy, Empty, Form, LinkButton, Page } from "../../parts/index.ts";
import { go, useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { namedIssues } from "./named-issues.ts";
import { RecipeEditor } from "./recipe-editor.tsx";
import { BLANK, readBody } from "./recipe-typed.ts";

/** Writes a new recipe. */
export default function NewRecipe() {
  const household = useHousehold();
  const cellar = useCellar();
  const say = useSay("addRecipe");
  const [typed, setTyped] = useState(BLANK);
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
      {cellar.state === "here" && cellar.answer.whiskeys.length > 0 && (
        <Form say={{ tries: say.tries, issues: namedIssues(say.issues, cellar.answer.stocks) }} onSend={send}>
          <RecipeEditor typed={typed} onChange={setTyped} cellar={cellar.answer} />
          <div className="form-actions">
            <Button kind="main" type="submit" busy={say.busy}>
              Save the recipe
            </Button>
          </div>
        </Form>
      )}
    </Page>
  );
}
