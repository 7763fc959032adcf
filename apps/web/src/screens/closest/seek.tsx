import type { Problem } from "@partsproof/core/blending";
import { useCallback, useEffect, useMemo } from "react";
import type { Cellar } from "../../cellar/index.ts";
import {
  type Aim,
  FIRST_RULES,
  NO_AIM,
  problemOf,
  readRules,
  type Rules,
  type Shelf,
  useGently,
  useSearch,
} from "../../closest/index.ts";
import { whiskeyLabel } from "../../mixing/index.ts";
import { Form } from "../../parts/index.ts";
import { usePlace } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { AimField } from "./aim-field.tsx";
import { aimAt } from "./aim-at.ts";
import { BesidesField } from "./besides-field.tsx";
import { Results } from "./results.tsx";
import { RulesField } from "./rules-field.tsx";
import { WeightsField } from "./weights-field.tsx";
import "./closest.css";

interface Sought {
  readonly aim: Aim;
  readonly rules: Rules;
}

/** By household: what was sought last, for as long as the page is open. */
const remembered = new Map<string, Sought>();

/** Everything that can be asked on one side, what comes of it on the other. */
export function Seek({ shelf, cellar }: { readonly shelf: Shelf; readonly cellar: Cellar }) {
  const { id: household, currency } = useHousehold();
  const { query } = usePlace();
  const { state, set, setGently } = useGently<Sought>(() => begin(household, shelf, query.get("like")));
  const { aim, rules } = state;
  useEffect(() => {
    remembered.set(household, state);
  }, [household, state]);
  const setAim = useCallback(
    (change: (aim: Aim) => Aim) => set((sought) => ({ ...sought, aim: change(sought.aim) })),
    [set],
  );
  const moveAim = useCallback(
    (change: (aim: Aim) => Aim) => setGently((sought) => ({ ...sought, aim: change(sought.aim) })),
    [setGently],
  );
  const setRules = useCallback(
    (change: (rules: Rules) => Rules) => set((sought) => ({ ...sought, rules: change(sought.rules) })),
    [set],
  );
  const names = useMemo(
    () => new Map(cellar.whiskeys.map((whiskey) => [whiskey.id, whiskeyLabel(whiskey)])),
    [cellar.whiskeys],
  );
  const nameOf = useCallback((id: string): string => names.get(id) ?? "a whiskey", [names]);
  const read = useMemo(
    () => readRules(rules, { targetId: aim.from, onShelf: shelf.onShelf, currency }),
    [rules, aim.from, shelf.onShelf, currency],
  );
  const problem = useMemo<Problem | null>(
    () => (read.ok ? problemOf(shelf, aim, rules, read.value) : null),
    [read, shelf, aim, rules],
  );
  const seeking = useSearch(problem);
  return (
    <div className="closest">
      <Form say={{ issues: read.ok ? [] : read.issues, tries: 0 }} className="closest-ask" quiet>
        <AimField
          from={aim.from}
          profile={aim.profile}
          onChange={setAim}
          onMove={moveAim}
          shelf={shelf}
          nameOf={nameOf}
        />
        <WeightsField
          profile={aim.profile}
          weights={aim.weights}
          onMove={moveAim}
          attributes={shelf.attributes}
        />
        <RulesField
          rules={rules}
          onChange={setRules}
          cellar={cellar}
          shelf={shelf}
          targetId={aim.from}
          nameOf={nameOf}
        />
        <BesidesField rules={rules} onChange={setRules} currency={currency} />
      </Form>
      <Results
        seeking={seeking}
        problem={problem}
        unreadable={!read.ok}
        aim={aim}
        rules={rules}
        onRules={setRules}
        shelf={shelf}
        cellar={cellar}
        nameOf={nameOf}
      />
    </div>
  );
}

function begin(household: string, shelf: Shelf, like: string | null): Sought {
  const before = remembered.get(household);
  if (like !== null && shelf.tastes.has(like))
    return { aim: aimAt(shelf, like), rules: before?.rules ?? FIRST_RULES };
  return before ?? { aim: NO_AIM, rules: FIRST_RULES };
}
