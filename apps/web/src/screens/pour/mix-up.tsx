import { Button } from "../../parts/index.ts";

interface MixUpProps {
  /** How many sets there are; 0 where the glasses stand in one row. */
  readonly sets: number;
  /** The shuffles asked for, done or not; at least two. */
  readonly shuffles: readonly boolean[];
  readonly onChange: (shuffles: readonly boolean[]) => void;
}

/** How the glasses are mixed up so that whoever poured them loses track. */
export function MixUp({ sets, shuffles, onChange }: MixUpProps) {
  return (
    <>
      <p>
        {sets === 0
          ? "At least two shuffles. Slide the glasses about with your eyes off them, turn round, and slide them again."
          : `At least two shuffles of each tray by itself: slide its glasses about with your eyes off them, turn round, and slide them again.${sets > 1 ? " No glass leaves its tray. Then mix up the trays." : ""}`}{" "}
        If anybody is in the house, let them do it while you are out of the room.
      </p>
      <div className="alone-shuffles">
        {shuffles.map((done, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- the first, the second, …
          <label className="tick" key={i}>
            <input
              type="checkbox"
              checked={done}
              onChange={(event) =>
                onChange(shuffles.map((was, at) => (at === i ? event.target.checked : was)))
              }
            />
            <span>
              {["First", "Second", "Third", "Fourth"][i]} shuffle
              {sets > 1 && i === shuffles.length - 1 && ", and the trays,"} done
              {i === shuffles.length - 1 && ", and I have lost track"}
            </span>
          </label>
        ))}
      </div>
      {shuffles.length < 4 && (
        <div>
          <Button kind="quiet" onClick={() => onChange([...shuffles, false])}>
            One more shuffle
          </Button>
        </div>
      )}
    </>
  );
}
