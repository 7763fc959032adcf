import type { NextFlight, Parts, WhatIf } from "@partsproof/core/learning";
import {
  lackInWords,
  lackOf,
  meantGlasses,
  plannedTrials,
  tooLittleLeft,
  type TriedHistory,
} from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { Button, IssueSummary, LinkButton, SafetyNote, Stepper } from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { inHundred, partsInWords, withNames } from "./in-words.ts";
import { flightAddress, mixAddress, vesselOf } from "./plan-address.ts";

/** What the person decided otherwise, by the place of the glass. */
export interface Overruled {
  readonly edited: Readonly<Record<number, Parts>>;
  readonly dropped: readonly number[];
}

interface GlassesProps {
  readonly history: TriedHistory;
  readonly household: string;
  /** What the recipe is called. */
  readonly recipe: string;
  readonly flight: NextFlight;
  readonly busy: boolean;
  readonly overruled: Overruled;
  readonly onOverrule: (overruled: Overruled) => void;
  /** Of the edited glasses, in their order. */
  readonly beliefs: readonly WhatIf[];
}

const KIND = {
  anchor: "From before",
  target: "The target",
  again: "Once more",
  new: "New",
} as const;

/** The proposed glasses, each with its reason; every one can be changed or left out. */
export function Glasses(props: GlassesProps) {
  const { history, household, recipe, flight, busy, overruled, onOverrule, beliefs } = props;
  const plan = useSay("addTrialSet");
  const { names, vessels } = history;
  const [open, setOpen] = useState<number | null>(null);
  const { edited, dropped } = overruled;
  const order = Object.keys(edited).map(Number);
  const mixes = history.asked.mixes ?? [];
  const glasses = flight.glasses.map((glass, at) => ({
    ...glass,
    at,
    parts: edited[at] ?? glass.parts,
    belief: edited[at] === undefined ? undefined : beliefs[order.indexOf(at)],
    own: edited[at] !== undefined,
  }));
  const poured = glasses.filter(({ at }) => !dropped.includes(at));
  const ready = poured.flatMap(({ parts }) => vesselOf(parts, vessels) ?? []);
  const missing = poured.length - ready.length;
  const lacks = lackOf(
    history.asked,
    poured.map((glass) => glass.parts),
  );
  const nameOf = (id: string): string => names[id] ?? id;
  const keep = async (): Promise<void> => {
    const body = plannedTrials(
      history,
      recipe,
      meantGlasses(flight.glasses, [
        ...dropped.map((at) => ({ glass: at + 1, parts: null })),
        ...order.flatMap((at) => {
          const own = edited[at];
          return own === undefined || dropped.includes(at) ? [] : [{ glass: at + 1, parts: own }];
        }),
      ]),
    );
    const set = await plan.send({ at: { household }, body });
    if (set !== null) go(`/h/${household}/trials/${set.id}`);
  };
  const anchor = flight.glasses.find(({ kind }) => kind === "anchor");
  return (
    <div className="next-glasses" aria-busy={busy}>
      <ol className="next-list">
        {glasses.map(({ at, kind, parts, why, belief, own }) => {
          const gone = dropped.includes(at);
          const vessel = vesselOf(parts, vessels);
          const name = `glass ${at + 1}`;
          return (
            <li key={at} className={gone ? "next-gone" : undefined}>
              <span className="next-number" aria-hidden="true">
                {at + 1}
              </span>
              <div className="next-glass">
                <p className="soft small">{own ? "Your own" : KIND[kind]}</p>
                <p className="name">{partsInWords(parts, names)}</p>
                {gone ? (
                  <p>Left out.</p>
                ) : own ? (
                  <p>
                    {belief === undefined
                      ? "Reckoning what to expect of it…"
                      : `Yours: ${anchor === undefined ? "better than an even mix" : "better than the glass from before"} with a chance of ${inHundred(belief.better)} in 100.`}
                  </p>
                ) : (
                  <p>{withNames(why, names)}</p>
                )}
                {!gone && (
                  <p className="small">
                    {vessel === null ? (
                      <LinkCell to={mixAddress(household, parts)} />
                    ) : (
                      `Ready in ${vessel.label}, ${vessel.freeMl.toFixed(0)} mL.`
                    )}
                  </p>
                )}
                {own && !gone && vessel === null && (
                  <LackHere lacks={lacks.filter(({ id }) => (parts[id] ?? 0) > 0)} nameOf={nameOf} />
                )}
                {open === at && !gone && (
                  <div className="next-edit" role="group" aria-label={`Parts of ${name}`}>
                    {mixes.map((id) => (
                      <Stepper
                        key={id}
                        showLabel
                        label={names[id] ?? id}
                        value={parts[id] ?? 0}
                        max={30}
                        onChange={(part) => {
                          const next = { ...parts, [id]: part };
                          if (Object.values(next).some((one) => one > 0))
                            onOverrule({ ...overruled, edited: { ...edited, [at]: next } });
                        }}
                      />
                    ))}
                  </div>
                )}
                <p className="next-acts no-paper">
                  {!gone && kind !== "target" && (
                    <Button
                      kind="quiet"
                      aria-expanded={open === at}
                      onClick={() => setOpen(open === at ? null : at)}
                    >
                      {open === at ? `Close the parts of ${name}` : `Change the parts of ${name}`}
                    </Button>
                  )}
                  {own && (
                    <Button
                      kind="quiet"
                      onClick={() => {
                        const { [at]: _, ...rest } = edited;
                        onOverrule({ ...overruled, edited: rest });
                      }}
                    >
                      Back to what was proposed
                    </Button>
                  )}
                  <Button
                    kind="quiet"
                    onClick={() =>
                      onOverrule({
                        ...overruled,
                        dropped: gone ? dropped.filter((one) => one !== at) : [...dropped, at],
                      })
                    }
                  >
                    {gone ? `Pour ${name} after all` : `Leave ${name} out`}
                  </Button>
                </p>
              </div>
            </li>
          );
        })}
      </ol>
      <div className="next-lack" role="status">
        {lacks.map((lack) => (
          <p key={lack.id}>{lackInWords(lack, nameOf)}</p>
        ))}
        {lacks.length > 0 && <p>It can be planned, and is poured once there is more on the shelf.</p>}
      </div>
      {flight.scarce.length > 0 && (
        <p className="soft">{tooLittleLeft(flight.scarce.map((id) => names[id] ?? id))}</p>
      )}
      <p>
        <strong>
          {flight.stop.advised ? "Another flight is hardly worth it." : "Another flight is worth it."}
        </strong>{" "}
        {flight.stop.why}
      </p>
      <IssueSummary say={plan} />
      <p className="next-acts no-paper">
        {missing === 0 || poured.length < 2 ? (
          <LinkButton
            kind="main"
            to={flightAddress(
              household,
              ready.map(({ vesselId }) => vesselId),
              history.asked.target ?? null,
            )}
          >
            Plan this flight
          </LinkButton>
        ) : (
          <Button kind="main" busy={plan.busy} disabled={busy} onClick={() => void keep()}>
            Plan this flight
          </Button>
        )}
      </p>
      <p className="soft small">
        {missing === 0
          ? "Every glass stands ready in a bottle or a batch."
          : `${ready.length} of ${poured.length} glasses stand ready; ${missing === 1 ? "one is" : `${missing} are`} to be mixed. Planning keeps the mixes as a set of bench trials with the reason of every glass: pour it bottle by bottle, then set the flight. Nothing is taken off the shelf yet.`}
      </p>
      <SafetyNote title="Before you pour">
        <p>
          A flight is alcohol. Small pours, water, and a vessel to spit into; the flight’s page says how many
          grams it holds. Never before driving, not in pregnancy, only of legal age.
        </p>
      </SafetyNote>
    </div>
  );
}

const LinkCell = ({ to }: { readonly to: string }) => (
  <LinkButton kind="plain" to={to}>
    Mix it first
  </LinkButton>
);

/** Of an own glass: with which of its whiskeys the flight goes beyond what is left. */
function LackHere({
  lacks,
  nameOf,
}: {
  readonly lacks: ReturnType<typeof lackOf>;
  readonly nameOf: (id: string) => string;
}) {
  if (lacks.length === 0) return null;
  return (
    <p className="field-issue">
      {`With it the flight asks for more than is left: ${lacks
        .map(({ id, needMl, leftMl }) => `${(needMl - leftMl).toFixed(1)} mL of ${nameOf(id)}`)
        .join(", ")} lacking.`}
    </p>
  );
}
