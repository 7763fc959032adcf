import type { PourList } from "@partsproof/house/protocol";
import { mlDigits } from "../../figures/index.ts";
import { intoWords, tickOf } from "./listed-glass.ts";
import type { Ticks } from "./use-ticks.ts";

/** Each bottle with all that it gives, and into which glasses. */
export function ByBottle({ list, ticks }: { readonly list: PourList; readonly ticks: Ticks }) {
  return (
    <ul className="bottles">
      {list.totals.map((total) => {
        const glasses = list.tasters.flatMap(({ taster, glasses }) =>
          glasses
            .filter(({ vesselId }) => vesselId === total.vesselId)
            .map((glass) => ({ key: tickOf(taster, glass), said: intoWords(taster, glass) })),
        );
        const done = glasses.filter(({ key }) => ticks.has(key)).length;
        return (
          <li key={total.vesselId}>
            <p className="name">{total.label}</p>
            <p className="bottles-ml">
              <span>{mlDigits(total.ml)}</span> mL
            </p>
            <p className="bottles-into">
              into {glasses.map(({ said }) => said).join(", ")}
              {done > 0 && (
                <span className="no-paper">
                  {" "}
                  · {done === glasses.length ? "all poured" : `${done} of ${glasses.length} poured`}
                </span>
              )}
            </p>
          </li>
        );
      })}
    </ul>
  );
}
