import { useAsk } from "../../api.ts";
import { ProfilesSection } from "./profiles-section.tsx";

/** What the shelf says of a whiskey, and what sheets observed. */
export function WhiskeyProfiles({
  household,
  whiskey,
}: {
  readonly household: string;
  readonly whiskey: string;
}) {
  const asked = useAsk("getWhiskeyProfile", { at: { household, whiskey } });
  return <ProfilesSection asked={asked} title="What it tastes of" name="whiskey-profile" />;
}
