import type { Whiskey } from "@partsproof/house/protocol";
import { useEffect } from "react";
import { Button } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { whatChanged } from "./what-changed.ts";

export interface MeanwhileProps {
  readonly base: Whiskey;
  /** As it stands in the house now; null until looked at. */
  readonly theirs: Whiskey | null;
  readonly onLook: () => unknown;
  readonly onMine: (version: number) => unknown;
  readonly onTheirs: () => void;
}

/** Somebody else saved first: shows what they changed, and asks whose words stand. */
export function Meanwhile({ base, theirs, onLook, onMine, onTheirs }: MeanwhileProps) {
  const { currency } = useHousehold();
  useEffect(() => {
    void onLook();
    // Once, when it appears.
    // oxlint-disable-next-line react/exhaustive-deps
  }, []);
  if (theirs === null) return <p role="status">Looking at what changed meanwhile …</p>;
  const changes = whatChanged(base, theirs, currency);
  return (
    <section className="meanwhile" aria-label="Changed meanwhile">
      <h2>Changed meanwhile by someone else</h2>
      {changes.length === 0 ? (
        <p>It was saved again, with the same facts.</p>
      ) : (
        <ul>
          {changes.map(({ what, before, after }) => (
            <li key={what}>
              <strong>{what}</strong>: was {before}, now {after}
            </li>
          ))}
        </ul>
      )}
      <div className="form-actions">
        <Button kind="main" onClick={() => onMine(theirs.version)}>
          Save mine over it
        </Button>
        <Button onClick={onTheirs}>Keep theirs</Button>
      </div>
    </section>
  );
}
