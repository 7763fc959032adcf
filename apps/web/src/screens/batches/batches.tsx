import type { Batch } from "@partsproof/house/protocol";
import { useAskAll } from "../../api.ts";
import { abvDigits, fromNow, printDay, printMl } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, Page, Tag, VesselLevel } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { RestStrip } from "./rest-strip.tsx";
import "./batches.css";

/** Batches, newest first, with how far each has rested. */
export default function Batches() {
  const household = useHousehold();
  const asked = useAskAll("listBatches", { at: { household: household.id } });
  const make = (
    <LinkButton kind="main" to={`/h/${household.id}/batches/new`}>
      Make a batch
    </LinkButton>
  );
  return (
    <Page
      title="Batches"
      wide
      actions={
        <>
          <LinkButton to={`/h/${household.id}/batches/make`}>How much to make</LinkButton>
          {make}
        </>
      }
    >
      {asked.state === "busy" && <Busy what="the batches" />}
      {asked.state === "broken" && <Broken asked={asked} title="The batches could not be fetched" />}
      {asked.state === "here" && asked.answer.length === 0 && (
        <Empty title="No batch yet" action={make}>
          <p>A batch is a recipe poured at bottle size, with what was really poured.</p>
        </Empty>
      )}
      {asked.state === "here" && (
        <ul className="batches">
          {asked.answer.map((batch) => (
            <Row key={batch.id} batch={batch} household={household.id} />
          ))}
        </ul>
      )}
    </Page>
  );
}

function Row({ batch, household }: { readonly batch: Batch; readonly household: string }) {
  const { now, made } = batch;
  const present = useNow();
  return (
    <li className="batches-row">
      <VesselLevel kind="blending bottle" full={made.volumeMl > 0 ? now.volumeMl / made.volumeMl : 0} />
      <div className="batches-words">
        <h2>
          <Link to={`/h/${household}/batches/${batch.id}`}>{batch.name}</Link>
        </h2>
        <p className="soft small">
          {batch.recipeName}, version {batch.recipeNumber}, made {printDay(batch.madeAt)}
        </p>
        <p className="batches-tags">
          <Tag kind={batch.state === "rested" ? "strong" : "plain"}>
            {batch.state === "resting" && batch.restDueAt !== null
              ? `resting, due ${fromNow(batch.restDueAt, present)}`
              : batch.state}
          </Tag>
          <Tag>{now.volumeMl > 0.05 ? `${printMl(now.volumeMl)} left` : "empty"}</Tag>
        </p>
        <RestStrip batch={batch} small />
      </div>
      {made.abv20 !== null && (
        <p className="batches-strength">
          <b>{abvDigits(made.abv20)}</b> <span className="soft small">% vol</span>
        </p>
      )}
    </li>
  );
}
