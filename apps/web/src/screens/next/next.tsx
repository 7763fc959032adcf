import { useState } from "react";
import { useAsk } from "../../api.ts";
import { Broken, Busy, Choice, Page } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { Try } from "./try.tsx";
import "./next.css";

type From = "recipe" | "shelf";

/** What to try next around a recipe: which glasses, why, and what is believed of any mix. */
export default function Next({ params }: ScreenProps) {
  const household = useHousehold();
  const recipe = params["recipe"] ?? "";
  const [from, setFrom] = useState<From>("recipe");
  const at = { household: household.id, recipe };
  const asked = useAsk("getTried", { at, query: { from } });
  const named = useAsk("getRecipe", { at });
  const broken = [asked, named].find(({ state }) => state === "broken");
  return (
    <Page
      title="What to try next"
      wide
      lead={named.state === "here" ? `Around ${named.answer.name}, from what your flights said.` : undefined}
      back={{ to: `/h/${household.id}/recipes/${recipe}`, label: "The recipe" }}
    >
      <Choice<From>
        label="New mixes may hold"
        value={from}
        onChange={setFrom}
        options={[
          { value: "recipe", label: "This recipe’s whiskeys" },
          { value: "shelf", label: "Anything on the shelf" },
        ]}
      />
      {broken !== undefined && <Broken asked={broken} title="The history could not be fetched" />}
      {broken === undefined && (asked.state !== "here" || named.state !== "here") && (
        <Busy what="what was tried" />
      )}
      {asked.state === "here" && named.state === "here" && (
        <Try key={from} history={asked.answer} household={household.id} recipe={named.answer.name} />
      )}
    </Page>
  );
}
