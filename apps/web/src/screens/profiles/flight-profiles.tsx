import { useAsk } from "../../api.ts";
import { useFlightToken } from "../../session/index.ts";
import { ProfilesSection } from "./profiles-section.tsx";

/** What each name in a revealed flight was observed to be, beside what was predicted. */
export function FlightProfiles({
  household,
  flight,
}: {
  readonly household: string;
  readonly flight: string;
}) {
  const token = useFlightToken(flight);
  const asked = useAsk("getFlightProfiles", {
    at: { household, flight },
    ...(token === undefined ? {} : { token }),
  });
  // Where nobody said what anything tasted of there is nothing to head.
  if (asked.state === "here" && asked.answer.lines.every(({ kind }) => kind !== "observed")) return null;
  return <ProfilesSection asked={asked} title="What the glasses tasted of" name="flight-profile" />;
}
