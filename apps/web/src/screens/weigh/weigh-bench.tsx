import { useState } from "react";
import { type Carried, carriedFrom, readVolumeOf } from "../../bench/index.ts";
import { printAbv } from "../../figures/index.ts";
import { Empty, LinkButton, Page, sentence, TextField } from "../../parts/index.ts";
import { usePlace } from "../../router/index.ts";
import { pouringOfParts, standing } from "../../weighing/index.ts";
import { SendOn } from "../reckon/send-on.tsx";
import { PouringScreen } from "./pouring.tsx";
import { Setup } from "./setup.tsx";
import { useKeptPouring } from "./use-pouring.ts";

/** A sum of the bench, poured by weight: no household needed. */
export default function WeighBench() {
  const { query } = usePlace();
  const carried = carriedFrom(query);
  const [pouring, setPouring] = useKeptPouring("bench");
  const back = { to: "/reckon", label: "Reckoner" };
  if (pouring !== null) {
    const now = standing(pouring);
    const parts = pouring.parts
      .map((_, part) => ({
        parts: now.pouredMl[part] ?? 0,
        abv20: pouring.sources.find((source) => source.part === part)?.abv20 ?? 0,
      }))
      .filter((one) => one.parts > 0);
    return (
      <Page title="Pour by weight" wide back={back}>
        <PouringScreen
          pouring={pouring}
          onChange={setPouring}
          onDrop={() => setPouring(null)}
          end={
            <>
              <p className="soft">
                These liquids are on no shelf, so nothing was taken off one. To record a batch, pour from a
                recipe.
              </p>
              <SendOn
                carried={{ parts, waterTo: pouring.waterTo, finalMl: null }}
                text={`Poured by weight at the bench: ${parts.map((one) => `${one.parts.toFixed(1)} mL at ${printAbv(one.abv20)}`).join(", ")}.`}
              />
            </>
          }
        />
      </Page>
    );
  }
  if (carried === null) {
    return (
      <Page title="Pour by weight" back={back}>
        <Empty
          title="Nothing to pour yet"
          action={
            <LinkButton kind="main" to="/reckon">
              Reckon a mix
            </LinkButton>
          }
        >
          <p>A mix from the reckoner, or a recipe, can be poured by weight.</p>
        </Empty>
      </Page>
    );
  }
  return (
    <Page
      title="Pour by weight"
      wide
      back={back}
      lead="One part at a time, by the scale. A pour that goes too far is reckoned with."
    >
      <Begin carried={carried} onStart={setPouring} />
    </Page>
  );
}

interface BeginProps {
  readonly carried: Carried;
  readonly onStart: Parameters<typeof Setup>[0]["onStart"];
}

function Begin({ carried, onStart }: BeginProps) {
  const [volume, setVolume] = useState(`${Math.round(carried.finalMl ?? 700)} mL`);
  const read = readVolumeOf(volume);
  const done = read.ok ? pouringOfParts(carried, read.value) : null;
  const plan =
    done?.ok === true
      ? {
          key: `bench ${JSON.stringify(carried)} ${volume}`,
          title: "From the bench",
          batch: null,
          parts: done.parts,
          sources: done.sources,
          waterTo: carried.waterTo,
        }
      : null;
  return (
    <Setup plan={plan} vesselMl={read.ok ? read.value : 700} onStart={onStart}>
      <p>
        {carried.parts.map((one) => `${Number(one.parts.toFixed(1))} of ${printAbv(one.abv20)}`).join(", ")}
        {carried.waterTo !== null && `, water to ${printAbv(carried.waterTo)}`}.
      </p>
      <TextField
        label="Volume at the end"
        value={volume}
        onChange={setVolume}
        wrong={read.ok ? null : read.wrong}
      />
      {done?.ok === false && (
        <p className="field-issue" role="alert">
          {sentence(done.why)} Nearest: {done.nearest}.
        </p>
      )}
    </Setup>
  );
}
