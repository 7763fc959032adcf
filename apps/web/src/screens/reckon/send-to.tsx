import { useState } from "react";
import { useAsk, useAskAll, useSay } from "../../api.ts";
import { carriedText } from "../../bench/index.ts";
import { printAbv } from "../../figures/index.ts";
import { announce, Button, Busy, IssueSummary, LinkButton, SelectField } from "../../parts/index.ts";
import { go, Link } from "../../router/index.ts";
import { lastHousehold } from "../../session/index.ts";
import type { SendOnProps } from "./send-on.tsx";

/** Where a result can go: a new recipe with its parts, a new batch of its volume, the note of a batch. */
export default function SendTo({ carried, text }: SendOnProps) {
  const asked = useAskAll("listHouseholds", {});
  const [chosen, setChosen] = useState<string | null>(null);
  if (asked.state === "busy") return <Busy what="the households" />;
  if (asked.state === "broken") {
    return (
      <p className="soft" role="status">
        The house does not answer, so there is no recipe or batch to send it to. The sum stands without it.
      </p>
    );
  }
  const households = asked.answer;
  const last = lastHousehold();
  const household = households.find(({ id }) => id === (chosen ?? last)) ?? households[0];
  if (household === undefined) {
    return (
      <p role="status">
        There is no household yet. <Link to="/">Begin one</Link>, and results can be sent to its recipes and
        batches.
      </p>
    );
  }
  return (
    <div className="send-to" role="group" aria-label="Send it to">
      {households.length > 1 && (
        <SelectField
          label="Household"
          value={household.id}
          onChange={setChosen}
          options={households.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        />
      )}
      <div className="send-way">
        <p>
          <b>A new recipe</b> opens with {carried.parts.map((one) => printAbv(one.abv20)).join(", ")} as its
          parts. A liquid here has a strength and no name: where one whiskey of yours has that strength it is
          chosen, else you choose.
        </p>
        <LinkButton to={`/h/${household.id}/recipes/new?${carriedText(carried)}`}>
          Open as a new recipe
        </LinkButton>
      </div>
      <ToBatch key={household.id} household={household.id} carried={carried} text={text} />
    </div>
  );
}

function ToBatch({ household, carried, text }: SendOnProps & { readonly household: string }) {
  const at = { household };
  const recipes = useAskAll("listRecipes", { at });
  const batches = useAskAll("listBatches", { at });
  const [chosen, setChosen] = useState("");
  const [kind = "", id = ""] = chosen.split(" ", 2);
  const batch = useAsk("getBatch", kind === "note" ? { at: { household, batch: id } } : null);
  const say = useSay("editBatch");
  if (recipes.answer === undefined || batches.answer === undefined) {
    return recipes.state === "broken" || batches.state === "broken" ? null : (
      <Busy what="recipes and batches" />
    );
  }
  if (recipes.answer.length === 0 && batches.answer.length === 0) {
    return <p className="soft">There is no recipe to make a batch of, and no batch yet.</p>;
  }
  const send = async (): Promise<void> => {
    if (kind === "make") {
      const ml = carried.finalMl === null ? "" : `&ml=${Math.round(carried.finalMl)}`;
      go(`/h/${household}/batches/new?recipe=${id}${ml}`);
      return;
    }
    if (batch.answer === undefined) return;
    const { note, version, name } = batch.answer;
    const done = await say.send({
      at: { household, batch: id },
      body: { version, note: note === "" ? text : `${note}\n${text}` },
    });
    if (done !== null) {
      announce(`Written into the note of ${name}`);
      go(`/h/${household}/batches/${id}`);
    }
  };
  return (
    <div className="send-way">
      <IssueSummary say={say} />
      <SelectField
        label="A batch"
        value={chosen}
        onChange={setChosen}
        hint={
          kind === "note"
            ? `Written into its note: “${text}”`
            : kind === "make" && carried.finalMl !== null
              ? `Begun at ${Math.round(carried.finalMl)} mL. The recipe's parts are poured, not the bench's.`
              : "A new one of a recipe, at this volume; or the note of one there is"
        }
        options={
          <>
            <option value="">Choose one</option>
            {recipes.answer.length > 0 && (
              <optgroup label="A new batch of">
                {recipes.answer.map((recipe) => (
                  <option key={recipe.id} value={`make ${recipe.id}`}>
                    {recipe.name}
                  </option>
                ))}
              </optgroup>
            )}
            {batches.answer.length > 0 && (
              <optgroup label="Into the note of">
                {batches.answer.map((one) => (
                  <option key={one.id} value={`note ${one.id}`}>
                    {one.name}
                  </option>
                ))}
              </optgroup>
            )}
          </>
        }
      />
      <Button
        disabled={chosen === "" || (kind === "note" && batch.answer === undefined)}
        busy={say.busy}
        onClick={send}
      >
        {kind === "note" ? "Write it there" : "Go on with it"}
      </Button>
    </div>
  );
}
