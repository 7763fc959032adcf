import type { Problem } from "@partsproof/core/blending";
import { memo, useMemo, useState } from "react";
import type { Cellar } from "../../cellar/index.ts";
import {
  type Aim,
  printDistance,
  type Rules,
  type Seeking,
  type Shelf,
  useQuiet,
} from "../../closest/index.ts";
import { AgainstAim } from "./against-aim.tsx";
import { Alike } from "./alike.tsx";
import { Footing } from "./footing.tsx";
import { FoundCard } from "./found-card.tsx";
import { Impossible } from "./impossible.tsx";
import { Later, STEP_MS } from "./later.tsx";
import { MixesOtherwise } from "./mixes-otherwise.tsx";
import { NextClosest } from "./next-closest.tsx";
import { Proof } from "./proof.tsx";
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

/** All but the closest follows once a control has stood still so long. */
const QUIET_MS = 250;

/** What comes closest, how sure that is, and what else could be asked of it. */
export const Results = memo(function Results(props: ResultsProps) {
  const { seeking, problem, unreadable, aim, rules, shelf, cellar, nameOf } = props;
  const { told, found, current, listed, state } = seeking;
  const asked = problem !== null || unreadable;
  const now = useMemo(
    () => ({ found: asked ? found : null, problem, aim, listed }),
    [asked, found, problem, aim, listed],
  );
  const [beside, setBeside] = useState<string | null>(null);
  const quiet = useQuiet(now, told?.turn, QUIET_MS, listed || problem === null);
  const best = asked ? (told?.best ?? null) : null;
  const recipes = quiet.found?.recipes ?? [];
  const other = recipes.find(({ key }) => key === beside && key !== recipes[0]?.key);
  const counted = useMemo(() => Object.keys(quiet.problem?.target.profile ?? {}), [quiet.problem]);
  const impossible = quiet.listed && quiet.found?.done === true && recipes.length === 0;
  return (
    <>
      <section
        className="closest-best"
        aria-label="What comes closest"
        aria-busy={problem !== null && !current}
        data-state={state}
        data-turn={told?.turn}
      >
        <Proof
          seeking={seeking}
          unreadable={unreadable}
          besides={Object.values(rules.besides).some((text) => text.trim() !== "")}
        />
        {best !== null && (
          <FoundCard recipe={best} place={0} target={aim.from} nameOf={nameOf} whiskeys={cellar.whiskeys} />
        )}
        {best !== null && recipes[0] !== undefined && (
          <>
            <Later after={STEP_MS}>
              <AgainstAim aim={quiet.aim} best={recipes[0]} other={other} counted={counted} />
            </Later>
            {quiet.found !== null && <Alike found={quiet.found} />}
            <MixesOtherwise shelf={shelf} problem={quiet.problem} rules={rules} />
            <Footing shelf={shelf} problem={quiet.problem} nameOf={nameOf} found={quiet.found} />
          </>
        )}
      </section>
      <div className="closest-rest">
        {quiet.problem !== null && impossible && (
          <Impossible problem={quiet.problem} rules={rules} onRules={props.onRules} nameOf={nameOf} />
        )}
        {quiet.found !== null && recipes.length > 1 && (
          <NextClosest
            found={quiet.found}
            target={aim.from}
            nameOf={nameOf}
            whiskeys={cellar.whiskeys}
            beside={other?.key ?? null}
            onBeside={setBeside}
          />
        )}
        {quiet.problem !== null && recipes.length > 0 && (
          <Later after={2 * STEP_MS}>
            <Wonder
              problem={quiet.problem}
              shelf={shelf}
              rules={rules}
              onRules={props.onRules}
              nameOf={nameOf}
            />
          </Later>
        )}
      </div>
      {best !== null && (
        <div className="closest-strip" aria-hidden="true">
          <p>
            <span>
              <b>{printDistance(best.distance)}</b> off
            </span>
            <span className="small">
              {best.parts
                .map(
                  ({ id, parts }) => `${parts} ${cellar.whiskeys.find((one) => one.id === id)?.name ?? ""}`,
                )
                .join(" : ")}
            </span>
          </p>
        </div>
      )}
    </>
  );
});
