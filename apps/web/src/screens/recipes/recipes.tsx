import type { Recipe } from "@partsproof/house/protocol";
import { useAskAll } from "../../api.ts";
import { abvDigits, printAge, printMoney } from "../../figures/index.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { reckonRecipe, whiskeyLabel } from "../../mixing/index.ts";
import { Broken, Busy, Empty, LinkButton, LiquidColumn, Page } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { columnTitle, segmentsOf } from "./segments.ts";
import "./recipes.css";

/** Every recipe, drawn as its column. */
export default function Recipes() {
  const household = useHousehold();
  const recipes = useAskAll("listRecipes", { at: { household: household.id } });
  const cellar = useCellar();
  const write = (
    <LinkButton kind="main" to={`/h/${household.id}/recipes/new`}>
      Write a recipe
    </LinkButton>
  );
  const broken = recipes.state === "broken" ? recipes : cellar.state === "broken" ? cellar : null;
  return (
    <Page
      title="Recipes"
      wide
      actions={
        <>
          <LinkButton to={`/h/${household.id}/recipes/closest`}>What comes closest</LinkButton>
          <LinkButton to={`/h/${household.id}/trials`}>Bench trials</LinkButton>
          <LinkButton to={`/h/${household.id}/recipes/tree`}>Family tree</LinkButton>
          <LinkButton to={`/h/${household.id}/take-in`}>Take in</LinkButton>
          {write}
        </>
      }
    >
      {broken !== null && <Broken asked={broken} title="The recipes could not be fetched" />}
      {broken === null && (recipes.state === "busy" || cellar.state === "busy") && (
        <Busy what="the recipes" />
      )}
      {recipes.state === "here" && cellar.state === "here" && recipes.answer.length === 0 && (
        <Empty title="No recipe yet" action={write}>
          <p>Two parts of this with one part of that: start there and see what it comes to.</p>
        </Empty>
      )}
      {recipes.state === "here" && cellar.state === "here" && (
        <ul className="recipes">
          {recipes.answer.map((recipe) => (
            <Card key={recipe.id} recipe={recipe} cellar={cellar.answer} />
          ))}
        </ul>
      )}
    </Page>
  );
}

function Card({ recipe, cellar }: { readonly recipe: Recipe; readonly cellar: Cellar }) {
  const household = useHousehold();
  const { slots } = recipe.latest;
  const reckoned = reckonRecipe(recipe.latest, 700, cellar.stocks, cellar.facts);
  const target = cellar.whiskeys.find(({ id }) => id === recipe.targetWhiskeyId);
  return (
    <li className="recipes-card">
      <h2>
        <Link to={`/h/${household.id}/recipes/${recipe.id}`}>{recipe.name}</Link>
      </h2>
      <p className="soft small">
        Version {recipe.latest.number}
        {target !== undefined && `, towards ${whiskeyLabel(target)}`}
      </p>
      <LiquidColumn
        size="list"
        title={columnTitle(recipe.name, slots, cellar)}
        segments={segmentsOf(slots, cellar)}
      />
      <p className="recipes-numbers">
        {reckoned.ok && reckoned.result.abv20 !== null ? (
          <>
            <span>
              <b>{abvDigits(reckoned.result.abv20)}</b> % vol
            </span>
            <span>{printAge(reckoned.result.youngestAge.years)}</span>
            {reckoned.result.cost.perLitre !== null && (
              <span>
                {printMoney(reckoned.result.cost.perLitre * 0.7, household.currency)} for 700&nbsp;mL
              </span>
            )}
          </>
        ) : (
          <span className="soft">
            {slots.some(({ of }) => of.kind === "open")
              ? "open: to be filled from your shelf"
              : "not reckoned: a part is not known any more"}
          </span>
        )}
      </p>
    </li>
  );
}
