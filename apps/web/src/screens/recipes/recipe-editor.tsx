import { parseStrength } from "@partsproof/core/quantity";
import { useDeferredValue } from "react";
import { abvDigits, printAge, printMoney } from "../../figures/index.ts";
import type { Cellar } from "../../cellar/index.ts";
import { printGive, reckonRecipe } from "../../mixing/index.ts";
import { useHousehold } from "../../session/index.ts";
import { Outcome } from "./outcome.tsx";
import { printRatio } from "./lowest-terms.ts";
import { RecipeFields } from "./recipe-fields.tsx";
import { asSlot, type ReadBody, type TypedRecipe } from "./recipe-typed.ts";

export interface RecipeEditorProps {
  readonly typed: TypedRecipe;
  readonly onChange: (typed: TypedRecipe) => void;
  readonly cellar: Cellar;
}

/** The fields with what they come to beside them, at once. Stands inside a Form. */
export function RecipeEditor({ typed, onChange, cellar }: RecipeEditorProps) {
  const late = useDeferredValue(typed);
  const shown = bodyShown(late);
  return (
    <div className="live">
      <div className="form">
        <RecipeFields typed={typed} onChange={onChange} cellar={cellar} />
      </div>
      <section className="live-out" aria-label="What it comes to">
        <p className="soft">{printRatio(typed.slots.map(({ parts }) => parts)) || "no parts yet"}</p>
        <Outcome name={typed.name || "New recipe"} body={shown} cellar={cellar} />
      </section>
      <Strip body={shown} cellar={cellar} />
    </div>
  );
}

/** The recipe as far as it can be drawn: a water that cannot be read yet is left out. */
function bodyShown(typed: TypedRecipe): Pick<ReadBody, "slots" | "waterTo"> {
  const water = parseStrength(typed.water);
  return {
    slots: typed.slots.map(asSlot),
    waterTo: water.ok ? water.value : null,
  };
}

interface StripProps {
  readonly body: Pick<ReadBody, "slots" | "waterTo">;
  readonly cellar: Cellar;
}

function Strip({ body, cellar }: StripProps) {
  const { currency } = useHousehold();
  const reckoned = reckonRecipe(body, 700, cellar.stocks, cellar.facts);
  if (!reckoned.ok || reckoned.result.abv20 === null) return null;
  const { perLitre } = reckoned.result.cost;
  return (
    <p className="live-strip" role="status">
      <span>
        <b>{abvDigits(reckoned.result.abv20)}</b> % vol{" "}
        <span className="small soft">{printGive(reckoned.give)}</span>
      </span>
      {perLitre !== null && (
        <span className="small">{printMoney(perLitre * 0.7, currency)} for 700&nbsp;mL</span>
      )}
      <span className="small">{printAge(reckoned.result.youngestAge.years)}</span>
    </p>
  );
}
