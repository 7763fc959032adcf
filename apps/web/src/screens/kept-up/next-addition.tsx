import { parseVolume } from "@partsproof/core/quantity";
import type { AnswerOf, KeptUp } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAskAll, useSay } from "../../api.ts";
import { listed, mlDigits, printAbv, printAge, printMl } from "../../figures/index.ts";
import { whiskeyLabel } from "../../mixing/index.ts";
import { Button, Form, LinkButton, Section, SelectField, TextField } from "../../parts/index.ts";
import { keep, kept } from "../../session/index.ts";

type Answer = AnswerOf<"nextAddition">;

/** Keeps the bottle near a whiskey: which addition from the shelf brings it closest. */
export function NextAddition({ told, household }: { readonly told: KeptUp; readonly household: string }) {
  const key = `near.${told.vesselId}`;
  const whiskeys = useAskAll("listWhiskeys", { at: { household } });
  const known = (whiskeys.answer ?? []).filter(({ profile }) => profile !== null);
  const [like, setLike] = useState(() => kept(key) ?? "");
  const room = Math.max(0, told.capacityMl - told.now.volumeMl);
  const [amount, setAmount] = useState(() => `${Math.floor(room)} mL`);
  const [answer, setAnswer] = useState<Answer | null>(null);
  const say = useSay("nextAddition");
  const chosen = known.some(({ id }) => id === like) ? like : "";
  const send = async (): Promise<void> => {
    const read = parseVolume(amount);
    if (!read.ok || chosen === "") {
      const limit = "a whiskey to stay near";
      say.refuse([
        ...(read.ok ? [] : [{ ...read.issue, path: ["addMl"] }]),
        ...(chosen === ""
          ? [
              {
                code: "like_missing",
                path: ["like"],
                limit,
                received: null,
                message: `this requires ${limit}, got none`,
              },
            ]
          : []),
      ]);
      return;
    }
    keep(key, chosen);
    setAnswer(
      await say.send({
        at: { household, vessel: told.vesselId },
        body: { like: chosen, addMl: read.value },
      }),
    );
  };
  if (room < 1)
    return (
      <Section title="What to add next">
        <p className="soft">It is full. Pour from it first.</p>
      </Section>
    );
  return (
    <Section title="What to add next">
      <Form say={say} onSend={() => void send()}>
        <SelectField
          label="Keep it near"
          path={["like"]}
          value={chosen}
          onChange={setLike}
          hint={
            known.length === 0
              ? "Say first what your whiskeys taste of."
              : "By what you said it tastes of; the same search as for recipes."
          }
          options={
            <>
              <option value="">Choose a whiskey</option>
              {known.map((one) => (
                <option key={one.id} value={one.id}>
                  {whiskeyLabel(one)}
                </option>
              ))}
            </>
          }
        />
        <TextField
          label="Room to fill"
          path={["addMl"]}
          value={amount}
          onChange={setAmount}
          hint={`At most ${printMl(room)}`}
        />
        <div className="form-actions">
          <Button type="submit" busy={say.busy}>
            What comes closest
          </Button>
        </div>
      </Form>
      {answer !== null && <Found answer={answer} household={household} vessel={told.vesselId} />}
    </Section>
  );
}

const few = (x: number): string => x.toFixed(1);

interface FoundProps {
  readonly answer: Answer;
  readonly household: string;
  readonly vessel: string;
}

function Found({ answer, household, vessel }: FoundProps) {
  const { recipes, before, unknown, withoutProfile } = answer;
  if (recipes.length === 0)
    return <p className="soft">Nothing on the shelf is enough for so much. Try less.</p>;
  return (
    <>
      <p aria-live="polite">
        {before === null ? "It is empty." : `Now it is ${few(before)} off, on the scale of 0 to 10.`}
        {answer.cannotTellApart > 1 &&
          ` The first ${answer.cannotTellApart} cannot be told apart on what is known.`}
      </p>
      <ol className="kept-next">
        {recipes.slice(0, 3).map(({ parts, distance, after }) => (
          <li key={parts.map(({ whiskeyId, parts: n }) => `${n} ${whiskeyId}`).join()}>
            <p>
              {listed(parts.map(({ label, ml }) => `${mlDigits(ml)} mL ${label}`))}: <b>{few(distance)}</b>{" "}
              off
            </p>
            <p className="soft small">
              then {printMl(after.volumeMl)}
              {after.abv20 !== null && ` at ${printAbv(after.abv20)}`}, youngest{" "}
              {printAge(after.youngestAge.years)}
              {parts.some(({ from }) => from.length > 0) &&
                `; out of ${listed([...new Set(parts.flatMap(({ from }) => from.map(({ label }) => label)))])}`}
            </p>
          </li>
        ))}
      </ol>
      {unknown.length > 0 && (
        <p className="soft small">
          Not counted, as nobody has said it of all that is in the bottle: {unknown.length} of what the target
          tastes of.
        </p>
      )}
      {withoutProfile.length > 0 && (
        <p className="soft small">
          Left out, as nobody has said what they taste of: {listed(withoutProfile.map(({ label }) => label))}.
        </p>
      )}
      <LinkButton to={`/h/${household}/shelf/vessels/${vessel}`}>Top it up</LinkButton>
    </>
  );
}
