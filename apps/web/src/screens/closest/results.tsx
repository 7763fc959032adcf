import type { Problem } from "@partsproof/core/blending";
import { useEffect, useState } from "react";
import type { Cellar } from "../../cellar/index.ts";
import {
  type Aim,
  INTENSITY_SD,
  printDistance,
  proofWords,
  type Rules,
  type Seeking,
  type Shelf,
  type Shown,
  tastedTogetherAt,
} from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";
import { Button, LinkButton } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { AgainstAim } from "./against-aim.tsx";
import { FoundCard } from "./found-card.tsx";
import { Impossible } from "./impossible.tsx";
import { Wonder } from "./wonder.tsx";

export interface ResultsProps {
  readonly seeking: Seeking;
  readonly problem: Problem | null;
  /** A rule cannot be read: what is shown is from before. */
  readonly unreadable: boolean;
  readonly aim: Aim;
  readonly rules: Rules;
  readonly onRules: (change: (rules: Rules) => Rules) => void;
  readonly shelf: Shelf;
  readonly cellar: Cellar;
  readonly nameOf: (id: string) => string;
}

const FEW = 5;

/** What comes closest, how sure that is, and what else could be asked of it. */
export function Results(props: ResultsProps) {
  const { seeking, problem, unreadable, aim, rules, shelf, nameOf } = props;
  const { id: household } = useHousehold();
  const { found } = seeking;
  const [all, setAll] = useState(false);
  const [beside, setBeside] = useState<string | null>(null);
  const recipes = problem === null && !unreadable ? [] : (found?.recipes ?? []);
  const [best] = recipes;
  const other = recipes.find(({ key }) => key === beside && key !== best?.key);
  const besides = Object.values(rules.besides).some((text) => text.trim() !== "");
  const words = unreadable ? "Waiting for a rule that can be read." : proofWords(seeking, besides);
  const card = (recipe: Shown, place: number) => (
    <FoundCard
      key={recipe.key}
      recipe={recipe}
      place={place}
      aim={aim}
      nameOf={nameOf}
      whiskeys={props.cellar.whiskeys}
      beside={recipe.key === other?.key}
      onBeside={setBeside}
    />
  );
  return (
    <>
      <section className="closest-best" aria-label="What comes closest">
        <div className="closest-proof">
          <Proof words={words} />
          {seeking.state === "searching" && found !== null && (
            <Button onClick={seeking.stop}>Stop looking</Button>
          )}
          {seeking.state === "stopped" && <Button onClick={seeking.goOn}>Go on looking</Button>}
        </div>
        {found !== null && problem !== null && !found.done && seeking.current && (
          <p className="soft small">
            {found.nodes.toLocaleString("en-GB")} possibilities looked into so far.
          </p>
        )}
        {best !== undefined && card(best, 0)}
        {best !== undefined && (
          <AgainstAim aim={aim} best={best} other={other} attributes={shelf.attributes} />
        )}
        {found !== null && best !== undefined && found.alike > 1 && (
          <p className="closest-alike">
            You can’t tell the first {found.alike} apart on what you know: try them in one flight.{" "}
            <LinkButton to={`/h/${household}/flights/new`}>Set a flight</LinkButton>
          </p>
        )}
        {best !== undefined && (
          <Footing shelf={shelf} problem={problem} nameOf={nameOf} unknown={found?.unknown} />
        )}
      </section>
      <div className="closest-rest">
        {problem !== null && seeking.state === "done" && seeking.current && best === undefined && (
          <Impossible problem={problem} rules={rules} onRules={props.onRules} nameOf={nameOf} />
        )}
        {recipes.length > 1 && (
          <section className="section">
            <h2>The next closest</h2>
            <ul className="closest-found" aria-label="The next closest">
              {recipes.slice(1, all ? undefined : FEW).map((recipe, i) => (
                <li key={recipe.key}>{card(recipe, i + 1)}</li>
              ))}
            </ul>
            {recipes.length > FEW && (
              <Button onClick={() => setAll(!all)}>{all ? "Fewer" : `All ${recipes.length}`}</Button>
            )}
          </section>
        )}
        {problem !== null && seeking.state === "done" && best !== undefined && (
          <Wonder problem={problem} shelf={shelf} rules={rules} onRules={props.onRules} nameOf={nameOf} />
        )}
      </div>
      {best !== undefined && (
        <p className="live-strip closest-strip" aria-hidden="true">
          <span>
            <b>{printDistance(best.distance)}</b> off
          </span>
          <span className="small">
            {best.parts.map(({ id, parts }) => `${parts} ${shortName(nameOf(id))}`).join(" : ")}
          </span>
        </p>
      )}
    </>
  );
}

const shortName = (name: string): string => name.split(" ").slice(-2).join(" ");

/** Said aloud once it has stood a while, not at every step of a search. */
function Proof({ words }: { readonly words: string }) {
  const [said, setSaid] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => setSaid(words), 700);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <>
      <p className="closest-words" aria-hidden="true">
        {words}
      </p>
      <p className="unseen" role="status">
        {said}
      </p>
    </>
  );
}

interface FootingProps {
  readonly shelf: Shelf;
  readonly problem: Problem | null;
  readonly nameOf: (id: string) => string;
  readonly unknown: readonly { readonly id: string; readonly attribute: string }[] | undefined;
}

/** On what the distances rest. */
function Footing({ shelf, problem, nameOf, unknown = [] }: FootingProps) {
  const at = tastedTogetherAt(
    shelf,
    shelf.whiskeys.map(({ id }) => id),
  );
  return (
    <details className="closest-more">
      <summary>What the distance is</summary>
      <p className="small">
        The root of the mean squared difference over what counts, by its weight, on the scale of 0 to 10: 0 is
        the same. A blend is taken to taste as the mean of its parts
        {problem?.shares === "alcohol" && at !== null
          ? `, all brought to the ${at} % vol they were tasted at.`
          : ", by what is poured; the profiles were noted at different strengths or it is not known at which, and no water is reckoned in."}{" "}
        What was noted is taken to be off by about {INTENSITY_SD} (common practice, no source); what nobody
        has said is taken as 5, give or take 2.9.
      </p>
      {unknown.length > 0 && (
        <p className="small">
          Not said yet: {unknown.length} {unknown.length === 1 ? "intensity" : "intensities"}, of{" "}
          {listed([...new Set(unknown.map(({ id }) => id))].map(nameOf))}.
        </p>
      )}
      {shelf.untasted.length > 0 && (
        <p className="small">Without a profile, and left out: {listed(shelf.untasted.map(nameOf))}.</p>
      )}
    </details>
  );
}
