import type { Vessel } from "@partsproof/house/protocol";
import { type ReactNode, useState } from "react";
import { useAskAll } from "../../api.ts";
import { abvDigits, printAge, printCask, printMl, printMoney } from "../../figures/index.ts";
import {
  Broken,
  Button,
  Busy,
  Choice,
  Empty,
  LinkButton,
  Page,
  Section,
  Tag,
  TextField,
  VesselLevel,
} from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { AddVessel } from "./add-vessel.tsx";
import { groupShelf, type OnShelf, type Show } from "./group-shelf.ts";
import "./shelf.css";

/** Everything on the shelf, with what is left. */
export default function Shelf() {
  const household = useHousehold();
  const at = { household: household.id };
  const whiskeys = useAskAll("listWhiskeys", { at });
  const vessels = useAskAll("listVessels", { at });
  const [show, setShow] = useState<Show>("on the shelf");
  const [search, setSearch] = useState("");
  const [adding, setAdding] = useState(false);
  const add = `/h/${household.id}/shelf/add`;

  const page = (body: ReactNode, lead?: string) => (
    <Page
      title="Shelf"
      wide
      lead={lead}
      actions={
        <>
          <LinkButton kind="main" to={add}>
            Add a bottle
          </LinkButton>
          <Button onClick={() => setAdding(true)}>Add a vessel</Button>
          <LinkButton to={`/h/${household.id}/shelf/list`}>As a list</LinkButton>
          <LinkButton to={`/h/${household.id}/shelf/next-note`}>What to taste next</LinkButton>
        </>
      }
    >
      {body}
      {adding && <AddVessel onClose={() => setAdding(false)} />}
    </Page>
  );
  if (whiskeys.state === "broken" || vessels.state === "broken") {
    const asked = whiskeys.state === "broken" ? whiskeys : vessels;
    return page(<Broken asked={asked} title="The shelf could not be fetched" />);
  }
  if (whiskeys.state === "busy" || vessels.state === "busy") return page(<Busy what="the shelf" />);
  if (whiskeys.answer.length === 0 && vessels.answer.length === 0) {
    return page(
      <Empty
        title="The shelf is empty"
        action={
          <LinkButton kind="main" to={add}>
            Add the first bottle
          </LinkButton>
        }
      >
        <p>A bottle needs a maker, a name and the strength on its label. The rest can wait.</p>
      </Empty>,
    );
  }
  const shelf = groupShelf(whiskeys.answer, vessels.answer, show, search);
  const bottles = vessels.answer.filter((vessel) => vessel.kind === "bottle" && vessel.contents.volumeMl > 0);
  const leftMl = bottles.reduce((sum, bottle) => sum + bottle.contents.volumeMl, 0);
  const nothing = shelf.groups.length === 0 && shelf.others.length === 0;
  return page(
    <>
      <div className="shelf-find">
        <TextField
          label="Find a whiskey"
          quietLabel
          value={search}
          onChange={setSearch}
          input={{ type: "search", placeholder: "Find by maker, name or release" }}
        />
        <Choice
          label="Show"
          quietLabel
          value={show}
          onChange={setShow}
          options={[
            { value: "on the shelf", label: "On the shelf" },
            { value: "open", label: "Open" },
            { value: "all", label: "All" },
          ]}
        />
      </div>
      {nothing && (
        <Empty
          title="Nothing on the shelf fits"
          action={
            <Button
              kind="main"
              onClick={() => {
                setSearch("");
                setShow("all");
              }}
            >
              Show everything
            </Button>
          }
        />
      )}
      {shelf.groups.map((group) => (
        <section key={group.kind} className="shelf-group">
          <h2>{group.kind.charAt(0).toUpperCase() + group.kind.slice(1)}</h2>
          <ul className="shelf-rows">
            {group.rows.map((row) => (
              <WhiskeyRow
                key={row.whiskey.id}
                row={row}
                household={household.id}
                currency={household.currency}
              />
            ))}
          </ul>
        </section>
      ))}
      {shelf.others.length > 0 && (
        <Section title="Blending bottles, vials and jugs">
          <ul className="shelf-rows">
            {shelf.others.map((vessel) => (
              <VesselRow key={vessel.id} vessel={vessel} household={household.id} />
            ))}
          </ul>
        </Section>
      )}
    </>,
    `${bottles.length === 1 ? "1 bottle" : `${bottles.length} bottles`} with ${(leftMl / 1000).toFixed(1)} litres in them`,
  );
}

/** Many a release is its age: "12 years" need not stand there twice. */
const saysItsAge = ({ release, ageYears }: OnShelf["whiskey"]): boolean =>
  ageYears !== null && release.includes(printAge(ageYears));

interface WhiskeyRowProps {
  readonly row: OnShelf;
  readonly household: string;
  readonly currency: string;
}

function WhiskeyRow({ row, household, currency }: WhiskeyRowProps) {
  const { whiskey, bottles, leftMl } = row;
  const [first] = bottles;
  const to =
    bottles.length === 1 && first !== undefined
      ? `/h/${household}/shelf/vessels/${first.id}`
      : `/h/${household}/shelf/whiskeys/${whiskey.id}`;
  const sealed = bottles.filter((bottle) => bottle.sealed).length;
  const facts = [
    saysItsAge(whiskey) ? null : printAge(whiskey.ageYears),
    ...whiskey.casks.slice(0, 2).map(printCask),
    whiskey.priceMinor === null ? null : printMoney(whiskey.priceMinor, currency),
  ].filter((fact) => fact !== null);
  return (
    <li>
      <Link to={to} className="shelf-row">
        <span className="shelf-bottles">
          {bottles.slice(0, 3).map((bottle) => (
            <VesselLevel
              key={bottle.id}
              kind="bottle"
              full={bottle.contents.volumeMl / bottle.capacityMl}
              sealed={bottle.sealed}
            />
          ))}
          {bottles.length === 0 && <VesselLevel kind="bottle" full={0} />}
        </span>
        <span className="shelf-words">
          <span className="shelf-maker">{whiskey.maker}</span>
          <span className="name shelf-name">
            {whiskey.name}
            {whiskey.release !== "" && <span className="shelf-release"> {whiskey.release}</span>}
          </span>
          <span className="shelf-facts">{facts.join(" · ")}</span>
          <span className="shelf-tags">
            {bottles.length === 0 ? <Tag>no bottle</Tag> : <Tag>{printMl(leftMl)} left</Tag>}
            {sealed > 0 && <Tag>{sealed === 1 ? "sealed" : `${sealed} sealed`}</Tag>}
            {whiskey.availability === "gone" && <Tag kind="strong">no longer sold</Tag>}
          </span>
        </span>
        <span className="shelf-strength">
          <span className="shelf-digits">{abvDigits(whiskey.abv20)}</span>{" "}
          <span className="soft small">% vol</span>
        </span>
      </Link>
    </li>
  );
}

function VesselRow({ vessel, household }: { readonly vessel: Vessel; readonly household: string }) {
  const { contents } = vessel;
  return (
    <li>
      <Link to={`/h/${household}/shelf/vessels/${vessel.id}`} className="shelf-row">
        <span className="shelf-bottles">
          <VesselLevel kind={vessel.kind} full={contents.volumeMl / vessel.capacityMl} />
        </span>
        <span className="shelf-words">
          <span className="shelf-maker">{vessel.kind}</span>
          <span className="name shelf-name">{vessel.label}</span>
          <span className="shelf-tags">
            {contents.volumeMl > 0 ? (
              <Tag>
                {printMl(contents.volumeMl)} of {printMl(vessel.capacityMl)}
              </Tag>
            ) : (
              <Tag>empty, holds {printMl(vessel.capacityMl)}</Tag>
            )}
            {vessel.batchId !== null && <Tag kind="strong">batch</Tag>}
          </span>
        </span>
        {contents.abv20 !== null && (
          <span className="shelf-strength">
            <span className="shelf-digits">{abvDigits(contents.abv20)}</span>{" "}
            <span className="soft small">% vol</span>
          </span>
        )}
      </Link>
    </li>
  );
}
