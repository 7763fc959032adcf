import { parseVolume } from "@partsproof/core/quantity";
import { type ReactNode, useMemo, useState } from "react";
import { useAsk, useAskAll } from "../../api.ts";
import { printMl, printStated } from "../../figures/index.ts";
import { factsOf } from "../../mixing/index.ts";
import {
  Broken,
  Busy,
  Empty,
  LinkButton,
  Page,
  SafetyNote,
  Section,
  SelectField,
  sentence,
  TextField,
} from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import { keep, kept, useHousehold } from "../../session/index.ts";
import { asPouring, poursOf, standing } from "../../weighing/index.ts";
import { PourBatch } from "./pour-batch.tsx";
import { useSettled } from "./use-settled.ts";

/** Plans a batch from a recipe, then records what was really poured. */
export default function NewBatch() {
  const household = useHousehold();
  const at = { household: household.id };
  const { query } = usePlace();
  const recipes = useAskAll("listRecipes", { at });
  const vessels = useAskAll("listVessels", { at });
  const whiskeys = useAskAll("listWhiskeys", { at });
  const [chosen, setChosen] = useState(query.get("recipe") ?? "");
  const weighKey = `weigh.${household.id}`;
  // Read once: it stays what is being recorded, though recording it forgets it.
  const [pouring] = useState(() => (query.has("weighed") ? asPouring(kept(weighKey)) : null));
  const weighed = useMemo(() => (pouring === null ? null : poursOf(pouring, standing(pouring))), [pouring]);
  const [volume, setVolume] = useState(() => `${volumeAsked(query.get("ml"), pouring?.batch?.finalMl)} mL`);
  const recipeId = chosen !== "" ? chosen : (recipes.answer?.[0]?.id ?? "");
  const recipe = recipes.answer?.find(({ id }) => id === recipeId);
  const read = parseVolume(useSettled(volume, 350));
  const finalMl = read.ok && read.value > 0 ? read.value : null;
  const plan = useAsk(
    "planBatch",
    recipe === undefined || finalMl === null ? null : { at, body: { recipeId, finalMl } },
  );
  const facts = useMemo(() => factsOf(whiskeys.answer ?? []), [whiskeys.answer]);
  const now = parseVolume(volume);
  const broken = [recipes, vessels, whiskeys].find(({ state }) => state === "broken");
  const page = (body: ReactNode) => (
    <Page title="Make a batch" wide back={{ to: `/h/${household.id}/batches`, label: "Batches" }}>
      {body}
    </Page>
  );
  if (broken !== undefined) return page(<Broken asked={broken} title="The shelf could not be fetched" />);
  if (recipes.state !== "here" || vessels.state !== "here" || whiskeys.state !== "here") {
    return page(<Busy what="recipes and shelf" />);
  }
  if (recipes.answer.length === 0) {
    return page(
      <Empty
        title="No recipe to make a batch of"
        action={
          <LinkButton kind="main" to={`/h/${household.id}/recipes/new`}>
            Write a recipe
          </LinkButton>
        }
      />,
    );
  }
  return page(
    <>
      <div className="form-row">
        <SelectField
          label="Recipe"
          value={recipeId}
          onChange={setChosen}
          options={recipes.answer.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        />
        <TextField
          label="Volume at the end"
          value={volume}
          onChange={setVolume}
          hint="What the bottle shall hold: 700 mL, 70 cl"
          wrong={
            now.ok ? (now.value > 0 ? null : "volume requires more than 0 mL, got 0 mL") : now.issue.message
          }
        />
      </div>
      {recipe !== undefined && weighed === null && finalMl !== null && (
        <div className="form-actions">
          <LinkButton to={`/h/${household.id}/batches/weigh?recipe=${recipe.id}&ml=${finalMl}`}>
            Pour it by weight
          </LinkButton>
          <LinkButton to={`/h/${household.id}/batches/make?recipe=${recipe.id}`}>
            Fit it to vessels
          </LinkButton>
        </div>
      )}
      {weighed !== null && (
        <p role="status">
          Poured by weight: the amounts below are what your scale said, freed of the air it weighed in.
        </p>
      )}
      {recipe !== undefined && (
        <p className="soft">
          Version {recipe.latest.number}
          {recipe.latest.waterTo !== null && `, water to ${printStated(recipe.latest.waterTo)}`}
          {recipe.latest.restDays !== null && `, rest ${recipe.latest.restDays} days`}.
        </p>
      )}
      {plan.state === "broken" && <Broken asked={plan} title="This batch cannot be planned" />}
      {plan.state === "busy" && finalMl !== null && <Busy what="the plan" />}
      {recipe !== undefined && plan.state === "here" && (
        <>
          {plan.answer.issues.length > 0 && (
            <Section title="What stands in the way">
              <ul className="short">
                {plan.answer.issues.map((issue) => (
                  <li key={issue.message} className="field-issue">
                    {sentence(issue.message)}
                  </li>
                ))}
              </ul>
              <p className="soft">
                Make less of it, or{" "}
                <Link to={`/h/${household.id}/shelf/add`}>put another bottle on the shelf</Link>. What is
                there can still be poured below.
              </p>
            </Section>
          )}
          <PourBatch
            key={`${plan.answer.recipeId} ${plan.answer.recipeNumber} ${plan.answer.result.volumeMl}`}
            plan={plan.answer}
            recipe={recipe}
            vessels={vessels.answer}
            facts={facts}
            weighed={weighed}
            onRecorded={() => {
              if (weighed !== null) keep(weighKey, null);
            }}
          />
        </>
      )}
      <SafetyNote title="No flame, and plain glass">
        <p>
          The vapour of strong spirit catches fire at the warmth of a room. No lead crystal for resting:
          spirit draws the lead out.{" "}
          {finalMl !== null &&
            finalMl > 0 &&
            `${printMl(finalMl)} is many glasses: keep it out of the reach of children.`}
        </p>
      </SafetyNote>
    </>,
  );
}

/** The volume of the address, where it carries one; else that of what was weighed; else a usual bottle. */
function volumeAsked(ml: string | null, weighed: number | undefined): number {
  const asked = ml !== null && /^\d{1,5}(\.\d+)?$/.test(ml) ? Number(ml) : 0;
  return asked > 0 ? asked : (weighed ?? 700);
}
