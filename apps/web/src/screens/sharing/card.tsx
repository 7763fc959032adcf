import { useState } from "react";
import { Broken, Busy, Button, Choice, Form, Page, TextField } from "../../parts/index.ts";
import { type CardSize, RecipeCard } from "../../print/recipe-card.tsx";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { useShared } from "./use-shared.ts";
import "./sharing.css";

/** The recipe on a card, as it prints. */
export default function CardPage({ params }: ScreenProps) {
  const household = useHousehold();
  const recipe = params["recipe"] ?? "";
  const [size, setSize] = useState<CardSize>("a6");
  const [bottle, setBottle] = useState("700");
  const typed = Number(bottle.trim().replace(",", "."));
  const good = bottle.trim() !== "" && typed >= 1 && typed <= 100_000;
  const shared = useShared({
    household: household.id,
    recipe,
    withNote: false,
    credits: [],
    bottleMl: good ? typed : 700,
  });
  return (
    <div className="printing">
      <Page
        title="Recipe card"
        back={{ to: `/h/${household.id}/recipes/${recipe}/share`, label: "Pass it on" }}
        lead="Black on white, whatever the theme; told apart in grey."
      >
        <Form say={{ issues: [], tries: 0 }} quiet className="no-paper">
          <Choice
            label="Size"
            value={size}
            onChange={setSize}
            options={[
              { value: "a6", label: "A6" },
              { value: "3x5", label: "3 × 5 in" },
            ]}
          />
          <TextField
            label="Amounts for a bottle of"
            unit="mL"
            value={bottle}
            onChange={setBottle}
            input={{ inputMode: "decimal" }}
          />
          <div className="form-actions">
            <Button kind="main" onClick={() => print()}>
              Print
            </Button>
          </div>
        </Form>
        {shared.state === "busy" && <Busy what="the card" />}
        {shared.state === "broken" && (
          <Broken
            asked={{ refusal: shared.refusal, again: () => location.reload() }}
            title="This card could not be made"
          />
        )}
        {shared.state === "here" && (
          // It scrolls where the screen is narrower than the card.
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a keyboard has to scroll it too
          <div className="card-paper" role="region" aria-label="The card" tabIndex={0}>
            <RecipeCard
              size={size}
              recipe={shared.passing.file}
              amounts={shared.passing.card.amounts}
              square={shared.passing.square?.text ?? null}
            />
          </div>
        )}
      </Page>
    </div>
  );
}
