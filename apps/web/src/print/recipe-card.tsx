import type { RecipeFile, Shared } from "@partsproof/house/protocol";
import { abvDigits, printMl } from "../figures/index.ts";
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

/** A recipe on a card: parts, what may stand for each, amounts for one bottle. */
export function RecipeCard({ size, recipe, amounts, square }: Props) {
  const { name, slots, waterTo, restDays, oak } = recipe;
  const whole = slots.reduce((sum, { parts }) => sum + parts, 0);
  const many = slots.length > (size === "a6" ? 7 : 4);
  return (
    <article
      className={`recipe-card recipe-card-${size}${many ? " recipe-card-many" : ""}`}
      aria-label={`Card: ${name}`}
    >
      <h2>{name}</h2>
      <p className="recipe-card-ratio">
        {slots.map(({ parts }) => parts).join(" : ")}
        {amounts.abv !== null && <span> · {abvDigits(amounts.abv)} % vol</span>}
      </p>
      <div className="recipe-card-body">
        <svg viewBox={`0 0 1 ${whole}`} preserveAspectRatio="none" aria-hidden="true">
          {slots.map(({ parts }, n) => (
            <rect
              // oxlint-disable-next-line react/no-array-index-key -- a card never changes its lines
              key={n}
              x="0"
              y={slots.slice(0, n).reduce((sum, slot) => sum + slot.parts, 0)}
              width="1"
              height={parts}
              fill={["#fff", "#bbb", "#777", "#ddd"][n % 4]}
            />
          ))}
        </svg>
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
      <p className="recipe-card-foot">
        Blended at home, not for sale. Strong spirit: away from flames and children.
        {oak !== undefined && oak !== "" && " Oak: untreated and food-grade only."}
      </p>
    </article>
  );
}
