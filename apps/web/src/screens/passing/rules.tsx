import { parseRule, printRule } from "@partsproof/core/slots";
import type { Recipe, ShelfLoosenAnswer } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { listed, printParts } from "../../figures/index.ts";
import { slotKey } from "../../mixing/index.ts";
import {
  announce,
  AreaField,
  Broken,
  Busy,
  Button,
  Choice,
  Form,
  Page,
  Section,
  SelectField,
  Tick,
} from "../../parts/index.ts";
import { go, useUnsaved } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import type { ScreenProps } from "../screen.ts";
import { RuleOfLine } from "./rule-of-line.tsx";
import "./passing.css";

type Slot = Recipe["latest"]["slots"][number];

/** The rules of a recipe's lines, and why each stands there: what others need to fill it from their own shelf. */
export default function RulesPage({ params }: ScreenProps) {
  const household = useHousehold();
  const at = { household: household.id, recipe: params["recipe"] ?? "" };
  const recipe = useAsk("getRecipe", { at });
  const cellar = useCellar();
  const broken = recipe.state === "broken" ? recipe : cellar.state === "broken" ? cellar : null;
  const name = recipe.state === "here" ? recipe.answer.name : "Recipe";
  return (
    <Page
      title={`Rules of ${name}`}
      back={{ to: `/h/${household.id}/recipes/${at.recipe}`, label: name }}
      lead="Bottles differ from shelf to shelf. Say of each line what matters about it, and anybody can fill it from theirs."
    >
      {broken !== null && <Broken asked={broken} title="The recipe could not be fetched" />}
      {broken === null && (recipe.state !== "here" || cellar.state !== "here") && <Busy what="the recipe" />}
      {recipe.state === "here" && cellar.state === "here" && (
        <Rules key={recipe.answer.version} recipe={recipe.answer} cellar={cellar.answer} />
      )}
    </Page>
  );
}

function Rules({ recipe, cellar }: { readonly recipe: Recipe; readonly cellar: Cellar }) {
  const household = useHousehold();
  const at = { household: household.id, recipe: recipe.id };
  const say = useSay("addRecipeVersion");
  const [slots, setSlots] = useState<readonly Slot[]>(recipe.latest.slots);
  const changed = JSON.stringify(slots) !== JSON.stringify(recipe.latest.slots);
  const saved = useUnsaved(changed);
  const set = (n: number, change: (slot: Slot) => Slot): void =>
    setSlots(slots.map((slot, at_) => (at_ === n ? change(slot) : slot)));
  const ruled = (n: number, rule: string): void =>
    set(n, ({ rule: _, ...slot }) => (rule === "" ? slot : { ...slot, rule }));
  const send = async (): Promise<void> => {
    const { number: _, createdAt: __, ...body } = recipe.latest;
    const made = await say.send({
      at,
      body: { version: recipe.version, ...body, slots: slots.map((slot) => tidy(slot)) },
    });
    if (made === null) return;
    saved();
    announce(`Saved as version ${made.latest.number}`);
    go(`/h/${household.id}/recipes/${recipe.id}`);
  };
  return (
    <Form say={say} onSend={send}>
      {slots.map((slot, n) => {
        const { of } = slot;
        const whiskey =
          of.kind === "whiskey" ? (cellar.whiskeys.find(({ id }) => id === of.whiskeyId) ?? null) : null;
        return (
          // oxlint-disable-next-line react/no-array-index-key -- lines keep their places here
          <Section key={n} title={`Line ${n + 1}: ${printParts(slot.parts)}`}>
            <p>{lineName(slot, cellar)}</p>
            <RuleOfLine
              slot={n + 1}
              slots={slots.length}
              whiskey={whiskey}
              currency={household.currency}
              rule={slot.rule ?? ""}
              onChange={(rule) => ruled(n, rule)}
            />
            <AreaField
              label="Why it stands here"
              optional
              rows={2}
              path={["slots", n, "reason"]}
              value={slot.reason ?? ""}
              onChange={(reason) =>
                set(n, ({ reason: _, ...rest }) => (reason === "" ? rest : { ...rest, reason }))
              }
            />
            {slot.rule !== undefined &&
              (of.kind === "whiskey" || (of.kind === "open" && of.named === null)) && (
                <Tick
                  label="Name no whiskey: anything that keeps the rule"
                  value={of.kind === "open"}
                  onChange={(open) =>
                    set(n, (own) => ({
                      ...own,
                      of: open ? { kind: "open", named: null } : (recipe.latest.slots[n]?.of ?? own.of),
                    }))
                  }
                />
              )}
          </Section>
        );
      })}
      <Loosest recipe={recipe} onTake={ruled} />
      <div className="form-actions">
        <Button kind="main" type="submit" busy={say.busy} disabled={!changed}>
          Save as the next version
        </Button>
      </div>
    </Form>
  );
}

/** The rule in the one way it prints, where it can be read; else as typed, for the house to say what is wrong. */
function tidy(slot: Slot): Slot {
  if (slot.rule === undefined) return slot;
  const read = parseRule(slot.rule);
  return read.ok ? { ...slot, rule: printRule(read.rule) } : slot;
}

function lineName({ of }: Slot, cellar: Cellar): string {
  if (of.kind !== "open")
    return cellar.stocks.get(slotKey(of))?.label ?? "a whiskey that is not known any more";
  if (of.named === null) return "Open: no whiskey is named.";
  return `${[of.named.maker, of.named.name, of.named.release].filter(Boolean).join(" ")}, which is not among yours`;
}

const DISTANCES = ["0.5", "1", "1.5", "2", "3"] as const;

/** Finds the loosest rule of each line that keeps the result within a distance, as far as the household's whiskeys tell. */
function Loosest({
  recipe,
  onTake,
}: {
  readonly recipe: Recipe;
  readonly onTake: (n: number, rule: string) => void;
}) {
  const household = useHousehold();
  const say = useSay("loosenFromShelf");
  const [within, setWithin] = useState<string>("1");
  const [changing, setChanging] = useState<"one" | "all">("one");
  const [found, setFound] = useState<ShelfLoosenAnswer | null>(null);
  const find = async (): Promise<void> => {
    const at = { household: household.id, recipe: recipe.id };
    setFound(await say.send({ at, body: { within: Number(within), changing } }));
  };
  return (
    <Section title="Find the rules">
      <p className="soft">
        Of the whiskeys you know, which could stand in a line and leave the result near? The loosest rule that
        lets in these and none that is too far, line by line. It is of the recipe as it is saved.
      </p>
      <div className="form-row">
        <SelectField
          label="Within"
          value={within}
          onChange={setWithin}
          options={DISTANCES.map((one) => (
            <option key={one} value={one}>
              {one} of 10
            </option>
          ))}
        />
        <Choice
          label="When filled anew"
          value={changing}
          onChange={setChanging}
          options={[
            { value: "one", label: "one line" },
            { value: "all", label: "all at once" },
          ]}
        />
      </div>
      {say.issues.map(({ message }) => (
        <p key={message} className="field-issue" role="alert">
          {message}
        </p>
      ))}
      <div className="form-actions">
        <Button onClick={find} busy={say.busy}>
          Find the loosest rules
        </Button>
      </div>
      {found !== null && (
        <ol className="lines" aria-label="The loosest rules">
          {found.slots.map((slot) => (
            <li key={slot.slot}>
              <p>
                <b>Line {slot.slot}</b> {slot.named}
              </p>
              <p className="rule">
                {slot.rule ?? "No rule of four sentences holds: only the whiskey itself."}
              </p>
              <p className="soft small">{letsIn(slot, found.names)}</p>
              {slot.rule !== null && slot.rule !== "anything" && (
                <Button
                  aria-label={`Take this rule for line ${slot.slot}`}
                  onClick={() => onTake(slot.slot - 1, slot.rule ?? "")}
                >
                  Take this rule
                </Button>
              )}
            </li>
          ))}
        </ol>
      )}
      {found !== null && (
        <p className="soft small">
          All lines filled anew at once, these rules keep it within {found.together.toFixed(1)} of 10. That is
          of the whiskeys you know; a whiskey that nobody here knows may keep a rule and still taste
          otherwise.
        </p>
      )}
    </Section>
  );
}

function letsIn(slot: ShelfLoosenAnswer["slots"][number], names: Readonly<Record<string, string>>): string {
  const called = (ids: readonly string[]): string => listed(ids.map((id) => names[id] ?? id));
  const parts = [
    slot.lets.length === 0
      ? "It lets in none of your other whiskeys."
      : `It lets in ${called(slot.lets)}${slot.farthest === null ? "" : `, the farthest ${slot.farthest.toFixed(1)} off`}.`,
    ...(slot.keepsOut.length === 0 ? [] : [`It keeps out ${slot.keepsOut.length} that would be too far.`]),
    ...(slot.keepsOutNear.length === 0
      ? []
      : [`It also keeps out ${called(slot.keepsOutNear)}, which would be near.`]),
    ...(slot.notJudged.length === 0
      ? []
      : [`Of ${slot.notJudged.length} too little is known to judge them.`]),
    ...(slot.proven ? [] : ["Not proven: it took too long to try all."]),
  ];
  return parts.join(" ");
}
