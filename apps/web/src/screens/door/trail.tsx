import { useState } from "react";
import { useAsk } from "../../api.ts";
import { printMoment } from "../../figures/index.ts";
import { Broken, Busy, Button } from "../../parts/index.ts";
import { sentence } from "../../parts/index.ts";

/** What happened at the door and to flights, newest first, a page at a time. */
export function Trail() {
  const [cursors, setCursors] = useState<readonly string[]>([]);
  const cursor = cursors.at(-1);
  const asked = useAsk("listTrail", { query: { limit: 30, ...(cursor === undefined ? {} : { cursor }) } });
  if (asked.state === "busy") return <Busy what="the trail" />;
  if (asked.state === "broken") return <Broken asked={asked} title="The trail could not be fetched" />;
  const { items, next } = asked.answer;
  return (
    <>
      {items.length === 0 && <p className="soft">Nothing yet.</p>}
      <ol className="trail">
        {items.map((line) => (
          <li key={line.id}>
            <span className="trail-when">{printMoment(line.at)}</span>
            <span>
              {sentence(line.what)}
              <span className="soft">
                {" "}
                {line.address === null ? "on this machine" : `from ${line.address}`}
              </span>
            </span>
          </li>
        ))}
      </ol>
      <div className="form-actions">
        {next !== null && <Button onClick={() => setCursors([...cursors, next])}>Earlier</Button>}
        {cursors.length > 0 && <Button onClick={() => setCursors(cursors.slice(0, -1))}>Later</Button>}
      </div>
      <p className="field-hint">Kept for 180 days. No secret and nothing that anybody typed is in it.</p>
    </>
  );
}
