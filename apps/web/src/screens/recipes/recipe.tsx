import type { Recipe } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useAskAll } from "../../api.ts";
import { printDay, printParts } from "../../figures/index.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { slotKey, whiskeyLabel } from "../../mixing/index.ts";
import { Broken, Button, Busy, LinkButton, LiquidColumn, Page, Section } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { RecipeProfiles } from "../profiles/recipe-profiles.tsx";
import type { ScreenProps } from "../screen.ts";
import { EditRecipe } from "./edit-recipe.tsx";
import { printRatio } from "./lowest-terms.ts";
import { Outcome } from "./outcome.tsx";
import { OakNote } from "./recipe-fields.tsx";
import { columnTitle, openName, segmentsOf } from "./segments.ts";
import "./recipe.css";

/** One recipe: what it comes to, its history, changing it, making a batch of it. */
export default function RecipePage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, recipe: params["recipe"] ?? "" };
  const asked = useAsk("getRecipe", { at });
  const cellar = useCellar();
  const [editing, setEditing] = useState(false);
  const back = { to: `/h/${household.id}/recipes`, label: "Recipes" };
  if (asked.state !== "here" || cellar.state !== "here") {
    const broken = asked.state === "broken" ? asked : cellar.state === "broken" ? cellar : null;
    return (
      <Page title="Recipe" wide back={back}>
        {broken === null ? (
          <Busy what="the recipe" />
        ) : (
          <Broken asked={broken} title="This recipe could not be fetched" />
        )}
      </Page>
    );
  }
  const recipe = asked.answer;
  const target = cellar.answer.whiskeys.find(({ id }) => id === recipe.targetWhiskeyId);
  return (
    <Page
      title={recipe.name}
      wide
      back={back}
      lead={
        <>
          {printRatio(recipe.latest.slots.map(({ parts }) => parts))}, version {recipe.latest.number} of{" "}
          {printDay(recipe.latest.createdAt)}
          {target !== undefined && `, towards ${whiskeyLabel(target)}`}
        </>
      }
      actions={
        !editing && (
          <>
            {isOpen(recipe) ? (
              <LinkButton kind="main" to={`/h/${household.id}/recipes/${recipe.id}/filling`}>
                Fill it from your shelf
              </LinkButton>
            ) : (
              <>
                <LinkButton kind="main" to={`/h/${household.id}/batches/new?recipe=${recipe.id}`}>
                  Make a batch
                </LinkButton>
                <LinkButton to={`/h/${household.id}/batches/weigh?recipe=${recipe.id}`}>
                  Pour by weight
                </LinkButton>
                <LinkButton to={`/h/${household.id}/recipes/${recipe.id}/next`}>What to try next</LinkButton>
              </>
            )}
            <Button onClick={() => setEditing(true)}>Change it</Button>
            <LinkButton to={`/h/${household.id}/recipes/${recipe.id}/share`}>Pass it on</LinkButton>
          </>
        )
      }
    >
      {editing ? (
        <EditRecipe
          recipe={recipe}
          cellar={cellar.answer}
          onDone={() => {
            setEditing(false);
            // Somebody else may have saved meanwhile, and their version was chosen.
            asked.again();
          }}
        />
      ) : (
        <Shown recipe={recipe} cellar={cellar.answer} />
      )}
    </Page>
  );
}

function Shown({ recipe, cellar }: { readonly recipe: Recipe; readonly cellar: Cellar }) {
  const { latest } = recipe;
  const household = useHousehold();
  return (
    <div className="recipe">
      <Outcome name={recipe.name} body={latest} cellar={cellar} />
      <div className="recipe-side">
        <Section title="Rest and oak">
          <p>{latest.restDays === null ? "No rest asked for." : `Rest ${latest.restDays} days.`}</p>
          {latest.oak === "" ? (
            <p className="soft">No oak.</p>
          ) : (
            <>
              <p>{latest.oak}</p>
              <OakNote />
            </>
          )}
          {latest.note !== "" && <p className="recipe-note">{latest.note}</p>}
        </Section>
        <Lines recipe={recipe} cellar={cellar} />
        <Versions recipe={recipe} cellar={cellar} />
      </div>
      <div className="recipe-whole">
        <RecipeProfiles household={household.id} recipe={recipe.id} />
      </div>
    </div>
  );
}

const isOpen = ({ latest }: Recipe): boolean =>
  latest.slots.some(({ of, parts }) => parts > 0 && of.kind === "open");

/** What others need to make it: the rule of each line and why; and what came of it elsewhere. */
function Lines({ recipe, cellar }: { readonly recipe: Recipe; readonly cellar: Cellar }) {
  const household = useHousehold();
  const { slots, lineage } = recipe.latest;
  const here = `/h/${household.id}/recipes/${recipe.id}`;
  const ruled = slots.filter(({ rule, reason }) => rule !== undefined || reason !== undefined);
  return (
    <Section title="For other shelves">
      {ruled.length === 0 ? (
        <p className="soft">
          No rules yet. With them somebody whose bottles differ can fill it from their own shelf.
        </p>
      ) : (
        <ol className="recipe-lines">
          {slots.map((slot, n) => (
            // oxlint-disable-next-line react/no-array-index-key -- lines keep their places
            <li key={n}>
              <p>
                {printParts(slot.parts)} {cellar.stocks.get(slotKey(slot.of))?.label ?? openName(slot)}
              </p>
              {slot.rule !== undefined && <p className="recipe-rule">or: {slot.rule}</p>}
              {slot.reason !== undefined && <p className="soft small">Why: {slot.reason}</p>}
            </li>
          ))}
        </ol>
      )}
      {lineage?.[0] !== undefined && <p className="soft">It came from {lineage[0].name}.</p>}
      <div className="form-actions">
        <LinkButton to={`${here}/rules`}>
          {ruled.length === 0 ? "Give it rules" : "Change the rules"}
        </LinkButton>
        {!isOpen(recipe) && <LinkButton to={`${here}/filling`}>Fill it anew</LinkButton>}
        <LinkButton to={`${here}/results`}>In other kitchens</LinkButton>
      </div>
    </Section>
  );
}

function Versions({ recipe, cellar }: { readonly recipe: Recipe; readonly cellar: Cellar }) {
  const household = useHousehold();
  const asked = useAskAll("listRecipeVersions", { at: { household: household.id, recipe: recipe.id } });
  return (
    <Section
      title="History"
      action={<Link to={`/h/${household.id}/recipes/${recipe.id}/tree`}>Family tree</Link>}
    >
      {asked.state === "busy" && <Busy what="its history" />}
      {asked.state === "broken" && <Broken asked={asked} title="Its history could not be fetched" />}
      {asked.state === "here" && (
        <ol className="versions" reversed>
          {asked.answer.map((version) => (
            <li key={version.number}>
              <p>
                <span className="name">Version {version.number}</span>{" "}
                <span className="soft small">{printDay(version.createdAt)}</span>
              </p>
              <LiquidColumn
                size="list"
                title={columnTitle(`Version ${version.number}`, version.slots, cellar)}
                segments={segmentsOf(version.slots, cellar)}
              />
              {version.note !== "" && <p className="soft small">{version.note}</p>}
            </li>
          ))}
        </ol>
      )}
    </Section>
  );
}
