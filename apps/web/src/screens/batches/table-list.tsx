import type { Batch } from "@partsproof/house/protocol";
import { useState } from "react";
import { Section, Tick } from "../../parts/index.ts";
import { keep, kept } from "../../session/index.ts";
import { tableSteps } from "./table-steps.ts";
import "./table-list.css";

/** What is left to do at the table, ticked off on this device. */
export function TableList({ batch, oak }: { readonly batch: Batch; readonly oak: string }) {
  const key = `table.${batch.id}`;
  const [done, setDone] = useState<ReadonlySet<string>>(() => new Set((kept(key) ?? "").split(" ")));
  const tick = (id: string, is: boolean): void => {
    const next = new Set(done);
    if (is) next.add(id);
    else next.delete(id);
    setDone(next);
    keep(key, [...next].join(" "));
  };
  return (
    <Section title="At the table">
      <ol className="table-steps">
        {tableSteps(batch, oak).map(({ id, says, mind }) => (
          <li key={id}>
            <Tick label={says} value={done.has(id)} onChange={(is) => tick(id, is)} />
            {mind !== undefined && <p className="soft small">{mind}</p>}
          </li>
        ))}
      </ol>
    </Section>
  );
}
