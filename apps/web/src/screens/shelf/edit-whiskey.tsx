import type { Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { api, useAsk, useAskAll, useSay } from "../../api.ts";
import { printAge, printCask, printMl, printMoney, printStated, proofDigits } from "../../figures/index.ts";
import { whiskeyLabel } from "../../mixing/index.ts";
import {
  announce,
  Broken,
  Button,
  Busy,
  Form,
  IssueSummary,
  LinkButton,
  Menu,
  NumberHero,
  Page,
  Section,
  Tag,
  VesselLevel,
} from "../../parts/index.ts";
import { go, Link, useUnsaved } from "../../router/index.ts";
import type { ScreenProps } from "../screen.ts";
import { useHousehold } from "../../session/index.ts";
import { Meanwhile } from "./meanwhile.tsx";
import { TasteSection } from "./taste-section.tsx";
import { WhiskeyFields } from "./whiskey-fields.tsx";
import { asTyped, readWhiskey, type TypedWhiskey } from "./whiskey-typed.ts";
import "./edit-whiskey.css";

/** One whiskey: its facts, its bottles, and changing either. */
export default function WhiskeyPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, whiskey: params["whiskey"] ?? "" };
  const asked = useAsk("getWhiskey", { at });
  const [editing, setEditing] = useState(false);
  const back = { to: `/h/${household.id}/shelf`, label: "Shelf" };
  if (asked.state !== "here") {
    return (
      <Page title="Whiskey" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the whiskey" />
        ) : (
          <Broken asked={asked} title="This whiskey could not be fetched" />
        )}
      </Page>
    );
  }
  const whiskey = asked.answer;
  return (
    <Page
      title={whiskeyLabel(whiskey)}
      heading={
        <>
          <span className="whiskey-maker">{whiskey.maker}</span> {whiskey.name}{" "}
          {whiskey.release !== "" && <span className="soft">{whiskey.release}</span>}
        </>
      }
      back={back}
    >
      {editing ? (
        <Edit
          whiskey={whiskey}
          onDone={() => {
            setEditing(false);
            // Somebody else may have saved meanwhile, and their facts were kept.
            asked.again();
          }}
        />
      ) : (
        <Facts whiskey={whiskey} onEdit={() => setEditing(true)} />
      )}
    </Page>
  );
}

function Facts({ whiskey, onEdit }: { readonly whiskey: Whiskey; readonly onEdit: () => void }) {
  const household = useHousehold();
  const at = { household: household.id };
  const vessels = useAskAll("listVessels", { at, query: { whiskeyId: whiskey.id } });
  const remove = useSay("removeWhiskey");
  const pick = async (): Promise<void> => {
    const gone = await remove.send({
      at: { ...at, whiskey: whiskey.id },
      query: { version: whiskey.version },
    });
    if (gone !== null) {
      announce(`${whiskeyLabel(whiskey)} removed`);
      go(`/h/${household.id}/shelf`);
    }
  };
  const facts: readonly (readonly [string, string])[] = [
    ["Kind", whiskey.kind],
    ["Label says", printStated(whiskey.strength)],
    ["Age", printAge(whiskey.ageYears)],
    ["Casks", whiskey.casks.map(printCask).join("; ") || "not known"],
    [
      "Grains",
      whiskey.grains?.map(({ grain, percent }) => `${percent} % ${grain}`).join(", ") ?? "not known",
    ],
    ["Distilled at", whiskey.distilledAt ?? "not known"],
    ["Place", whiskey.place ?? "not known"],
    [
      `Price of ${printMl(whiskey.bottleMl)}`,
      whiskey.priceMinor === null ? "not known" : printMoney(whiskey.priceMinor, household.currency),
    ],
  ];
  return (
    <>
      <IssueSummary say={remove} />
      <div className="whiskey-top">
        <NumberHero size="hero" label="Strength" value={whiskey.abv20.toFixed(1)} unit="% vol" give="± 0.3" />
        <NumberHero label="Proof (US)" value={proofDigits(whiskey.proof60F)} unit="proof" />
        {whiskey.availability === "gone" && <Tag kind="strong">no longer sold</Tag>}
      </div>
      <dl className="whiskey-facts">
        {facts.map(([what, says]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      {whiskey.note !== "" && <p className="whiskey-note">{whiskey.note}</p>}
      <div className="form-actions">
        <Button kind="main" onClick={onEdit}>
          Change the facts
        </Button>
        <Menu
          label="More for this whiskey"
          items={[{ id: "remove", label: "Remove this whiskey", danger: true }]}
          onPick={() => void pick()}
        />
      </div>
      <TasteSection whiskey={whiskey} />
      <Section
        title="Bottles"
        action={
          <LinkButton to={`/h/${household.id}/shelf/add?whiskey=${whiskey.id}`}>
            Add a bottle of it
          </LinkButton>
        }
      >
        {vessels.state === "busy" && <Busy what="its bottles" />}
        {vessels.state === "broken" && <Broken asked={vessels} title="Its bottles could not be fetched" />}
        {vessels.state === "here" && vessels.answer.length === 0 && (
          <p className="soft">None on the shelf.</p>
        )}
        {vessels.state === "here" && (
          <ul className="whiskey-bottles">
            {vessels.answer.map((vessel) => (
              <li key={vessel.id}>
                <Link to={`/h/${household.id}/shelf/vessels/${vessel.id}`}>
                  <VesselLevel
                    kind={vessel.kind}
                    full={vessel.contents.volumeMl / vessel.capacityMl}
                    sealed={vessel.sealed}
                  />
                  <span>
                    <span className="name">{vessel.label}</span>
                    <br />
                    {printMl(vessel.contents.volumeMl)} of {printMl(vessel.capacityMl)}
                    <br />
                    <span className="soft small">{vessel.sealed ? "sealed" : "opened"}</span>
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        )}
      </Section>
    </>
  );
}

function Edit({ whiskey, onDone }: { readonly whiskey: Whiskey; readonly onDone: () => void }) {
  const household = useHousehold();
  const at = { household: household.id, whiskey: whiskey.id };
  const say = useSay("editWhiskey");
  // What was read when the editing began: the edit is against this, whatever the page has heard since.
  const [base] = useState(whiskey);
  const [typed, setTyped] = useState<TypedWhiskey>(() => asTyped(base, household.currency));
  useUnsaved(JSON.stringify(typed) !== JSON.stringify(asTyped(base, household.currency)));
  const [theirs, setTheirs] = useState<Whiskey | null>(null);

  const send = async (version: number): Promise<void> => {
    const read = readWhiskey(typed, household.currency);
    if (!read.ok) {
      say.refuse(read.issues);
      return;
    }
    const saved = await say.send({ at, body: { version, ...read.facts } });
    if (saved !== null) {
      announce("Saved");
      onDone();
    }
  };
  const stale = say.issues.some(({ code }) => code === "stale_edit");
  return (
    <Form say={say} onSend={() => send(base.version)}>
      {stale && (
        <Meanwhile
          base={base}
          theirs={theirs}
          onLook={async () => setTheirs(await api("getWhiskey", { at }))}
          onMine={(version) => send(version)}
          onTheirs={onDone}
        />
      )}
      <WhiskeyFields typed={typed} onChange={setTyped} currency={household.currency} all />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy}>
          Save
        </Button>
        <Button onClick={onDone}>Leave it as it was</Button>
      </div>
    </Form>
  );
}
