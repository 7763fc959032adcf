import type { Batch, RecipeVersion } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk } from "../../api.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { abv20OfStated, slotKey } from "../../mixing/index.ts";
import { Broken, Button, Busy, Choice, Page, Stepper } from "../../parts/index.ts";
import { BatchCard } from "../../print/batch-card.tsx";
import { CheckRuler } from "../../print/check-ruler.tsx";
import { codeFits } from "../../print/code-fits.ts";
import { LabelBack } from "../../print/label-back.tsx";
import { LabelFront } from "../../print/label-front.tsx";
import { LABEL_SIZES, type LabelSize } from "../../print/label-size.data.ts";
import { oakWords } from "../../print/oak-words.ts";
import { useHousehold } from "../../session/index.ts";
import { openName } from "../recipes/segments.ts";
import type { ScreenProps } from "../screen.ts";
import { useShared } from "../sharing/use-shared.ts";
import "./label.css";

const SIZES = Object.keys(LABEL_SIZES) as LabelSize[];

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
  const newest = Math.max(...(versions.answer?.items ?? []).map(({ number }) => number));
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
        </div>
        {what === "card" ? (
          <>
            <PrintIt />
            <div className="paper">
              <BatchCard batch={batch.answer} oak={oak} />
            </div>
          </>
        ) : (
          <Labels
            batch={batch.answer}
            oak={oak}
            version={version ?? null}
            isNewest={version?.number === newest}
          />
        )}
      </Page>
    </div>
  );
}

const PrintIt = () => (
  <div className="form-actions no-paper">
    <Button kind="main" onClick={() => print()}>
      Print
    </Button>
  </div>
);

interface LabelsProps {
  readonly batch: Batch;
  readonly oak: string;
  readonly version: RecipeVersion | null;
  /** A link is of the recipe's newest version: an older batch has none. */
  readonly isNewest: boolean;
}

function Labels({ batch, oak, version, isNewest }: LabelsProps) {
  const household = useHousehold();
  const [size, setSize] = useState<LabelSize>("middle");
  const [sides, setSides] = useState<"front" | "back" | "both">("both");
  const [copies, setCopies] = useState(2);
  const cellar = useCellar();
  const shared = useShared({
    household: household.id,
    recipe: batch.recipeId,
    withNote: false,
    credits: [],
    bottleMl: 700,
  });
  const recipe =
    version === null || cellar.state !== "here"
      ? null
      : { lines: linesOf(version, cellar.answer), waterTo: waterTo(version) };
  const code = shared.state === "here" ? (shared.passing.square?.text ?? null) : null;
  const square = isNewest && code !== null && codeFits(code, size) ? code : null;
  const front = (key: string) => <LabelFront key={key} size={size} batch={batch} oak={oak} />;
  const back = (key: string) => (
    <LabelBack key={key} size={size} batch={batch} oak={oak} recipe={recipe} square={square} />
  );
  return (
    <>
      <div className="form no-paper">
        <Choice
          label="Size"
          value={size}
          onChange={setSize}
          options={SIZES.map((one) => ({ value: one, label: LABEL_SIZES[one].says }))}
          hint={`For ${LABEL_SIZES[size].for}.`}
        />
        <Choice
          label="Sides"
          value={sides}
          onChange={setSides}
          options={[
            { value: "both", label: "Front and back" },
            { value: "front", label: "Front" },
            { value: "back", label: "Back" },
          ]}
          hint={sides === "front" ? undefined : codeHint({ size, isNewest, square, state: shared.state })}
        />
        <Stepper label="How many" showLabel value={copies} min={1} max={12} onChange={setCopies} />
      </div>
      <PrintIt />
      {/* It scrolls where the screen is narrower than a label. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a keyboard has to scroll it too */}
      <div className="paper" role="region" aria-label="The labels" tabIndex={0}>
        {Array.from({ length: copies }, (_, i) => [
          ...(sides === "back" ? [] : [front(`front ${i}`)]),
          ...(sides === "front" ? [] : [back(`back ${i}`)]),
        ])}
        <CheckRuler />
      </div>
    </>
  );
}

/** What each part stands for. */
const linesOf = ({ slots }: RecipeVersion, { stocks }: Cellar) =>
  slots
    .filter(({ parts }) => parts > 0)
    .map((slot) => ({
      parts: slot.parts,
      name: stocks.get(slotKey(slot.of))?.label ?? openName(slot),
    }));

const waterTo = ({ waterTo: to }: RecipeVersion): number | null => (to === null ? null : abv20OfStated(to));

/** Why a back has no square code. */
function codeHint({
  size,
  isNewest,
  square,
  state,
}: {
  readonly size: LabelSize;
  readonly isNewest: boolean;
  readonly square: string | null;
  readonly state: "busy" | "here" | "broken";
}): string | undefined {
  if (state === "busy") return undefined;
  if (square !== null) return "With a square code of the recipe's link.";
  if (LABEL_SIZES[size].codeMm === 0) return "Too small for a square code of the recipe's link.";
  if (!isNewest) return "No square code: the recipe has changed since this was made.";
  return "No square code: the recipe's link is too long to be read at this size.";
}
