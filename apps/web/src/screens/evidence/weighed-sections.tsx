import { useAsk } from "../../api.ts";
import { Broken, Busy } from "../../parts/index.ts";
import { useFlightToken } from "../../session/index.ts";
import { FlightProfiles } from "../profiles/flight-profiles.tsx";
import { MapSection } from "./map-section.tsx";
import { MixUpsSection } from "./mix-ups-section.tsx";
import { ApartSection } from "./apart-section.tsx";
import { WorthsSection } from "./worths-section.tsx";

/** What the sheets of one revealed flight can carry together, under its finding. */
export default function WeighedSections({
  household,
  flight,
}: {
  readonly household: string;
  readonly flight: string;
}) {
  const token = useFlightToken(flight);
  const asked = useAsk("getWeighedFlight", {
    at: { household, flight },
    ...(token === undefined ? {} : { token }),
  });
  if (asked.state === "busy") return <Busy what="what the sheets can carry" />;
  if (asked.state === "broken")
    return <Broken asked={asked} title="What the sheets can carry could not be fetched" />;
  const { worths, poursTogether, mixUps, known, apart, map, wordTests } = asked.answer;
  return (
    <>
      {worths !== null && (
        <WorthsSection
          worths={worths}
          besides={poursTogether.map(({ sentence }) => sentence)}
          title={worths.closeTo === null ? "How sure the order is" : `How sure the closeness is`}
          name="flight"
        />
      )}
      <ApartSection apart={apart === null ? [] : [apart]} name="flight" />
      <MixUpsSection
        title="Truly known, and mixed up"
        known={known}
        mixUps={mixUps}
        name="flight"
        what="the glasses"
      />
      <FlightProfiles household={household} flight={flight} />
      <MapSection map={map} wordTests={wordTests} numbered={mixUps?.names} name="flight" />
    </>
  );
}
