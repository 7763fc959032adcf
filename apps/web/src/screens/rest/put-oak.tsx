import type { Rest, WoodSpecies } from "@partsproof/house/protocol";
import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { printMl } from "../../figures/index.ts";
import {
  announce,
  Button,
  Form,
  NumberHero,
  Section,
  SelectField,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import { dayTyped, instantOfDay } from "./typed-day.ts";
import { doseSeen, readWood, type ShapeName, SHAPES, type TypedWood } from "./typed-wood.ts";

const SPECIES: readonly WoodSpecies[] = [
  "American oak",
  "European oak",
  "Japanese oak",
  "other oak",
  "not known",
];

const SAID: Readonly<
  Record<ShapeName, { readonly name: string; readonly lengths: string; readonly example: string }>
> = {
  stick: { name: "a stick", lengths: "Width, thickness and length", example: "10x10x160mm" },
  stave: { name: "a piece of stave", lengths: "Width, thickness and length", example: "20x7x100mm" },
  cube: { name: "a cube", lengths: "Its side", example: "10mm" },
  chips: { name: "chips, weighed", lengths: "What one measures", example: "10x5x2mm" },
  spiral: { name: "a spiral", lengths: "Outer, core, fin, pitch and length", example: "25x10x3x8x100mm" },
  area: { name: "something else, of known area", lengths: "", example: "" },
};

interface PutOakProps {
  readonly rest: Rest;
  readonly onDone?: () => void;
}

/** Puts wood in: what it measures, and what that comes to beside a cask while it is typed. */
export function PutOak({ rest, onDone }: PutOakProps) {
  const household = useHousehold();
  const now = useNow();
  const at = { household: household.id, rest: rest.id };
  const say = useSay("putOakIn");
  const vessel = useAsk("getVessel", { at: { household: household.id, vessel: rest.vesselId } });
  const volumeMl = vessel.answer?.contents.volumeMl ?? 0;
  const [typed, setTyped] = useState<TypedWood>({
    shape: "stick",
    size: SAID.stick.example,
    area: "",
    count: 1,
    grams: "",
  });
  const [species, setSpecies] = useState<WoodSpecies>("American oak");
  const [toast, setToast] = useState("");
  const [use, setUse] = useState(1);
  const [day, setDay] = useState(dayTyped(now));
  const set = (some: Partial<TypedWood>): void => setTyped((before) => ({ ...before, ...some }));
  const read = readWood(typed);
  const dose = read.ok ? doseSeen(read.wood, volumeMl) : null;
  const send = async (): Promise<void> => {
    if (!read.ok) return say.refuse([read.issue]);
    const body = { ...read.wood, species, toast, use, ...instantOfDay(day, now) };
    const told = await say.send({ at, body });
    if (told === null) return undefined;
    announce("The wood is in");
    return onDone?.();
  };
  const { lengths, example } = SAID[typed.shape];
  return (
    <Section title={rest.oak.length === 0 ? "Put the oak in" : "Put more wood in"}>
      <Form say={say} onSend={send} label="Put the oak in">
        <SelectField
          label="It is"
          value={typed.shape}
          onChange={(to) => set({ shape: to as ShapeName, size: SAID[to as ShapeName].example })}
          options={SHAPES.map((shape) => (
            <option key={shape} value={shape}>
              {SAID[shape].name}
            </option>
          ))}
        />
        <div className="form-row">
          {typed.shape === "area" ? (
            <TextField
              label="Contact area"
              unit="cm²"
              path={["areaCm2"]}
              value={typed.area}
              onChange={(area) => set({ area })}
              input={{ inputMode: "decimal" }}
            />
          ) : (
            <TextField
              label={lengths}
              path={["piece"]}
              value={typed.size}
              onChange={(size) => set({ size })}
              hint={`Such as ${example}`}
            />
          )}
          {typed.shape !== "area" && typed.shape !== "chips" && (
            <Stepper
              label="How many"
              showLabel
              value={typed.count}
              min={1}
              max={99}
              path={["count"]}
              onChange={(count) => set({ count })}
            />
          )}
          <TextField
            label="Weighs"
            optional={typed.shape !== "chips"}
            unit="g"
            path={["grams"]}
            value={typed.grams}
            onChange={(grams) => set({ grams })}
            input={{ inputMode: "decimal" }}
          />
        </div>
        <div className="numbers" aria-live="polite">
          <NumberHero
            label="Contact, a litre"
            value={dose === null ? "–" : dose.areaPerLitre.toFixed(0)}
            unit={dose === null ? "" : "cm²"}
            note={volumeMl > 0 ? `in the ${printMl(volumeMl)} it lies in` : "the vessel is empty"}
          />
          <NumberHero
            label="Against a 200 L cask"
            value={dose === null ? "–" : dose.caskRatio.toFixed(2)}
            unit={dose === null ? "" : "times"}
            note={
              dose === null
                ? "its lengths say"
                : `${dose.caskRatioLow.toFixed(2)} to ${dose.caskRatioHigh.toFixed(2)}: a cask has 92 ± 5 cm²/L`
            }
          />
        </div>
        <p className="soft small">
          The same contact is not the same taste in the same time: small wood gives faster.
        </p>
        <div className="form-row">
          <SelectField
            label="Species"
            path={["species"]}
            value={species}
            onChange={(to) => setSpecies(to as WoodSpecies)}
            options={SPECIES.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          />
          <TextField
            label="Toast or char"
            optional
            path={["toast"]}
            value={toast}
            onChange={setToast}
            hint="As its seller says it: medium toast"
            input={{ maxLength: 120 }}
          />
          <Stepper
            label="Its use: 1 is new wood"
            showLabel
            value={use}
            min={1}
            max={5}
            path={["use"]}
            onChange={setUse}
          />
          <TextField label="In since" path={["at"]} value={day} onChange={setDay} input={{ type: "date" }} />
        </div>
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            The oak is in
          </Button>
          {onDone !== undefined && <Button onClick={onDone}>Leave it</Button>}
        </div>
      </Form>
    </Section>
  );
}
