import { printG, printMl } from "../../figures/index.ts";
import { type Pouring, type Standing, WATER } from "../../weighing/index.ts";

/** Every part with what is in and what it shall come to. */
export function InVessel({ pouring, now }: { readonly pouring: Pouring; readonly now: Standing }) {
  const grams = (is: (source: number) => boolean): number =>
    now.poured.reduce((sum, one) => sum + (is(one.source) ? one.g : 0), 0);
  const lines = pouring.parts.map(({ label }, part) => ({
    label,
    g: grams((source) => pouring.sources[source]?.part === part),
    ml: now.pouredMl[part] ?? 0,
    goal: now.goals[part] ?? 0,
  }));
  const water = {
    label: "Water",
    g: grams((source) => source === WATER),
    ml: now.waterMl,
    goal: now.waterGoalMl,
  };
  const all = pouring.waterTo === null && water.ml === 0 ? lines : [...lines, water];
  return (
    <ol className="in-vessel">
      {all.map(({ label, g, ml, goal }) => (
        <li key={label}>
          <span className="name">{label}</span>
          <span className="in-vessel-amount">
            {g > 0 ? (
              <>
                <b>{printG(g)}</b>, {printMl(ml)}
              </>
            ) : (
              <span className="soft">nothing yet</span>
            )}
          </span>
          <span className="in-vessel-strip" aria-hidden="true">
            <span style={{ width: `${goal > 0 ? Math.min(100, (100 * ml) / goal) : 0}%` }} />
          </span>
          <span className="soft small">of {printMl(goal)}</span>
        </li>
      ))}
    </ol>
  );
}
