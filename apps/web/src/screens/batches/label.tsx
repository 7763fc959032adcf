import { useState } from "react";
import { useAsk } from "../../api.ts";
import { Broken, Button, Busy, Choice, Page, Stepper } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { BatchCard } from "../../print/batch-card.tsx";
import { BottleLabel } from "../../print/bottle-label.tsx";
import { oakWords } from "../../print/oak-words.ts";
import type { ScreenProps } from "../screen.ts";
import "./label.css";

/** What to print for a batch: labels for the bottles, or the card to make it again. */
export default function LabelPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id };
  const batch = useAsk("getBatch", { at: { ...at, batch: params["batch"] ?? "" } });
  const recipeId = batch.answer?.recipeId;
  const versions = useAsk(
    "listRecipeVersions",
    recipeId === undefined ? null : { at: { ...at, recipe: recipeId }, query: { limit: 200 } },
  );
  const rests = useAsk("listRests", { at: { ...at, batch: params["batch"] ?? "" } });
  const [what, setWhat] = useState<"label" | "card">("label");
  const [copies, setCopies] = useState(2);
  const version = versions.answer?.items.find(({ number }) => number === batch.answer?.recipeNumber);
  const oak = oakWords(rests.answer?.items ?? [], version?.oak ?? "");
  const back = { to: `/h/${household.id}/batches/${params["batch"] ?? ""}`, label: "The batch" };
  if (batch.state !== "here") {
    return (
      <Page title="Label and card" back={back}>
        {batch.state === "busy" ? (
          <Busy what="the batch" />
        ) : (
          <Broken asked={batch} title="This batch could not be fetched" />
        )}
      </Page>
    );
  }
  return (
    <div className="printing">
      <Page
        title={`Label and card: ${batch.answer.name}`}
        heading="Label and card"
        back={back}
        lead="Black on white, whatever the theme."
      >
        <div className="form no-paper">
          <Choice
            label="Print"
            value={what}
            onChange={setWhat}
            options={[
              { value: "label", label: "Labels" },
              { value: "card", label: "The card" },
            ]}
          />
          {what === "label" && (
            <Stepper label="How many" showLabel value={copies} min={1} max={12} onChange={setCopies} />
          )}
          <div className="form-actions">
            <Button kind="main" onClick={() => print()}>
              Print
            </Button>
          </div>
        </div>
        <div className="paper">
          {what === "card" ? (
            <BatchCard batch={batch.answer} oak={oak} />
          ) : (
            Array.from({ length: copies }, (_, i) => <BottleLabel key={i} batch={batch.answer} oak={oak} />)
          )}
        </div>
      </Page>
    </div>
  );
}
