import { useMemo, useState } from "react";
import { useAsk, useAskAll } from "../../api.ts";
import { readVolumeOf } from "../../bench/index.ts";
import { printStated } from "../../figures/index.ts";
import { abv20OfStated } from "../../mixing/index.ts";
import {
  Broken,
  Busy,
  Empty,
  LinkButton,
  Page,
  SelectField,
  sentence,
  TextField,
} from "../../parts/index.ts";
import { Link, usePlace } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { type Pouring, pouringOfBatch } from "../../weighing/index.ts";
import { useSettled } from "../batches/use-settled.ts";
import { PouringScreen } from "./pouring.tsx";
import { Setup } from "./setup.tsx";
import { useKeptPouring } from "./use-pouring.ts";

/** A recipe, poured by weight into a batch. */
export default function WeighBatch() {
  const household = useHousehold();
  const { query } = usePlace();
  const [pouring, setPouring] = useKeptPouring(household.id);
  const back = { to: `/h/${household.id}/batches`, label: "Batches" };
  if (pouring !== null) {
    const asked = query.get("recipe");
    const other = asked !== null && asked !== pouring.batch?.recipeId;
    return (
      <Page title="Pour by weight" wide back={back} lead={pouring.title}>
        {other && (
          <p role="status">
            This one is still being poured on this device. End it or drop it, and another can begin.
          </p>
        )}
        <PouringScreen
          pouring={pouring}
          onChange={setPouring}
          onDrop={() => setPouring(null)}
          end={
            <div className="form-actions">
              <LinkButton
                kind="main"
                to={`/h/${household.id}/batches/new?recipe=${pouring.batch?.recipeId ?? ""}&ml=${pouring.batch?.finalMl ?? 700}&weighed`}
              >
                Record it as a batch
              </LinkButton>
              <p className="soft small">What the scale said is taken off the shelf, not what was planned.</p>
            </div>
          }
        />
      </Page>
    );
  }
  return (
    <Page
      title="Pour by weight"
      wide
      back={back}
      lead="One part at a time, by the scale. A pour that goes too far is reckoned with."
    >
      <Begin onStart={setPouring} />
    </Page>
  );
}

function Begin({ onStart }: { readonly onStart: (pouring: Pouring) => void }) {
  const household = useHousehold();
  const at = { household: household.id };
  const { query } = usePlace();
  const recipes = useAskAll("listRecipes", { at });
  const vessels = useAskAll("listVessels", { at });
  const [chosen, setChosen] = useState(query.get("recipe") ?? "");
  const [volume, setVolume] = useState(() => {
    const ml = Number(query.get("ml") ?? "");
    return `${ml > 0 ? Number(ml.toFixed(1)) : 700} mL`;
  });
  const now = readVolumeOf(volume);
  const read = readVolumeOf(useSettled(volume, 350));
  const recipe = recipes.answer?.find(({ id }) => id === (chosen === "" ? recipes.answer?.[0]?.id : chosen));
  const finalMl = read.ok ? read.value : null;
  const plan = useAsk(
    "planBatch",
    recipe === undefined || finalMl === null ? null : { at, body: { recipeId: recipe.id, finalMl } },
  );
  const byId = useMemo(
    () => new Map((vessels.answer ?? []).map((vessel) => [vessel.id, vessel])),
    [vessels.answer],
  );
  const broken = [recipes, vessels].find(({ state }) => state === "broken");
  if (broken !== undefined) return <Broken asked={broken} title="The shelf could not be fetched" />;
  if (recipes.state !== "here" || vessels.state !== "here") return <Busy what="recipes and shelf" />;
  if (recipe === undefined) {
    return (
      <Empty
        title={recipes.answer.length === 0 ? "No recipe to pour" : "That recipe is not here"}
        action={
          <LinkButton kind="main" to={`/h/${household.id}/recipes`}>
            See the recipes
          </LinkButton>
        }
      />
    );
  }
  const laid = plan.state === "here" ? pouringOfBatch(plan.answer, byId) : null;
  const { waterTo } = recipe.latest;
  const ready =
    laid === null ||
    laid.missing.length > 0 ||
    laid.parts.length === 0 ||
    plan.state !== "here" ||
    finalMl === null
      ? null
      : {
          key: `${recipe.id} ${plan.answer.recipeNumber} ${finalMl}`,
          title: `${recipe.name}, version ${plan.answer.recipeNumber}`,
          batch: { recipeId: recipe.id, finalMl },
          parts: laid.parts,
          sources: laid.sources,
          waterTo: waterTo === null ? null : abv20OfStated(waterTo),
        };
  return (
    <Setup plan={ready} vesselMl={finalMl ?? 700} onStart={onStart}>
      <div className="form-row">
        <SelectField
          label="Recipe"
          value={recipe.id}
          onChange={setChosen}
          options={recipes.answer.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        />
        <TextField
          label="Volume at the end"
          value={volume}
          onChange={setVolume}
          wrong={now.ok ? null : now.wrong}
          {...(waterTo === null ? {} : { hint: `Water to ${printStated(waterTo)} goes in last.` })}
        />
      </div>
      {plan.state === "broken" && <Broken asked={plan} title="This batch cannot be planned" />}
      {plan.state === "busy" && finalMl !== null && <Busy what="the plan" />}
      {plan.state === "here" && plan.answer.issues.length > 0 && (
        <div>
          {plan.answer.issues.map((issue) => (
            <p key={issue.message} className="field-issue">
              {sentence(issue.message)}
            </p>
          ))}
          <p className="soft">
            Pour less, or <Link to={`/h/${household.id}/shelf/add`}>put another bottle on the shelf</Link>.
            {ready !== null && " What is there can be poured; when a bottle is empty, say so."}
          </p>
        </div>
      )}
    </Setup>
  );
}
