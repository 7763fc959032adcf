import type { Problem, Traded } from "@partsproof/core/blending";
import { useCallback, useMemo } from "react";
import {
  type Because,
  type Rules,
  type Shelf,
  TOP,
  useWhy,
  type Why,
  type Wish,
} from "../../closest/index.ts";
import { Busy, Button } from "../../parts/index.ts";
import { Buy } from "./buy.tsx";
import { Prices } from "./prices.tsx";
import { TradedPoints } from "./traded-points.tsx";

export interface WonderProps {
  readonly problem: Problem;
  readonly shelf: Shelf;
  readonly rules: Rules;
  readonly onRules: (change: (rules: Rules) => Rules) => void;
  readonly nameOf: (id: string) => string;
}

const TRADES: readonly (readonly [Traded, string])[] = [
  ["price", "For less money"],
  ["bottles", "With fewer bottles"],
  ["parts", "With fewer parts"],
  ["age", "With older whiskeys"],
];

/** What else can be asked of a search: slow questions, each begun by a tap and ended by another; while it stands, it is asked of each new search. */
export function Wonder({ problem, shelf, rules, onRules, nameOf }: WonderProps) {
  const candidates = useMemo(
    () =>
      shelf.whiskeys
        .filter((one) => !shelf.onShelf.includes(one.id) && one.gone !== true)
        .map((one) => ({ ...one, availableMl: null })),
    [shelf],
  );
  const about = useCallback(
    (asked: Wish): Why =>
      asked.kind === "buy"
        ? { kind: "buy", problem: withCandidates(problem, candidates), candidates, top: TOP }
        : { ...asked, problem },
    [problem, candidates],
  );
  const { wish, because, state, ask, end } = useWhy(about);
  const button = (label: string, asked: Wish) => {
    const stands = sameWish(wish, asked);
    return (
      <Button aria-pressed={stands} onClick={() => (stands ? end() : ask(asked))}>
        {label}
      </Button>
    );
  };
  return (
    <section className="section wonder">
      <h2>And if …</h2>
      <div className="form-actions">
        {rules.on.length > 0 && button("What does each rule cost?", { kind: "prices" })}
        {TRADES.map(([traded, label]) => (
          <span key={traded}>{button(label, { kind: "trade", traded })}</span>
        ))}
        {button("What to buy, what is never needed", { kind: "buy" })}
      </div>
      {state === "working" && (
        <div className="wonder-busy">
          <Busy what="one search after the other" />
          <Button onClick={end}>Stop</Button>
        </div>
      )}
      {state === "broken" && <p>That could not be found out in this browser.</p>}
      {because !== null && (
        <Answer
          because={because}
          rules={rules}
          onRules={onRules}
          nameOf={nameOf}
          candidates={candidates.length}
        />
      )}
    </section>
  );
}

interface AnswerProps extends Pick<WonderProps, "rules" | "onRules" | "nameOf"> {
  readonly because: Because;
  readonly candidates: number;
}

function Answer({ because, rules, onRules, nameOf, candidates }: AnswerProps) {
  if (because.kind === "prices")
    return <Prices prices={because.prices} rules={rules} onRules={onRules} nameOf={nameOf} />;
  if (because.kind === "trade")
    return <TradedPoints traded={because.traded} tradeOff={because.tradeOff} nameOf={nameOf} />;
  if (because.kind === "buy") return <Buy answer={because} candidates={candidates} nameOf={nameOf} />;
  return null;
}

const sameWish = (wish: Wish | null, asked: Wish): boolean =>
  wish !== null &&
  wish.kind === asked.kind &&
  (wish.kind !== "trade" || (asked.kind === "trade" && wish.traded === asked.traded));

/** The search without the candidates on the shelf's side, and rules that let a candidate in. */
function withCandidates(problem: Problem, candidates: readonly { readonly id: string }[]): Problem {
  const ids = candidates.map(({ id }) => id);
  return {
    ...problem,
    whiskeys: problem.whiskeys.filter(({ id }) => !ids.includes(id)),
    rules: problem.rules.map((rule) =>
      rule.kind === "onlyWhiskeys" ? { ...rule, ids: [...rule.ids, ...ids] } : rule,
    ),
  };
}
