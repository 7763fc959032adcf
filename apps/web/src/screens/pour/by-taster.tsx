import type { PourList } from "@partsproof/house/protocol";
import { inSets, type ListedGlass, tickOf } from "./listed-glass.ts";
import type { Ticks } from "./use-ticks.ts";

interface PourLineProps {
  readonly taster: string;
  readonly glass: ListedGlass;
  readonly ticks: Ticks;
  readonly ml: number;
}

function PourLine({ taster, glass, ticks, ml }: PourLineProps) {
  const key = tickOf(taster, glass);
  return (
    <li>
      <label className="pourline">
        <input
          type="checkbox"
          checked={ticks.has(key)}
          onChange={(event) => ticks.set(key, event.target.checked)}
        />
        <span className="pourline-place">{glass.position === 0 ? "" : glass.position}</span>
        <span className="pourline-code">{glass.code}</span>
        <span className="pourline-what">
          <span className="unseen">: </span>
          {glass.label}
          <span className="pourline-ml"> {ml} mL</span>
        </span>
      </label>
    </li>
  );
}

/** Each taster's glasses in serving order, set by set where there are sets: number, bottle, and a tick once it is poured. */
export function ByTaster({ list, ticks }: { readonly list: PourList; readonly ticks: Ticks }) {
  return (
    <div className="tasters">
      {list.tasters.map(({ taster, glasses }) => (
        <fieldset key={taster} className="tasters-one">
          <legend>{taster}</legend>
          {inSets(glasses).map(({ set, glasses: those }) => (
            <ol key={set ?? "row"} aria-label={set === null ? undefined : `Set ${set}`}>
              {set !== null && (
                <li className="tasters-set" aria-hidden="true">
                  Set {set}
                </li>
              )}
              {those.map((glass) => (
                <PourLine key={tickOf(taster, glass)} {...{ taster, glass, ticks }} ml={list.pourMl} />
              ))}
            </ol>
          ))}
        </fieldset>
      ))}
    </div>
  );
}
