import type { Vessel } from "@partsproof/house/protocol";
import { useMemo, useState } from "react";
import { useAsk, useAskAll, useSay } from "../../api.ts";
import { mlDigits, printDay, printMl, printMoney, printShare } from "../../figures/index.ts";
import { contentsGive, printGive } from "../../mixing/index.ts";
import {
  announce,
  BlendFacts,
  Broken,
  Button,
  Busy,
  Dialog,
  Form,
  IssueSummary,
  LiquidColumn,
  Menu,
  NumberHero,
  Page,
  Section,
  Tag,
  TextField,
  VesselLevel,
} from "../../parts/index.ts";
import { go, Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { History } from "./history.tsx";
import { type Move, MoveLiquid } from "./move-liquid.tsx";
import "./vessel.css";

/** One bottle or other vessel: what is in it, moving liquid, its history. */
export default function VesselPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id };
  const asked = useAsk("getVessel", { at: { ...at, vessel: params["vessel"] ?? "" } });
  const vessels = useAskAll("listVessels", { at });
  const whiskeys = useAskAll("listWhiskeys", { at });
  const [move, setMove] = useState<Move | null>(null);
  const [renaming, setRenaming] = useState(false);
  const edit = useSay("editVessel");
  const remove = useSay("removeVessel");
  const labels = useMemo(
    () => new Map(vessels.answer?.map(({ id, label }) => [id, label]) ?? []),
    [vessels.answer],
  );
  const back = { to: `/h/${household.id}/shelf`, label: "Shelf" };
  if (asked.state !== "here") {
    return (
      <Page title="Vessel" back={back}>
        {asked.state === "busy" ? (
          <Busy what="the vessel" />
        ) : (
          <Broken asked={asked} title="This vessel could not be fetched" />
        )}
      </Page>
    );
  }
  const vessel = asked.answer;
  const { contents } = vessel;
  const pick = async (id: string): Promise<void> => {
    if (id === "rename") setRenaming(true);
    if (id === "open") {
      const where = { ...at, vessel: vessel.id };
      const done = await edit.send({ at: where, body: { version: vessel.version, opened: true } });
      if (done !== null) announce(`${vessel.label} opened`);
    }
    if (id === "remove") {
      const done = await remove.send({
        at: { ...at, vessel: vessel.id },
        query: { version: vessel.version },
      });
      if (done !== null) go(`/h/${household.id}/shelf`);
    }
  };
  return (
    <Page
      title={vessel.label}
      back={back}
      lead={
        <>
          {vessel.kind === "bottle" ? (vessel.sealed ? "Sealed" : "Opened") : vessel.kind}
          {vessel.openedAt !== null && `, since ${printDay(vessel.openedAt)}`}
          {vessel.whiskeyId !== null && (
            <>
              {" · "}
              <Link to={`/h/${household.id}/shelf/whiskeys/${vessel.whiskeyId}`}>about the whiskey</Link>
            </>
          )}
          {vessel.kind !== "bottle" && (
            <>
              {" · "}
              <Link to={`/h/${household.id}/shelf/vessels/${vessel.id}/kept-up`}>how it was kept up</Link>
            </>
          )}
          {vessel.batchId !== null && (
            <>
              {" · "}
              <Link to={`/h/${household.id}/batches/${vessel.batchId}`}>the batch in it</Link>
            </>
          )}
        </>
      }
      actions={
        <Menu
          label="More for this vessel"
          items={[
            { id: "rename", label: "Change its label" },
            ...(vessel.sealed && vessel.kind === "bottle" ? [{ id: "open", label: "Mark it opened" }] : []),
            { id: "remove", label: "Remove it", danger: true },
          ]}
          onPick={(id) => void pick(id)}
        />
      }
    >
      <IssueSummary say={edit} />
      <IssueSummary say={remove} />
      <div className="vessel-top">
        <VesselLevel
          kind={vessel.kind}
          size="page"
          full={contents.volumeMl / vessel.capacityMl}
          sealed={vessel.sealed}
        />
        <div className="vessel-words">
          <NumberHero
            size="hero"
            label="In it"
            value={mlDigits(contents.volumeMl)}
            unit="mL"
            note={`of ${printMl(vessel.capacityMl)}`}
          />
          {vessel.keptMl > 0 && <Tag kind="strong">{printMl(vessel.keptMl)} kept for a flight</Tag>}
          {vessel.priceMinor !== null && (
            <p className="soft">Paid {printMoney(vessel.priceMinor, household.currency)}</p>
          )}
          <div className="vessel-moves">
            <Button kind="main" disabled={contents.volumeMl <= 0} onClick={() => setMove("out")}>
              Pour out
            </Button>
            <Button onClick={() => setMove("in")}>Top up</Button>
            <Button disabled={contents.volumeMl <= 0} onClick={() => setMove("move")}>
              Move
            </Button>
          </div>
        </div>
      </div>
      {contents.abv20 !== null && (
        <Section title="What it is">
          <BlendFacts
            of={contents}
            currency={household.currency}
            perLitre={contents.cost.perLitreMinor}
            give={printGive(contentsGive(contents))}
            noVolume
          />
          {contents.composition.length > 1 && <Composition vessel={vessel} />}
        </Section>
      )}
      <History vesselId={vessel.id} labels={labels} />
      {move !== null && vessels.state === "here" && whiskeys.state === "here" && (
        <MoveLiquid
          move={move}
          vessel={vessel}
          vessels={vessels.answer}
          whiskeys={whiskeys.answer}
          onClose={() => setMove(null)}
        />
      )}
      {renaming && <Rename vessel={vessel} onClose={() => setRenaming(false)} />}
    </Page>
  );
}

function Composition({ vessel }: { readonly vessel: Vessel }) {
  return (
    <>
      <h3>By mass</h3>
      <LiquidColumn
        title={`What ${vessel.label} holds, by mass`}
        segments={vessel.contents.composition.map((one) => ({
          label: one.label,
          amount: one.shareOfMass,
          amountText: printShare(one.shareOfMass),
          sub: one.liquidId === "water" ? undefined : `${printShare(one.shareOfAlcohol)} of the alcohol`,
          water: one.liquidId === "water",
        }))}
      />
    </>
  );
}

function Rename({ vessel, onClose }: { readonly vessel: Vessel; readonly onClose: () => void }) {
  const household = useHousehold();
  const say = useSay("editVessel");
  const [label, setLabel] = useState(vessel.label);
  const send = async (): Promise<void> => {
    const done = await say.send({
      at: { household: household.id, vessel: vessel.id },
      body: { version: vessel.version, label },
    });
    if (done !== null) onClose();
  };
  return (
    <Dialog title="Change its label" open onClose={onClose}>
      <Form say={say} onSend={send}>
        <TextField
          label="Label"
          path={["label"]}
          value={label}
          onChange={setLabel}
          input={{ maxLength: 120 }}
        />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Save
          </Button>
        </div>
      </Form>
    </Dialog>
  );
}
