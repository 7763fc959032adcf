import type { PourList } from "@partsproof/house/protocol";
import type { Ticks } from "./use-ticks.ts";

/** Each taster's glasses in serving order: number, bottle, and a tick once it is poured. */
export function ByTaster({ list, ticks }: { readonly list: PourList; readonly ticks: Ticks }) {
  return (
    <div className="tasters">
      {list.tasters.map(({ taster, glasses }) => (
        <fieldset key={taster} className="tasters-one">
          <legend>{taster}</legend>
          <ol>
            {glasses.map(({ code, label, position }) => (
              <li key={code}>
                <label className="pourline">
                  <input
                    type="checkbox"
                    checked={ticks.has(code)}
                    onChange={(event) => ticks.set(code, event.target.checked)}
                  />
                  <span className="pourline-place">{position}</span>
                  <span className="pourline-code">{code}</span>
                  <span className="pourline-what">
                    <span className="unseen">: </span>
                    {label}
                    <span className="pourline-ml"> {list.pourMl} mL</span>
                  </span>
                </label>
              </li>
            ))}
          </ol>
        </fieldset>
      ))}
    </div>
  );
}
