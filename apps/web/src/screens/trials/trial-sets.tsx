import type { TrialSet } from "@partsproof/house/protocol";
import { useAskAll } from "../../api.ts";
import { listed, printDay } from "../../figures/index.ts";
import { Broken, Busy, Empty, LinkButton, Page, Tag } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import "./trials.css";

/** Sets of bench trials, newest first. */
export default function TrialSets() {
  const household = useHousehold().id;
  const asked = useAskAll("listTrialSets", { at: { household } });
  const plan = (
    <LinkButton kind="main" to={`/h/${household}/trials/new`}>
      Plan trials
    </LinkButton>
  );
  return (
    <Page
      title="Bench trials"
      back={{ to: `/h/${household}/recipes`, label: "Recipes" }}
      lead="Small mixes, made to be judged before a bottle is."
      actions={plan}
    >
      {asked.state === "busy" && <Busy what="the trials" />}
      {asked.state === "broken" && <Broken asked={asked} title="The trials could not be fetched" />}
      {asked.state === "here" && asked.answer.length === 0 && (
        <Empty title="No trials yet" action={plan}>
          <p>
            Choose two to six whiskeys: the house says which few mixes tell most, and how to pour them with
            the least waste.
          </p>
        </Empty>
      )}
      {asked.state === "here" && (
        <ul className="trial-sets">
          {asked.answer.map((set) => (
            <Row key={set.id} set={set} household={household} />
          ))}
        </ul>
      )}
    </Page>
  );
}

function Row({ set, household }: { readonly set: TrialSet; readonly household: string }) {
  const { plan, made } = set;
  return (
    <li>
      <h2>
        <Link to={`/h/${household}/trials/${set.id}`}>{set.name}</Link>
      </h2>
      <p className="soft small">
        {plan.trials.length} mixes of {listed(plan.parts)}, planned {printDay(set.createdAt)}
      </p>
      <p>
        <Tag kind={made.length > 0 ? "strong" : "plain"}>
          {made.length === 0 ? "not poured yet" : `${made.length} of ${plan.trials.length} poured`}
        </Tag>
      </p>
    </li>
  );
}
