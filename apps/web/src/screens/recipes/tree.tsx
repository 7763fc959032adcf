import type { Lineage, LineageBatch, LineageChange, LineageVersion } from "@partsproof/house/protocol";
import { useAsk } from "../../api.ts";
import { printAbv, printDay, printMl, printShare, printStated } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, LiquidColumn, Page, Tag } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { findingPath } from "../flights/paths.ts";
import type { ScreenProps } from "../screen.ts";
import "./tree.css";

/** The family tree: versions, what each changed, what was made of it, and what that did. */
export default function TreePage({ params }: ScreenProps) {
  const household = useHousehold().id;
  const recipe = params["recipe"];
  const asked = useAsk("getLineage", {
    at: { household },
    query: recipe === undefined ? {} : { recipe },
  });
  const recipes = `/h/${household}/recipes`;
  const name = asked.answer?.recipes.find((one) => one.recipeId === recipe)?.name;
  return (
    <Page
      title={name === undefined ? "Family tree" : `Family tree of ${name}`}
      wide
      back={
        recipe === undefined
          ? { to: recipes, label: "Recipes" }
          : { to: `${recipes}/${recipe}`, label: "The recipe" }
      }
      lead="What changed from version to version, what was made of each, and what it did in flights that are revealed."
    >
      {asked.state === "busy" && <Busy what="the family tree" />}
      {asked.state === "broken" && <Broken asked={asked} title="The family tree could not be fetched" />}
      {asked.state === "here" && asked.answer.recipes.length === 0 && (
        <Empty
          title="No recipe yet"
          action={
            <LinkButton kind="main" to={`${recipes}/new`}>
              Write a recipe
            </LinkButton>
          }
        />
      )}
      {asked.state === "here" && (
        <div className="trees">
          {asked.answer.recipes.map((one) => (
            <Tree key={one.recipeId} tree={one} household={household} alone={one.recipeId === recipe} />
          ))}
        </div>
      )}
    </Page>
  );
}

interface TreeProps {
  readonly tree: Lineage["recipes"][number];
  readonly household: string;
  readonly alone: boolean;
}

function Tree({ tree, household, alone }: TreeProps) {
  return (
    <section className="tree" aria-label={tree.name}>
      {!alone && (
        <h2>
          <Link to={`/h/${household}/recipes/${tree.recipeId}`}>{tree.name}</Link>
        </h2>
      )}
      <ol className="tree-stem">
        {tree.versions.map((version) => (
          <li key={version.number}>
            <Version version={version} name={tree.name} household={household} />
          </li>
        ))}
      </ol>
    </section>
  );
}

interface VersionProps {
  readonly version: LineageVersion;
  readonly name: string;
  readonly household: string;
}

function Version({ version, name, household }: VersionProps) {
  const { number, createdAt, parts, changes, note, batches } = version;
  return (
    <>
      <p className="tree-version">
        <span className="name">Version {number}</span>{" "}
        <span className="soft small">{printDay(createdAt)}</span>
      </p>
      <LiquidColumn
        size="list"
        title={`${name}, version ${number}: ${parts.map((part) => `${part.parts} ${part.label}`).join(", ")}`}
        segments={parts.map((part) => ({
          label: part.label,
          amount: part.parts,
          amountText: String(part.parts),
        }))}
      />
      {number > 1 && (
        <ul className="tree-changes">
          {changes.length === 0 && <li className="soft">Nothing but words changed.</li>}
          {changes.map((change) => (
            <li key={changeKey(change)}>{changeText(change)}</li>
          ))}
        </ul>
      )}
      {note !== "" && <p className="soft small">{note}</p>}
      {batches.length > 0 && (
        <ul className="tree-batches">
          {batches.map((batch) => (
            <li key={batch.batchId}>
              <Made batch={batch} household={household} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

const changeKey = (change: LineageChange): string =>
  change.what === "slot" ? `slot ${change.label}` : change.what;

function changeText(change: LineageChange): string {
  if (change.what === "slot") {
    const { label, shareBefore, shareNow } = change;
    if (shareBefore === 0) return `${label} comes in, with ${printShare(shareNow)}`;
    if (shareNow === 0) return `${label} goes, which had ${printShare(shareBefore)}`;
    return `${shareNow > shareBefore ? "more" : "less"} ${label}: ${printShare(shareBefore)} to ${printShare(shareNow)}`;
  }
  if (change.what === "water") {
    if (change.now === null) return "no water any more";
    return `water to ${printStated(change.now)}, before ${change.before === null ? "none" : `to ${printStated(change.before)}`}`;
  }
  if (change.what === "rest") {
    const days = (count: number | null): string =>
      count === null ? "no rest asked" : `${count} days of rest`;
    return `${days(change.now)}, before ${days(change.before)}`;
  }
  return `${change.now === "" ? "no oak" : `oak: ${change.now}`}, before ${change.before === "" ? "none" : change.before}`;
}

function Made({ batch, household }: { readonly batch: LineageBatch; readonly household: string }) {
  const { batchId, name, madeAt, state, ml, abv20, leftMl, usedIn, flights } = batch;
  return (
    <>
      <p className="tree-batch">
        <Link to={`/h/${household}/batches/${batchId}`}>{name}</Link> <Tag>{state}</Tag>
      </p>
      <p className="soft small">
        {printMl(ml)}
        {abv20 !== null && ` at ${printAbv(abv20)}`}, made {printDay(madeAt)},{" "}
        {leftMl < 0.05 ? "all gone" : `${printMl(leftMl)} left`}
      </p>
      {flights.length === 0 && <p className="soft small">In no revealed flight yet.</p>}
      {flights.map((flight) => (
        <p key={flight.flightId} className="small">
          <Link to={findingPath(household, flight.flightId)}>{flight.name}</Link>: {flight.said}
        </p>
      ))}
      {usedIn.map((into) => (
        <p key={`${into.recipeId} ${into.number}`} className="small">
          goes into{" "}
          <Link to={`/h/${household}/recipes/${into.recipeId}`}>
            {into.name}, version {into.number}
          </Link>
        </p>
      ))}
    </>
  );
}
