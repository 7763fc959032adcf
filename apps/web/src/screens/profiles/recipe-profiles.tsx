import { useAsk } from "../../api.ts";
import { MixingSection } from "./mixing-section.tsx";
import { ProfilesSection } from "./profiles-section.tsx";

/** What a recipe's parts predict, and what mixing did to the sum. */
export function RecipeProfiles({
  household,
  recipe,
}: {
  readonly household: string;
  readonly recipe: string;
}) {
  const asked = useAsk("getRecipeProfile", { at: { household, recipe } });
  return (
    <>
      <ProfilesSection asked={asked} title="What mixing did to the sum" name="recipe-profile" />
      <MixingSection household={household} />
    </>
  );
}
