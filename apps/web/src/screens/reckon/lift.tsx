import { readStrengthOf, readVolumeOf, reckonLift, reckonRoom } from "../../bench/index.ts";
import { mlDigits, printAbv, printG, printMl } from "../../figures/index.ts";
import { Choice, NumberHero, Section } from "../../parts/index.ts";
import { Blame, Figure, NoAnswer, Said, Waiting } from "./answer.tsx";
import { all, type JobProps } from "./job.ts";
import { ReadField } from "./read-field.tsx";
import { SendOn } from "./send-on.tsx";

/** Which second bottle, and how much of it, takes this one to a strength. */
export function Lift({ typed, set, tools }: JobProps) {
  const { fields } = typed;
  const byStrength = fields.liftKnow !== "room";
  const read = {
    from: readStrengthOf(fields.liftFrom),
    have: readVolumeOf(fields.liftHave),
    to: readStrengthOf(fields.liftTo),
    known: byStrength ? readStrengthOf(fields.liftOther) : readVolumeOf(fields.liftRoom),
  };
  return (
    <div className="reckon">
      <div className="reckon-in">
        <ReadField
          label="This bottle is at"
          value={fields.liftFrom}
          onChange={(liftFrom) => set({ liftFrom })}
          read={read.from}
        />
        <ReadField
          label="There is this much of it"
          value={fields.liftHave}
          onChange={(liftHave) => set({ liftHave })}
          read={read.have}
        />
        <ReadField
          label="Strength wanted"
          value={fields.liftTo}
          onChange={(liftTo) => set({ liftTo })}
          read={read.to}
        />
        <Choice
          label="You know"
          value={byStrength ? "strength" : "room"}
          onChange={(liftKnow) => set({ liftKnow })}
          options={[
            { value: "strength", label: "how strong the other is" },
            { value: "room", label: "how much room there is" },
          ]}
        />
        {byStrength ? (
          <ReadField
            label="The other bottle is at"
            value={fields.liftOther}
            onChange={(liftOther) => set({ liftOther })}
            read={read.known}
          />
        ) : (
          <ReadField
            label="Room for"
            value={fields.liftRoom}
            onChange={(liftRoom) => set({ liftRoom })}
            read={read.known}
          />
        )}
      </div>
      <Outcome read={all(read)} byStrength={byStrength} tools={tools} />
    </div>
  );
}

interface OutcomeProps {
  readonly read: Readonly<Record<"from" | "have" | "to" | "known", number>> | null;
  readonly byStrength: boolean;
  readonly tools: JobProps["tools"];
}

function Outcome({ read, byStrength, tools }: OutcomeProps) {
  const title = byStrength ? "How much of the other" : "How strong the other must be";
  if (read === null)
    return <Waiting title={title}>Waiting for strengths and amounts that can be read.</Waiting>;
  const { from, have: haveMl, to, known } = read;
  if (!byStrength) {
    const done = reckonRoom({ haveMl, from, to, roomMl: known, tools });
    if (!done.ok) return <NoAnswer title={title} no={done} />;
    return (
      <Section title={title} className="reckon-out">
        <Said>
          <Figure
            hero
            label={`${printMl(known)} of it takes ${printMl(haveMl)} to ${printAbv(to)}`}
            told={done.strength}
            unit="% vol"
          />
        </Said>
        <Blame told={done.strength} />
        <Sent from={from} other={done.strength.exact} haveMl={haveMl} addMl={known} to={to} />
      </Section>
    );
  }
  const done = reckonLift({ haveMl, from, to, other: known, tools });
  if (!done.ok) return <NoAnswer title={title} no={done} />;
  return (
    <Section title={title} className="reckon-out">
      <Said>
        <NumberHero
          size="hero"
          label={`Into ${printMl(haveMl)} of ${printAbv(from)}`}
          value={mlDigits(done.addMl)}
          unit={`mL of ${printAbv(known)}`}
          note={`${printG(done.addG)} by weight`}
        />
      </Said>
      <div className="numbers">
        <Figure label="Ends at" told={done.strength} unit="% vol" note="measured with what you have" />
        <NumberHero label="Comes to" value={mlDigits(done.finalMl)} unit="mL" />
      </div>
      <Blame told={done.strength} />
      <Sent from={from} other={known} haveMl={haveMl} addMl={done.addMl} to={to} />
    </Section>
  );
}

interface SentProps {
  readonly from: number;
  readonly other: number;
  readonly haveMl: number;
  readonly addMl: number;
  readonly to: number;
}

function Sent({ from, other, haveMl, addMl, to }: SentProps) {
  const parts = [
    { parts: haveMl, abv20: from },
    { parts: addMl, abv20: other },
  ].filter((one) => one.parts > 0);
  return (
    <SendOn
      carried={{ parts, waterTo: null, finalMl: null }}
      text={`What if, at the bench: ${printMl(haveMl)} at ${printAbv(from)} with ${printMl(addMl)} at ${printAbv(other)} makes ${printAbv(to)}.`}
    />
  );
}
