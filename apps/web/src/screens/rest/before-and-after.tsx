import type { Rest } from "@partsproof/house/protocol";
import { printDay, printMl } from "../../figures/index.ts";
import { LinkButton, Section } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

/** The kept sample beside the batch, blind: one tap sets it up as any flight. */
export function BeforeAndAfter({ rest }: { readonly rest: Rest }) {
  const household = useHousehold();
  const { sample, flightOn } = rest;
  if (sample === null) return null;
  const name = `${rest.batchName}, before and after`.slice(0, 120);
  const query = new URLSearchParams({ glasses: `${sample.vesselId},${rest.vesselId}`, name });
  return (
    <Section title="Before and after">
      <p>
        {printMl(sample.ml)} from before {sample.ml < 1.5 ? "is" : "are"} in {sample.label}.
        {flightOn !== null && ` The flight is planned for ${printDay(`${flightOn}T12:00:00`)}.`}
      </p>
      <div className="form-actions">
        <LinkButton to={`/h/${household.id}/flights/new?${query.toString()}`}>
          Set the flight of both
        </LinkButton>
      </div>
    </Section>
  );
}
