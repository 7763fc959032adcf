import type { ResultFile, ResultPreview } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { printAbv, printParts } from "../../figures/index.ts";
import { announce, Button, IssueSummary, Section, SelectField } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";

export interface SeenResultProps {
  readonly file: ResultFile;
  readonly preview: ResultPreview;
}

/** A result before it is taken in: of which recipe, from which kitchen, what it says. */
export function SeenResult({ file, preview }: SeenResultProps) {
  const household = useHousehold();
  const say = useSay("takeInResult");
  const recipes = useAskAll("listRecipes", { at: { household: household.id } });
  const [chosen, setChosen] = useState("");
  const { about, kitchen, slots, sheets, tasters, flights, notes, already } = preview;
  const recipeId = about?.recipeId ?? chosen;
  const take = async (): Promise<void> => {
    const body = { result: file, sha256: preview.sha256, ...(recipeId === "" ? {} : { recipeId }) };
    const made = await say.send({ at: { household: household.id }, body });
    if (made === null) return;
    announce("Result taken in");
    go(`/h/${household.id}/recipes/${made.recipeId}/results`);
  };
  return (
    <Section title={`What came of ${preview.recipe.name}`}>
      <p>
        From {kitchen ?? "a kitchen that gave no name"}. {counted(flights, "blind flight")},{" "}
        {counted(sheets, "ranking")} by {counted(tasters, "taster")}; who they are is not in it.
      </p>
      {slots.length > 0 && (
        <ol className="lines">
          {slots.map((slot) => (
            <li key={slot.slot}>
              <p>
                <b>{printParts(slot.parts)}</b> {slot.label ?? "not told"}
              </p>
            </li>
          ))}
        </ol>
      )}
      {preview.abv !== null && <p>Watered to {printAbv(preview.abv)}.</p>}
      {notes !== "" && <blockquote className="told-note">{notes}</blockquote>}
      {about === null && !already && (
        <>
          <p>
            No file that went out from here has the hash it names. If you know which recipe it is of, say so.
          </p>
          <SelectField
            label="It is of"
            path={["recipeId"]}
            value={chosen}
            onChange={setChosen}
            options={
              <>
                <option value="">Choose a recipe</option>
                {recipes.state === "here" &&
                  recipes.answer.map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
              </>
            }
          />
        </>
      )}
      <IssueSummary say={say} />
      {already ? (
        <p>This result is here already. It counts once.</p>
      ) : (
        <div className="form-actions">
          <Button kind="main" busy={say.busy} disabled={recipeId === ""} onClick={take}>
            Take in the result{about === null ? "" : ` of ${about.name}`}
          </Button>
        </div>
      )}
    </Section>
  );
}

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
