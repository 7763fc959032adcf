import type { RecipeFile, Shared } from "@partsproof/house/protocol";
import { abvDigits, printMl } from "../figures/index.ts";
import { useFit } from "./use-fit.ts";
import "./recipe-card.css";

/** A6 (105 by 148 mm) and an index card (5 by 3 in). */
export type CardSize = "a6" | "3x5";

interface Props {
  readonly size: CardSize;
  readonly recipe: RecipeFile;
  readonly amounts: Shared["amounts"];
  /** The square code of its link as SVG, where there is room for one. */
  readonly square: string | null;
}

/** The share of the column that a number fits into. */
const LEAST = 0.12;

/** A recipe on a card: parts, what may stand for each, amounts for one bottle. */
export function RecipeCard({ size, recipe, amounts, square }: Props) {
  const { name, slots, waterTo, restDays, oak } = recipe;
  const whole = slots.reduce((sum, { parts }) => sum + parts, 0);
  const above = (n: number): number => slots.slice(0, n).reduce((sum, { parts }) => sum + parts, 0);
  const paper = useFit(`${size} ${JSON.stringify(recipe)} ${JSON.stringify(amounts)} ${square === null}`);
  return (
    <article ref={paper} className={`recipe-card recipe-card-${size}`} aria-label={`Card: ${name}`}>
      <h2>{name}</h2>
      <p className="recipe-card-ratio">
        {slots.map(({ parts }) => parts).join(" : ")}
        {amounts.abv !== null && <span> · {abvDigits(amounts.abv)} % vol</span>}
      </p>
      <div className="recipe-card-body">
        <div className="recipe-card-column" aria-hidden="true">
          <svg viewBox={`0 0 1 ${whole}`} preserveAspectRatio="none">
            {slots.map(({ parts }, n) => (
              <rect
                // oxlint-disable-next-line react/no-array-index-key -- a card never changes its lines
                key={n}
                x="0"
                y={above(n)}
                width="1"
                height={parts}
                fill={["#fff", "#bbb", "#e6e6e6", "#999"][n % 4]}
              />
            ))}
          </svg>
          {slots.map(({ parts }, n) => (
            // oxlint-disable-next-line react/no-array-index-key -- a card never changes its lines
            <b key={n} style={{ top: `${(100 * (above(n) + parts / 2)) / whole}%` }}>
              {parts / whole < LEAST ? "" : parts}
            </b>
          ))}
        </div>
        <ol>
          {slots.map(({ parts, whiskey, rule }, n) => (
            // oxlint-disable-next-line react/no-array-index-key -- a card never changes its lines
            <li key={n}>
              <b>{parts}</b>
              <span>
                {whiskey === undefined
                  ? "any that keeps the rule"
                  : [whiskey.maker, whiskey.name, whiskey.release]
                      .filter((text) => (text ?? "") !== "")
                      .join(" ")}
                {whiskey?.abv !== undefined && `, ${abvDigits(whiskey.abv)} %`}
                {rule !== undefined && <small>or any: {rule}</small>}
              </span>
              <span className="recipe-card-ml">{printMl(amounts.slots[n]?.ml ?? 0)}</span>
            </li>
          ))}
          {amounts.water !== null && (
            <li>
              <b>+</b>
              <span>water{waterTo !== undefined && `, to ${abvDigits(waterTo)} % vol`}</span>
              <span className="recipe-card-ml">{printMl(amounts.water.ml)}</span>
            </li>
          )}
        </ol>
      </div>
      <p>
        For {printMl(amounts.bottleMl)}
        {amounts.without === null ? " at 20 °C" : ", by parts alone"}.{" "}
        {restDays === undefined || restDays === 0 ? "No rest." : `Rest ${restDays} days.`}
        {oak !== undefined && oak !== "" && ` Oak: ${oak}.`}
      </p>
      {size === "a6" && square !== null && (
        <img
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(square)}`}
          alt="Square code: the whole recipe as a link"
        />
      )}
      <p className="recipe-card-over">
        The lines' rules do not fit here: they stand in the recipe's file and link.
      </p>
      <p className="recipe-card-foot">
        Blended at home, not for sale. Strong spirit: away from flames and children.
        {oak !== undefined && oak !== "" && " Oak: untreated and food-grade only."}
      </p>
    </article>
  );
}
