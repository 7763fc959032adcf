import { useEffect, useState } from "react";
import { useAskAll } from "../../api.ts";
import { Broken, Busy, Empty, LinkButton, Page } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { lastHousehold } from "../../session/index.ts";
import { handOver } from "./handed.ts";

/** Where a link leads that holds a recipe or a result: it is handed over to the household that takes it in, and taken out of the address. */
export default function PassedOn() {
  const [text] = useState(() => (location.hash.length > 1 ? location.href : ""));
  const households = useAskAll("listHouseholds", {});
  const all = households.state === "here" ? households.answer : [];
  const only = all.find(({ id }) => id === lastHousehold()) ?? (all.length === 1 ? all[0] : undefined);
  useEffect(() => {
    history.replaceState(null, "", location.pathname);
  }, []);
  useEffect(() => {
    if (only === undefined || text === "") return;
    handOver(text);
    go(`/h/${only.id}/take-in`, { replace: true });
  }, [only, text]);
  return (
    <Page title="Passed on">
      {households.state === "busy" && <Busy what="the households" />}
      {households.state === "broken" && (
        <Broken asked={households} title="The households could not be fetched" />
      )}
      {households.state === "here" && text === "" && (
        <Empty title="Nothing in this link" action={<LinkButton to="/">Go to the start</LinkButton>}>
          <p>
            What stands after # holds the recipe or the result, and it is missing. Ask for the whole link.
          </p>
        </Empty>
      )}
      {households.state === "here" && text !== "" && all.length === 0 && (
        <Empty title="There is no household yet" action={<LinkButton to="/">Begin one</LinkButton>}>
          <p>Begin one, then open the link again.</p>
        </Empty>
      )}
      {households.state === "here" && text !== "" && only === undefined && all.length > 1 && (
        <>
          <p>Which household is to take it in?</p>
          <ul className="form-actions">
            {all.map(({ id, name }) => (
              <li key={id}>
                <LinkButton to={`/h/${id}/take-in`} onClick={() => handOver(text)}>
                  {name}
                </LinkButton>
              </li>
            ))}
          </ul>
        </>
      )}
    </Page>
  );
}
