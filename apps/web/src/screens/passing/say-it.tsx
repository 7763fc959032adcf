import { ATTRIBUTES } from "@partsproof/core/sensory";
import { printCondition } from "@partsproof/core/slots";
import type { Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { Button, Choice, SelectField, Stepper, TextField } from "../../parts/index.ts";
import { type About, ABOUTS, conditionOf, type Saying, startOf } from "./saying.ts";

export interface SayItProps {
  readonly whiskey: Whiskey | null;
  /** From 1; of so many. */
  readonly slot: number;
  readonly slots: number;
  readonly currency: string;
  readonly onSay: (text: string) => void;
}

/** One sentence of a rule, put together by tapping: what it is about, then how much, or which. */
export function SayIt({ whiskey, slot, slots, currency, onSay }: SayItProps) {
  const [saying, setSaying] = useState<Saying | null>(null);
  const abouts = ABOUTS.filter(({ about }) => about !== "other" || slots > 1);
  if (saying === null)
    return (
      <div className="say" role="group" aria-label={`Say something more of line ${slot}`}>
        {abouts.map(({ about, label }) => (
          <Button key={about} onClick={() => setSaying(startOf(about, whiskey, slot))}>
            {label}
          </Button>
        ))}
      </div>
    );
  const say = (): void => {
    onSay(printCondition(conditionOf(saying)));
    setSaying(null);
  };
  return (
    <div className="say-one">
      <Saying saying={saying} onChange={setSaying} slot={slot} slots={slots} currency={currency} />
      <p className="rule" role="status">
        {printCondition(conditionOf(saying))}
      </p>
      <div className="form-actions">
        <Button kind="main" onClick={say}>
          Add it
        </Button>
        <Button onClick={() => setSaying(null)}>Not this</Button>
      </div>
    </div>
  );
}

interface SayingProps {
  readonly saying: Saying;
  readonly onChange: (saying: Saying) => void;
  readonly slot: number;
  readonly slots: number;
  readonly currency: string;
}

const UNITS: Readonly<Partial<Record<About, readonly [label: string, most: number]>>> = {
  strength: ["% vol", 100],
  age: ["years", 99],
  price: ["a litre", 9999],
  grain: ["% of the mash", 100],
  taste: ["of 10", 10],
};
const KINDS = ["malt", "pot still", "rye", "wheat", "corn", "bourbon", "grain", "blend", "other"];
const WOODS = ["American oak", "European oak", "Japanese oak", "other oak", "other wood"];
const options = (names: readonly string[]) =>
  names.map((name) => (
    <option key={name} value={name}>
      {name}
    </option>
  ));

function Saying({ saying, onChange, slot, slots, currency }: SayingProps) {
  const unit = UNITS[saying.about];
  return (
    <>
      {saying.about === "grain" && (
        <TextField
          label="Which grain"
          value={saying.name}
          onChange={(name) => onChange({ ...saying, name: name || "rye" })}
        />
      )}
      {saying.about === "taste" && (
        <SelectField
          label="Which taste"
          value={saying.name}
          onChange={(name) => onChange({ ...saying, name })}
          options={ATTRIBUTES.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        />
      )}
      {unit !== undefined && "side" in saying && (
        <>
          <Choice
            label="How much"
            value={saying.side}
            onChange={(side) => onChange({ ...saying, side })}
            options={[
              { value: "least", label: "at least" },
              { value: "most", label: "at most" },
            ]}
          />
          <Stepper
            label={saying.about === "price" ? `${currency} ${unit[0]}` : unit[0]}
            showLabel
            max={unit[1]}
            value={saying.value}
            onChange={(value) => onChange({ ...saying, value })}
          />
        </>
      )}
      {(saying.about === "wood" || saying.about === "held") && (
        <>
          <Choice
            label={saying.about === "wood" ? "Its casks are" : "Its casks held"}
            value={saying.how}
            onChange={(how) => onChange({ ...saying, how })}
            options={[
              { value: "only", label: "only" },
              { value: "no", label: "not" },
              { value: "some", label: "some of them" },
            ]}
          />
          {saying.about === "wood" ? (
            <SelectField
              label="Which wood"
              value={saying.name}
              onChange={(name) => onChange({ ...saying, name })}
              options={options(WOODS)}
            />
          ) : (
            <TextField
              label="What they held"
              hint="nothing, for a new cask"
              value={saying.name}
              onChange={(name) => onChange({ ...saying, name: name || "nothing" })}
            />
          )}
        </>
      )}
      {(saying.about === "kind" || saying.about === "place") && (
        <>
          <Choice
            label={saying.about === "kind" ? "It is" : "It comes from"}
            value={saying.not ? "not" : "is"}
            onChange={(is) => onChange({ ...saying, not: is === "not" })}
            options={[
              { value: "is", label: saying.about === "kind" ? "this" : "there" },
              { value: "not", label: saying.about === "kind" ? "anything but this" : "anywhere but there" },
            ]}
          />
          {saying.about === "kind" ? (
            <SelectField
              label="Which kind"
              value={saying.name}
              onChange={(name) => onChange({ ...saying, name })}
              options={options(KINDS)}
            />
          ) : (
            <TextField
              label="Which place"
              hint="A region or a country"
              value={saying.name}
              onChange={(name) => onChange({ ...saying, name: name || "Europe" })}
              input={{ maxLength: 120 }}
            />
          )}
        </>
      )}
      {saying.about === "other" && (
        <>
          <Choice
            label="Not the same"
            value={saying.what}
            onChange={(what) => onChange({ ...saying, what })}
            options={[
              { value: "distillery", label: "distillery" },
              { value: "maker", label: "maker" },
            ]}
          />
          <SelectField
            label="As what stands in"
            value={String(saying.slot)}
            onChange={(other) => onChange({ ...saying, slot: Number(other) })}
            options={Array.from({ length: slots }, (_, n) => n + 1)
              .filter((other) => other !== slot)
              .map((other) => (
                <option key={other} value={String(other)}>
                  line {other}
                </option>
              ))}
          />
        </>
      )}
    </>
  );
}
