import type { Problem } from "@partsproof/core/blending";
import { useCallback, useEffect, useMemo, useRef } from "react";
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

/** What is asked is drawn once a control has stood still so long; it is sought at once. */
const RESTS_MS = 220;

/** Once the first answer stands: so often what a moving control will ask and draw is gone through, and so long apart. */
const REHEARSALS = 3;
const REHEARSE_MS = 250;

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
  const { state, set, setGently } = useGently<Sought>(
    () => begin(household, shelf, query.get("like")),
    RESTS_MS,
  );
  const { aim, rules } = state;
  useEffect(() => {
    remembered.set(household, state);
  }, [household, state]);
  const asked = useMemo(() => askedOf(shelf, currency), [shelf, currency]);
  const { read, problem } = asked(state);
  const seeking = useSearch(problem);
  const { seek, rehearse } = seeking;
  const proven = seeking.state === "done" && seeking.listed;
  const rehearsed = useRef(0);
  useEffect(() => {
    if (!proven || rehearsed.current === REHEARSALS) return undefined;
    const timer = setInterval(() => {
      const again = asked({ ...state }).problem;
      if (again !== null) rehearse(again);
      rehearsed.current += 1;
      if (rehearsed.current === REHEARSALS) clearInterval(timer);
    }, REHEARSE_MS);
    return () => clearInterval(timer);
  }, [proven, state, asked, rehearse]);
  const setAim = useCallback(
    (change: (aim: Aim) => Aim) => set((sought) => ({ ...sought, aim: change(sought.aim) })),
    [set],
  );
  const moveAim = useCallback(
    (change: (aim: Aim) => Aim) => {
      seek(asked(setGently((sought) => ({ ...sought, aim: change(sought.aim) }))).problem);
    },
    [setGently, seek, asked],
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
        <BesidesField rules={rules} onChange={setRules} currency={currency} laws={shelf.laws} />
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

interface Asked {
  readonly read: ReturnType<typeof readRules>;
  /** null while nothing counts, or a rule cannot be read. */
  readonly problem: Problem | null;
}

/** What is sought as core asks it: one and the same for one and the same, as a search is told apart by it. */
function askedOf(shelf: Shelf, currency: string): (sought: Sought) => Asked {
  const before = new WeakMap<Sought, Asked>();
  let last: { readonly rules: Rules; readonly from: string; readonly read: Asked["read"] } | null = null;
  return (sought) => {
    const same = before.get(sought);
    if (same !== undefined) return same;
    const { aim, rules } = sought;
    if (last?.rules !== rules || last.from !== aim.from)
      last = {
        rules,
        from: aim.from,
        read: readRules(rules, { targetId: aim.from, onShelf: shelf.onShelf, currency }),
      };
    const { read } = last;
    const asked = { read, problem: read.ok ? problemOf(shelf, aim, rules, read.value) : null };
    before.set(sought, asked);
    return asked;
  };
}

function begin(household: string, shelf: Shelf, like: string | null): Sought {
  const before = remembered.get(household);
  if (like !== null && shelf.tastes.has(like))
    return { aim: aimAt(shelf, like), rules: before?.rules ?? FIRST_RULES };
  return before ?? { aim: NO_AIM, rules: FIRST_RULES };
}
