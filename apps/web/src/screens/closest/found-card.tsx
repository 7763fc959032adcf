import type { Whiskey } from "@partsproof/house/protocol";
import { memo } from "react";
import { printDistance, type Shown } from "../../closest/index.ts";
import { abvDigits, printAge, printMoney } from "../../figures/index.ts";
import { Button, LinkButton, LiquidColumn, NumberHero, Steady } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { Later, STEP_MS } from "./later.tsx";
import { recipeAddress } from "./recipe-address.ts";

export interface FoundCardProps {
  readonly recipe: Shown;
  /** 0 is the closest. */
  readonly place: number;
  /** The whiskey sought; "" where none is. */
  readonly target: string;
  readonly nameOf: (id: string) => string;
  readonly whiskeys: readonly Whiskey[];
  /** Whether it is compared with the closest. */
  readonly beside?: boolean;
  /** Not for the closest itself. */
  readonly onBeside?: (key: string | null) => void;
}

/** One recipe found: the column, how far off, and what it is. */
export const FoundCard = memo(function FoundCard({
  recipe,
  place,
  target,
  nameOf,
  whiskeys,
  beside = false,
  onBeside,
}: FoundCardProps) {
  const household = useHousehold();
  const { parts, distance } = recipe;
  return (
    <article className={place === 0 ? "found found-first" : "found"} data-found={recipe.key}>
      <div>
        <Column recipe={recipe} size={place === 0 ? "card" : "list"} nameOf={nameOf} whiskeys={whiskeys} />
      </div>
      <div className="found-numbers">
        <NumberHero
          size={place === 0 ? "hero" : "plain"}
          label={place === 0 ? "Off by" : `Off by, number ${place + 1}`}
          value={printDistance(distance)}
          unit="of 10"
          steady
        />
        <Later after={STEP_MS}>
          <Facts recipe={recipe} />
        </Later>
      </div>
      <div className="form-actions">
        <LinkButton
          kind={place === 0 ? "main" : "plain"}
          to={recipeAddress(household.id, parts, target)}
          aria-label={place === 0 ? "Open as a recipe" : `Open as a recipe: number ${place + 1}`}
        >
          Open as a recipe
        </LinkButton>
        {onBeside !== undefined && (
          <Button
            aria-pressed={beside}
            aria-label={`${beside ? "Compared" : "Compare"}: number ${place + 1} with the closest`}
            onClick={() => onBeside(beside ? null : recipe.key)}
          >
            {beside ? "Compared" : "Compare"}
          </Button>
        )}
      </div>
    </article>
  );
});

const NO_AGE = "no age stated";

/** What else is said of it lays out the page around it: in a frame after the one that shows what it is. */
const Facts = memo(function Facts({ recipe }: { readonly recipe: Shown }) {
  const { currency } = useHousehold();
  const { abv20, expected, pricePerLitre, youngestYears } = recipe;
  return (
    <>
      <p className="number-note steady-line">
        <Steady text={printDistance(expected)} />
        <span>to expect, as unsure as the notes are</span>
      </p>
      <p className="found-facts">
        <span className="steady-line">
          <Steady text={abvDigits(abv20)} className="found-fact" /> % vol
        </span>
        <span className="steady-line">
          {pricePerLitre === null ? (
            "price not known"
          ) : (
            <>
              <Steady text={printMoney(pricePerLitre * 0.7, currency)} letters={7} /> for 700&nbsp;mL
            </>
          )}
        </span>
        <Steady text={youngestYears === null ? NO_AGE : printAge(youngestYears)} letters={NO_AGE.length} />
      </p>
    </>
  );
});

interface ColumnProps extends Pick<FoundCardProps, "nameOf" | "whiskeys"> {
  readonly recipe: Shown;
  readonly size: "list" | "card";
}

/** Drawn anew only when the parts change: while a weight moves, mostly only the numbers do. */
const Column = memo(
  function Column({ recipe, size, nameOf, whiskeys }: ColumnProps) {
    const segments = recipe.parts.map(({ id, parts }) => {
      const whiskey = whiskeys.find((one) => one.id === id);
      return {
        label: whiskey === undefined ? nameOf(id) : [whiskey.name, whiskey.release].filter(Boolean).join(" "),
        amount: parts,
        amountText: String(parts),
        ...(whiskey === undefined ? {} : { sub: `${whiskey.maker} · ${printAge(whiskey.ageYears)}` }),
      };
    });
    const title = recipe.parts
      .map(({ id, parts }) => `${parts} ${parts === 1 ? "part" : "parts"} ${nameOf(id)}`)
      .join(", ");
    return <LiquidColumn size={size} title={title} segments={segments} />;
  },
  (a, b) =>
    a.recipe.key === b.recipe.key && a.size === b.size && a.whiskeys === b.whiskeys && a.nameOf === b.nameOf,
);
