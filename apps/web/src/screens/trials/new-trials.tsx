import { useState } from "react";
import { useAsk, useSay } from "../../api.ts";
import { type Cellar, useCellar } from "../../cellar/index.ts";
import { printAbv, printDay, printMl } from "../../figures/index.ts";
import { CrossGlyph } from "../../parts/glyphs.tsx";
import {
  announce,
  Broken,
  Busy,
  Button,
  Choice,
  Form,
  IssuesOfWhole,
  Page,
  SafetyNote,
  Section,
  SelectField,
  Stepper,
  TextField,
} from "../../parts/index.ts";
import { go } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";
import { useSettled } from "../batches/use-settled.ts";
import { DrawList } from "./draw-list.tsx";
import { TrialGlasses } from "./trial-glasses.tsx";
import {
  chooses,
  draftOf,
  newTrials,
  previewOf,
  readTrials,
  stillWrong,
  termsOf,
  type TypedTrials,
} from "./typed-trials.ts";
import "./trials.css";

/** Plans a set of small mixes of the shelf and shows, while it is chosen, what is to be poured. */
export default function NewTrials() {
  const household = useHousehold().id;
  const cellar = useCellar();
  return (
    <Page
      title="Plan bench trials"
      wide
      back={{ to: `/h/${household}/trials`, label: "Bench trials" }}
      lead="Which few small mixes tell most, and how to pour them with the least waste."
    >
      {cellar.state === "busy" && <Busy what="the shelf" />}
      {cellar.state === "broken" && <Broken asked={cellar} title="The shelf could not be fetched" />}
      {cellar.state === "here" && <Plan cellar={cellar.answer} household={household} />}
    </Page>
  );
}

const MOST_PARTS = 6;

function Plan({ cellar, household }: { readonly cellar: Cellar; readonly household: string }) {
  const say = useSay("addTrialSet");
  const [typed, setTyped] = useState<TypedTrials>(() =>
    newTrials(`Bench of ${printDay(new Date().toISOString())}`),
  );
  const set = (change: Partial<TypedTrials>): void => setTyped({ ...typed, ...change });
  const settled = useSettled(typed, 300);
  const read = readTrials(settled);
  const asked = read.ok ? previewOf(settled, read, cellar.stocks) : null;
  const preview = useAsk("planTrials", asked === null ? null : { body: asked });
  const send = async (): Promise<void> => {
    const now = readTrials(typed);
    if (!now.ok) {
      say.refuse(now.issues);
      return;
    }
    const kept = await say.send({ at: { household }, body: draftOf(typed, now) });
    if (kept === null) return;
    announce(`${kept.name} kept`);
    go(`/h/${household}/trials/${kept.id}`, { replace: true });
  };
  return (
    <Form
      say={{ issues: stillWrong(typed, say.issues), tries: say.tries }}
      onSend={() => void send()}
      className="trial-plan"
    >
      <div className="form">
        <TextField
          label="Name of the set"
          path={["name"]}
          value={typed.name}
          onChange={(name) => set({ name })}
          input={{ maxLength: 120 }}
        />
        <Parts typed={typed} set={set} cellar={cellar} />
        <Choice
          label="Which mixes"
          path={["plan"]}
          value={typed.plan}
          onChange={(plan) => set({ plan })}
          options={[
            { value: "centroid", label: "Each alone, halves, thirds" },
            { value: "lattice", label: "An even grid" },
            { value: "I", label: "The few that predict best" },
            { value: "D", label: "The few that tell parts apart best" },
          ]}
          hint={
            chooses(typed)
              ? "Chosen by exchange (I- or D-optimal) for the model below."
              : "Whole plans by Scheffé; shares cannot be bounded in them."
          }
        />
        {typed.plan === "lattice" && (
          <Stepper
            label="Steps of the grid"
            showLabel
            value={typed.steps}
            min={1}
            max={6}
            path={["steps"]}
            onChange={(steps) => set({ steps })}
          />
        )}
        {chooses(typed) && (
          <>
            <SelectField
              label="To be fitted afterwards"
              path={["model"]}
              value={typed.model}
              onChange={(model) => set({ model: model as TypedTrials["model"] })}
              options={
                <>
                  <option value="linear">Each part for itself</option>
                  <option value="quadratic">And what pairs do together</option>
                  <option value="special-cubic">And what three do together</option>
                </>
              }
            />
            <Stepper
              label="How many trials"
              showLabel
              value={typed.trials}
              min={1}
              max={20}
              path={["trials"]}
              onChange={(trials) => set({ trials })}
            />
            <p className="field-hint">
              This model has {termsOf(typed.model, typed.parts.length)} terms: at least as many trials. More
              than ten are no single flight.
            </p>
          </>
        )}
        <TextField
          label="A trial measures at least"
          path={["volumeMl"]}
          value={typed.volume}
          onChange={(volume) => set({ volume })}
          hint="20 to 100 mL"
        />
        <Choice
          label="Measured with"
          value={typed.tool}
          onChange={(tool) => set({ tool, step: tool === "syringe" ? "0.5" : "0.1" })}
          options={[
            { value: "syringe", label: "A syringe" },
            { value: "scale", label: "A scale" },
          ]}
        />
        <TextField
          label="Its smallest step"
          path={[typed.tool === "syringe" ? "syringeMl" : "scaleG"]}
          unit={typed.tool === "syringe" ? "mL" : "g"}
          value={typed.step}
          onChange={(step) => set({ step })}
          input={{ inputMode: "decimal" }}
        />
        <div className="form-actions">
          <Button kind="main" type="submit" busy={say.busy}>
            Keep this set
          </Button>
          <p className="soft small">Nothing is poured yet.</p>
        </div>
      </div>
      <div className="form">
        {asked === null && (
          <p className="soft">Choose at least two whiskeys, each once: the mixes stand here at once.</p>
        )}
        {preview.state === "busy" && asked !== null && <Busy what="the plan" />}
        {preview.state === "broken" && asked !== null && (
          <Broken asked={preview} title="These trials cannot be planned" />
        )}
        {preview.state === "here" && asked !== null && (
          <>
            <Section title={`${preview.answer.trials.length} mixes`}>
              <TrialGlasses plan={preview.answer} />
            </Section>
            <Section title="Bottle by bottle">
              <p>
                {printMl(preview.answer.totalMl)} in all, {printMl(preview.answer.overMl)} more than the
                trials measure.
              </p>
              <DrawList plan={preview.answer} />
              {preview.answer.notes.map((note) => (
                <p key={note} className="soft">
                  {note}
                </p>
              ))}
            </Section>
            <SafetyNote title="Small glasses add up">
              <p>
                A flight of them is for tasting and spitting, with water beside it; never before driving, not
                in pregnancy, nobody under the legal age.
              </p>
            </SafetyNote>
          </>
        )}
      </div>
    </Form>
  );
}

interface PartsProps {
  readonly typed: TypedTrials;
  readonly set: (change: Partial<TypedTrials>) => void;
  readonly cellar: Cellar;
}

function Parts({ typed, set, cellar }: PartsProps) {
  const change = (i: number, one: Partial<TypedTrials["parts"][number]>): void =>
    set({ parts: typed.parts.map((part, n) => (n === i ? { ...part, ...one } : part)) });
  return (
    <fieldset className="field trial-parts">
      <legend className="field-label">Of which whiskeys</legend>
      <IssuesOfWhole path={["parts"]} />
      {typed.parts.map((part, i) => (
        // oxlint-disable-next-line react/no-array-index-key -- a part is its place: two may be alike while they are chosen
        <div key={i} className="trial-part">
          <SelectField
            label={`Part ${i + 1}`}
            quietLabel
            path={["parts", i, "of"]}
            value={part.key}
            onChange={(key) => change(i, { key })}
            options={
              <>
                <option value="">Choose a whiskey or a batch</option>
                {[...cellar.stocks].map(([key, { label, abv20 }]) => (
                  <option key={key} value={key}>
                    {label}, {printAbv(abv20)}
                  </option>
                ))}
              </>
            }
          />
          {typed.parts.length > 2 && (
            <button
              type="button"
              className="drop"
              aria-label={`Take part ${i + 1} away`}
              onClick={() => set({ parts: typed.parts.filter((_, n) => n !== i) })}
            >
              <CrossGlyph />
            </button>
          )}
          {chooses(typed) && (
            <div className="trial-bounds">
              <TextField
                label="At least"
                optional
                unit="%"
                path={["parts", i, "low"]}
                value={part.low}
                onChange={(low) => change(i, { low })}
                input={{ inputMode: "decimal" }}
              />
              <TextField
                label="At most"
                optional
                unit="%"
                path={["parts", i, "high"]}
                value={part.high}
                onChange={(high) => change(i, { high })}
                input={{ inputMode: "decimal" }}
              />
            </div>
          )}
        </div>
      ))}
      <Button
        disabled={typed.parts.length >= MOST_PARTS}
        onClick={() => set({ parts: [...typed.parts, { key: "", low: "", high: "" }] })}
      >
        Add a whiskey
      </Button>
    </fieldset>
  );
}
