import { parseStrength } from "@partsproof/core/quantity";
import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import type { Recipe, ShelfFillAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { listed, printAbv, printMl, printParts } from "../../figures/index.ts";
import {
  announce,
  Broken,
  Busy,
  Button,
  IssueSummary,
  LiquidColumn,
  NumberHero,
  Page,
  Section,
  TextField,
} from "../../parts/index.ts";
import { go, Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { factWords, nameOf, valueWords } from "./fact-words.ts";
import "./passing.css";

/** A recipe filled from the shelf here. */
export default function FillingPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, recipe: params["recipe"] ?? "" };
  const recipe = useAsk("getRecipe", { at });
  const [water, setWater] = useState("");
  const [bottle, setBottle] = useState("");
  const [without, setWithout] = useState<readonly string[]>([]);
  const strength = water.trim() === "" ? null : parseStrength(water);
  const pouredMl = /^\d{2,5}$/u.test(bottle.trim()) ? Number(bottle) : null;
  const body = {
    ...(strength?.ok === true ? { waterTo: abv20OfStrength(strength.value) } : {}),
    ...(pouredMl === null ? {} : { pouredMl }),
    ...(without.length === 0 ? {} : { without: [...without] }),
  };
  const filled = useAsk("fillFromShelf", { at, body });
  const name = recipe.state === "here" ? recipe.answer.name : "Recipe";
  return (
    <Page
      title={`Fill ${name}`}
      heading={`Fill ${name} from your shelf`}
      wide
      back={{ to: `/h/${household.id}/recipes/${at.recipe}`, label: name }}
      lead="Which bottles of yours can stand in each line, why others cannot, and the closest to the original."
    >
      <div className="form-row">
        <TextField
          label="Water both to"
          optional
          value={water}
          onChange={setWater}
          hint="46% or 92 proof: then only what is missing to it counts"
          wrong={strength?.ok === false ? strength.issue.message : null}
        />
        <TextField
          label="To be poured in all"
          optional
          unit="mL"
          value={bottle}
          onChange={setBottle}
          hint="Each share must then be on the shelf"
          input={{ inputMode: "numeric" }}
        />
      </div>
      {without.length > 0 && (
        <p className="soft">
          {without.length} left out.{" "}
          <Button kind="quiet" onClick={() => setWithout([])}>
            Use all again
          </Button>
        </p>
      )}
      {filled.state === "busy" && <Busy what="what your shelf can do" />}
      {filled.state === "broken" && <Broken asked={filled} title="It could not be filled" />}
      {filled.state === "here" && recipe.state === "here" && (
        <Filled
          answer={filled.answer}
          recipe={recipe.answer}
          waterTo={body.waterTo ?? null}
          onWithout={(id) => setWithout([...without, id])}
        />
      )}
    </Page>
  );
}

interface FilledProps {
  readonly answer: ShelfFillAnswer;
  readonly recipe: Recipe;
  readonly waterTo: number | null;
  readonly onWithout: (id: string) => void;
}

function Filled({ answer, recipe, waterTo, onWithout }: FilledProps) {
  return (
    <>
      <Best answer={answer} recipe={recipe} waterTo={waterTo} />
      {answer.slots.map((slot, n) => (
        <SlotChoice key={slot.slot} answer={answer} n={n} recipe={recipe} onWithout={onWithout} />
      ))}
    </>
  );
}

function Best({ answer, recipe, waterTo }: Omit<FilledProps, "onWithout">) {
  const household = useHousehold();
  const say = useSay("addRecipe");
  const { best, empty, names, proven, original } = answer;
  if (best === null)
    return (
      <Section title="Nothing here can stand in it">
        <p>
          No bottle on this shelf keeps the rule of any line. Below is why, line by line, and what to look
          for.
        </p>
      </Section>
    );
  const nameAt = (slot: number): string => names[best.ids[slot] ?? ""] ?? "stays empty";
  const keep = async (then: "recipe" | "batch"): Promise<void> => {
    const slots = answer.slots.flatMap(({ parts }, n) => {
      const id = best.ids[n];
      if (id === null || id === undefined) return [];
      const line = lines(recipe)[n];
      return [
        {
          parts,
          of: { kind: "whiskey" as const, whiskeyId: id },
          ...(line?.rule === undefined || empty.length > 0 ? {} : { rule: line.rule }),
          ...(line?.reason === undefined ? {} : { reason: line.reason }),
          from: n + 1,
        },
      ];
    });
    const { restDays, oak } = recipe.latest;
    const made = await say.send({
      at: { household: household.id },
      body: {
        name: `${answer.recipe.name}, from this shelf`.slice(0, 120),
        slots,
        waterTo: waterTo === null ? recipe.latest.waterTo : { basis: "abv20", value: waterTo },
        restDays,
        oak,
        lineage: [answer.recipe],
      },
    });
    if (made === null) return;
    announce(`${made.name} written`);
    go(
      then === "recipe"
        ? `/h/${household.id}/recipes/${made.id}`
        : `/h/${household.id}/batches/new?recipe=${made.id}`,
    );
  };
  const span =
    best.distance - best.least > 0.005
      ? ` (${best.least.toFixed(1)} if what is not known turns out well)`
      : "";
  return (
    <Section title={empty.length === 0 ? "The closest from this shelf" : "As much of it as this shelf fills"}>
      <div className="filled">
        <LiquidColumn
          title={`Filled: ${answer.slots.map(({ parts }, n) => `${printParts(parts)} ${nameAt(n)}`).join(", ")}`}
          segments={answer.slots.map(({ parts }, n) => ({
            label: nameAt(n),
            amount: parts,
            amountText: String(parts),
            ...(best.ids[n] === null ? { sub: "nothing here keeps its rule", water: true } : {}),
          }))}
        />
        <div className="filled-told">
          <NumberHero
            label="Off the original by"
            value={best.distance.toFixed(1)}
            unit="of 10"
            note={
              <>
                {span !== "" && `At most${span}. `}
                {proven
                  ? "Proven: nothing on this shelf comes closer."
                  : "Not proven: it took too long to be sure that nothing comes closer."}
              </>
            }
          />
          <p>
            {printAbv(best.abv)} as mixed{original.abv !== null && `; the original ${printAbv(original.abv)}`}
            .
            {best.waterMl !== null &&
              ` ${printMl(best.waterMl)} of water for each litre of the mix makes ${waterTo} % vol.`}
            {waterTo !== null && best.waterMl === null && " It is weaker than that already: no water."}
          </p>
          <table className="offs">
            <caption className="unseen">How far off each is, in points of 10</caption>
            <thead>
              <tr>
                <th scope="col">Off by</th>
                <th scope="col">original</th>
                <th scope="col">here</th>
                <th scope="col">points</th>
              </tr>
            </thead>
            <tbody>
              {best.off.map((one) => (
                <tr key={one.what}>
                  <th scope="row">{nameOf(one.what)}</th>
                  <td>{one.original.toFixed(1)}</td>
                  <td>
                    {one.high === null
                      ? "not known"
                      : one.high - one.low < 0.05
                        ? one.low.toFixed(1)
                        : `${one.low.toFixed(1)} to ${one.high.toFixed(1)}`}
                  </td>
                  <td>{one.most.toFixed(1)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
      <IssueSummary say={say} />
      <div className="form-actions">
        <Button kind="main" busy={say.busy} onClick={() => keep("batch")}>
          Make a batch of it
        </Button>
        <Button busy={say.busy} onClick={() => keep("recipe")}>
          Keep it as a recipe
        </Button>
      </div>
      {empty.length > 0 && <Wanted answer={answer} />}
    </Section>
  );
}

/** Lines with a part: as the file numbers them. */
const lines = (recipe: Recipe): Recipe["latest"]["slots"] =>
  recipe.latest.slots.filter(({ parts }) => parts > 0);

function Wanted({ answer }: { readonly answer: ShelfFillAnswer }) {
  const [first] = answer.bought;
  return (
    <div className="wanted">
      <h3>What to look for</h3>
      <ul>
        {answer.wanted.map(({ slot, rule, profile, abv }) => (
          <li key={slot}>
            <b>Line {slot}:</b> {rule}
            {abv !== null && `, best about ${abv.toFixed(0)} % vol`}
            {Object.keys(profile).length > 0 &&
              `, with ${listed(Object.entries(profile).map(([what, value]) => `${nameOf(what)} ${value.toFixed(0)}`))} of 10`}
            .
          </li>
        ))}
      </ul>
      {first !== undefined && (
        <p>
          Of the whiskeys you know and could buy, the closest:{" "}
          {listed(
            first.ids.flatMap((id, n) =>
              answer.empty.includes(n + 1) && id !== null ? [answer.names[id] ?? id] : [],
            ),
          )}
          ; then {first.distance.toFixed(1)} of 10 off.
        </p>
      )}
      {first === undefined && answer.couldBuy > 0 && (
        <p className="soft">None of the {answer.couldBuy} whiskeys you know and could buy keeps the rules.</p>
      )}
    </div>
  );
}

interface SlotChoiceProps {
  readonly answer: ShelfFillAnswer;
  readonly n: number;
  readonly recipe: Recipe;
  readonly onWithout: (id: string) => void;
}

function SlotChoice({ answer, n, recipe, onWithout }: SlotChoiceProps) {
  const household = useHousehold();
  const { slot, parts, rule, candidates, rejected, asked } = answer.slots[n]!;
  const { names, best } = answer;
  const line = lines(recipe)[n];
  const page = (id: string) => <Link to={`/h/${household.id}/shelf/whiskeys/${id}`}>{names[id] ?? id}</Link>;
  return (
    <Section title={`Line ${slot}: ${printParts(parts)}`}>
      <p className="rule">{rule ?? "Only the whiskey that the recipe names."}</p>
      {line?.reason !== undefined && <p className="soft">Why: {line.reason}</p>}
      <div className="choices">
        <div>
          <h3>Can stand here</h3>
          {candidates.length === 0 ? (
            <p className="soft">None on this shelf.</p>
          ) : (
            <ul>
              {candidates.map((id) => (
                <li key={id}>
                  {page(id)}
                  {best?.ids[n] === id ? (
                    <span className="chosen"> stands here</span>
                  ) : (
                    <span className="soft small"> could too</span>
                  )}
                  {best?.ids[n] === id && (
                    <Button
                      kind="quiet"
                      aria-label={`Without it: ${names[id] ?? id}`}
                      onClick={() => onWithout(id)}
                    >
                      Without it
                    </Button>
                  )}
                </li>
              ))}
            </ul>
          )}
        </div>
        {asked.length > 0 && (
          <div>
            <h3>To be asked</h3>
            <ul>
              {asked.map(({ id, missing }) => (
                <li key={id}>
                  {page(id)}: nobody has written down{" "}
                  {listed([...new Set(missing.map(({ fact }) => factWords(fact)))])}.
                </li>
              ))}
            </ul>
          </div>
        )}
      </div>
      {rejected.length > 0 && (
        <details>
          <summary>
            Why {rejected.length === 1 ? "one other cannot" : `${rejected.length} others cannot`}
          </summary>
          <ul className="cannot">
            {rejected.map(({ id, breaks }) => (
              <li key={id}>
                {page(id)}:{" "}
                {breaks
                  .map(({ rule: own, value }) =>
                    own === "the named whiskey"
                      ? "it is not the named whiskey"
                      : `${own} (it is ${valueWords(value)})`,
                  )
                  .join("; ")}
              </li>
            ))}
          </ul>
        </details>
      )}
    </Section>
  );
}
