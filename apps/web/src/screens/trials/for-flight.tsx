import type { TrialSet } from "@partsproof/house/protocol";
import { mlDigits } from "../../figures/index.ts";
import { Section } from "../../parts/index.ts";
import { newFlightPath } from "../flights/paths.ts";

type Planned = NonNullable<TrialSet["flight"]>;

const KIND = { anchor: "From before", target: "The target", again: "Once more", new: "New" } as const;

/** Where the planned flight is set, with all its glasses in it. */
export function plannedAddress(
  household: string,
  name: string,
  { question, targetNameId, glasses }: Planned,
): string {
  const vessels = [...new Set(glasses.flatMap(({ vesselId }) => vesselId ?? []))].join(",");
  const asks =
    question === "how_close" && targetNameId !== null
      ? `towards=${encodeURIComponent(targetNameId)}`
      : "question=like_best";
  return `${newFlightPath(household)}?glasses=${vessels}&${asks}&name=${encodeURIComponent(name)}`;
}

/** The flight that a set is poured for: each glass, and why it is there. */
export function ForFlight({
  flight,
  left,
  bottles,
}: {
  readonly flight: Planned;
  readonly left: number;
  readonly bottles: TrialSet["bottles"];
}) {
  const drawn = new Set(bottles.flatMap(({ from }) => from.map((one) => one.vesselId)));
  const gone = flight.glasses.filter(({ trial, vesselId }) => trial === null && vesselId === null);
  return (
    <Section title="The flight they are for">
      <ol className="for-flight">
        {flight.glasses.map(({ trial, vesselId, label, keepMl, insteadOf, kind, why }, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- glasses are numbered and have no other name
          <li key={i}>
            <p>
              <strong>{trial === null ? label : `Trial ${trial}`}</strong>{" "}
              <span className="soft small">{KIND[kind]}</span>
            </p>
            {insteadOf !== null && (
              <p className="small">{`In the place of ${insteadOf}, which holds too little by now.`}</p>
            )}
            {keepMl !== null && vesselId !== null && drawn.has(vesselId) && (
              <p className="soft small">{`${mlDigits(keepMl)} mL of it stay in its bottle while the mixes are poured.`}</p>
            )}
            {why !== "" && <p className="small">{why}</p>}
          </li>
        ))}
      </ol>
      {gone.length > 0 && <p>What is no longer on the shelf is left out of the flight.</p>}
      <p className="soft small">
        {left > 0
          ? "Once the mixes are poured the flight can be set, with all of these in it. Whoever has read this knows what is in the glasses, not which is which."
          : "Set it with the button on top of the page: the house draws the numbers on the glasses."}
      </p>
    </Section>
  );
}
