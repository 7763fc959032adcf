import type { Recipe } from "@partsproof/house/protocol";
import { useState } from "react";
import { api, useSay } from "../../api.ts";
import type { Cellar } from "../../cellar/index.ts";
import { announce, Button, Form } from "../../parts/index.ts";
import { useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { namedIssues } from "./named-issues.ts";
import { RecipeEditor } from "./recipe-editor.tsx";
import { asTyped, isOtherBody, readBody } from "./recipe-typed.ts";

export interface EditRecipeProps {
  readonly recipe: Recipe;
  readonly cellar: Cellar;
  readonly onDone: () => void;
}

/** Changes a recipe: its name and target in place, its parts as the next version. */
export function EditRecipe({ recipe, cellar, onDone }: EditRecipeProps) {
  const household = useHousehold();
  const at = { household: household.id, recipe: recipe.id };
  const rename = useSay("editRecipe");
  const save = useSay("addRecipeVersion");
  const [first] = useState(() => ({ version: recipe.version, typed: asTyped(recipe) }));
  const [typed, setTyped] = useState(first.typed);
  const say = {
    issues: namedIssues([...rename.issues, ...save.issues], cellar.stocks),
    tries: rename.tries + save.tries,
  };
  useUnsaved(JSON.stringify(typed) !== JSON.stringify(first.typed));
  const stale = say.issues.some(({ code }) => code === "stale_edit");

  const send = async (version: number): Promise<void> => {
    rename.clear();
    const read = readBody(typed);
    if (!read.ok) {
      save.refuse(read.issues);
      return;
    }
    let next = version;
    if (typed.name !== first.typed.name || typed.target !== first.typed.target) {
      const targetWhiskeyId = typed.target === "" ? null : typed.target;
      const renamed = await rename.send({ at, body: { version, name: typed.name, targetWhiskeyId } });
      if (renamed === null) return;
      next = renamed.version;
    }
    if (isOtherBody(typed, first.typed)) {
      const saved = await save.send({ at, body: { version: next, ...read.body } });
      if (saved === null) return;
      announce(`Saved as version ${saved.latest.number}`);
    }
    onDone();
  };
  const anyway = async (): Promise<void> => {
    const now = await api("getRecipe", { at });
    await send(now.version);
  };
  return (
    <Form say={say} onSend={() => send(first.version)}>
      {stale && (
        <div className="meanwhile" role="group" aria-label="Changed meanwhile">
          <p>Someone saved another version meanwhile. It is kept; yours can become the next one after it.</p>
          <div className="form-actions">
            <Button kind="main" onClick={anyway}>
              Save mine as the next version
            </Button>
            <Button onClick={onDone}>See theirs</Button>
          </div>
        </div>
      )}
      <RecipeEditor typed={typed} onChange={setTyped} cellar={cellar} />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={rename.busy || save.busy}>
          Save as the next version
        </Button>
        <Button onClick={onDone}>Leave it as it was</Button>
      </div>
    </Form>
  );
}
