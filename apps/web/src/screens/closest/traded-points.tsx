import type { FoundRecipe, Traded, TradeOff } from "@partsproof/core/blending";
import { printDistance } from "../../closest/index.ts";
import { printAge, printMoney, printParts } from "../../figures/index.ts";
import { useHousehold } from "../../session/index.ts";
import { partsWords } from "./parts-words.ts";

export interface TradedPointsProps {
  readonly traded: Traded;
  readonly tradeOff: TradeOff;
  readonly nameOf: (id: string) => string;
}

/** Recipes of which nothing is both closer and better in the other respect, the closest first. */
export function TradedPoints({ traded, tradeOff, nameOf }: TradedPointsProps) {
  const { currency } = useHousehold();
  const value = (recipe: FoundRecipe): string => {
    if (traded === "price")
      return `${printMoney((recipe.pricePerLitre ?? 0) * 0.7, currency)} for 700\u00a0mL`;
    if (traded === "bottles")
      return recipe.parts.length === 1 ? "1 bottle" : `${recipe.parts.length} bottles`;
    if (traded === "parts") return printParts(recipe.parts.reduce((sum, { parts }) => sum + parts, 0));
    return printAge(recipe.youngestYears);
  };
  const { points, complete } = tradeOff;
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined)
    return (
      <p role="status">
        {traded === "price"
          ? "No recipe of whiskeys whose price is known keeps your rules."
          : "No recipe of whiskeys whose age is stated keeps your rules."}
      </p>
    );
  const furthest = Math.max(...points.map(({ distance }) => distance), 0.01);
  return (
    <div className="wonder-answer" role="status">
      <h3>
        {points.length === 1
          ? `The closest is also the best in this: ${value(first)}`
          : `From ${value(first)} to ${value(last)} costs ${printDistance(last.distance - first.distance)}`}
      </h3>
      <ol className="traded">
        {points.map((recipe) => (
          <li key={recipe.parts.map(({ id, parts }) => `${parts}${id}`).join()}>
            <span className="traded-value">{value(recipe)}</span>
            <svg className="traded-strip" aria-hidden="true">
              <line x1="3%" x2="97%" y1="50%" y2="50%" className="plot-grid" />
              <circle
                cx={`${3 + (94 * recipe.distance) / furthest}%`}
                cy="50%"
                r="6"
                className="dots-found"
              />
            </svg>
            <span className="traded-off">{printDistance(recipe.distance)} off</span>
            <span className="soft small traded-parts">{partsWords(recipe, nameOf)}</span>
          </li>
        ))}
      </ol>
      <p className="soft small">
        {complete
          ? "Nothing else is both closer and better in this: proven."
          : "These are right, and there are more beyond the last."}
      </p>
    </div>
  );
}
