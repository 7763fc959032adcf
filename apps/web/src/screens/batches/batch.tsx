import type { Batch } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { mlDigits, printAbv, printDay, printG, printMl } from "../../figures/index.ts";
import { contentsGive, printGive } from "../../mixing/index.ts";
import {
  announce,
  BlendFacts,
  Broken,
  Button,
  Busy,
  IssueSummary,
  LinkButton,
  LiquidColumn,
  NumberHero,
  Page,
  Section,
  Tag,
} from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { OakOfBatch } from "./oak-of-batch.tsx";
import type { ScreenProps } from "../screen.ts";
import { EditBatch } from "./edit-batch.tsx";
import { Reduction } from "./reduction.tsx";
import { RestStrip } from "./rest-strip.tsx";
import { TableList } from "./table-list.tsx";
import "./batch.css";

/** One batch: how far it rested, what it was made of and what is left. */
export default function BatchPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, batch: params["batch"] ?? "" };
  const asked = useAsk("getBatch", { at });
  const back = { to: `/h/${household.id}/batches`, label: "Batches" };
  if (asked.state !== "here") {
    return (
      <Page title="Batch" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the batch" />
        ) : (
          <Broken asked={asked} title="This batch could not be fetched" />
        )}
      </Page>
    );
  }
  return <Shown batch={asked.answer} back={back} />;
}

interface ShownProps {
  readonly batch: Batch;
  readonly back: { readonly to: string; readonly label: string };
}

function Shown({ batch, back }: ShownProps) {
  const household = useHousehold();
  const at = { household: household.id, batch: batch.id };
  const finish = useSay("editBatch");
  const [editing, setEditing] = useState(false);
  const recipe = useAsk("getRecipe", { at: { household: household.id, recipe: batch.recipeId } });
  const version = useAsk("listRecipeVersions", {
    at: { household: household.id, recipe: batch.recipeId },
    query: { limit: 200 },
  });
  const oak = version.answer?.items.find(({ number }) => number === batch.recipeNumber)?.oak ?? "";
  const send = async (finished: boolean): Promise<void> => {
    const done = await finish.send({ at, body: { version: batch.version, finished } });
    if (done !== null) announce(finished ? `${batch.name} is finished` : `${batch.name} is not finished`);
  };
  return (
    <Page
      title={batch.name}
      wide
      back={back}
      lead={
        <>
          <Link to={`/h/${household.id}/recipes/${batch.recipeId}`}>
            {recipe.answer?.name ?? batch.recipeName}
          </Link>
          , version {batch.recipeNumber}, made {printDay(batch.madeAt)}, in{" "}
          <Link to={`/h/${household.id}/shelf/vessels/${batch.vesselId}`}>{batch.vesselLabel}</Link>
        </>
      }
      actions={<LinkButton to={`/h/${household.id}/batches/${batch.id}/label`}>Label and card</LinkButton>}
    >
      <IssueSummary say={finish} />
      <Section
        title="Rest"
        action={<Tag kind={batch.state === "rested" ? "strong" : "plain"}>{batch.state}</Tag>}
      >
        <RestStrip batch={batch} />
        <OakOfBatch batch={batch} asked={oak} />
        {batch.note !== "" && <p className="batch-note">{batch.note}</p>}
        <div className="form-actions">
          {batch.state === "finished" ? (
            <Button busy={finish.busy} onClick={() => send(false)}>
              Not finished after all
            </Button>
          ) : (
            <Button
              kind={batch.state === "rested" ? "main" : "plain"}
              busy={finish.busy}
              onClick={() => send(true)}
            >
              It has rested enough
            </Button>
          )}
          <LinkButton to={`/h/${household.id}/batches/${batch.id}/rest`}>Oak and check tastings</LinkButton>
          <Button onClick={() => setEditing(true)}>Change rest, name or note</Button>
        </div>
      </Section>
      {batch.state !== "finished" && (
        <div className="batch">
          <TableList batch={batch} oak={oak} />
          <Reduction batch={batch} />
        </div>
      )}
      <div className="batch">
        <Section title="As made">
          <BlendFacts
            of={batch.made}
            currency={household.currency}
            perLitre={batch.made.cost.perLitreMinor}
            give={printGive(contentsGive(batch.made))}
          />
        </Section>
        <Section title="Really poured">
          <LiquidColumn
            title={`What was poured into ${batch.name}`}
            segments={batch.poured.map((pour) => ({
              label: pour.label,
              amount: pour.ml,
              amountText: printMl(pour.ml),
              sub: printG(pour.g),
              water: pour.label.toLowerCase() === "water",
            }))}
          />
          <div className="numbers">
            <NumberHero
              label="Left in the vessel"
              value={mlDigits(batch.now.volumeMl)}
              unit="mL"
              note={batch.now.abv20 === null ? "empty" : `at ${printAbv(batch.now.abv20)}`}
            />
          </div>
        </Section>
      </div>
      {editing && <EditBatch batch={batch} onClose={() => setEditing(false)} />}
    </Page>
  );
}
