import type { RecipeFile, RecipeTakeInPreview } from "@partsproof/house/protocol";
import { useState } from "react";
import { useSay } from "../../api.ts";
import { printAbv, printParts } from "../../figures/index.ts";
import { announce, Button, IssueSummary, LiquidColumn, Section, Tick } from "../../parts/index.ts";
import { go, Link } from "../../router/index.ts";
import { useHousehold } from "../../session/index.ts";

export interface SeenRecipeProps {
  readonly file: RecipeFile;
  readonly preview: RecipeTakeInPreview;
}

/** A recipe file before it is taken in: its lines, what of it is here already, and what would be added. */
export function SeenRecipe({ file, preview }: SeenRecipeProps) {
  const household = useHousehold();
  const say = useSay("takeInRecipe");
  const [again, setAgain] = useState(false);
  const { name, slots, already } = preview;
  const take = async (): Promise<void> => {
    const body = { recipe: file, sha256: preview.sha256, again };
    const made = await say.send({ at: { household: household.id }, body });
    if (made === null) return;
    announce(`${made.name} taken in`);
    go(`/h/${household.id}/recipes/${made.id}`);
  };
  return (
    <Section title={name}>
      <LiquidColumn
        title={`${name}: ${slots.map((slot) => `${printParts(slot.parts)} ${slot.named ?? slot.rule ?? ""}`).join(", ")}`}
        segments={slots.map((slot) => ({
          label: slot.named ?? slot.rule ?? "anything",
          amount: slot.parts,
          amountText: String(slot.parts),
          ...(slot.abv === null ? {} : { sub: printAbv(slot.abv) }),
        }))}
      />
      <ol className="lines">
        {slots.map((slot) => (
          <li key={slot.slot}>
            <p>
              <b>{printParts(slot.parts)}</b> {slot.named ?? "of anything that keeps the rule"}
            </p>
            {slot.rule !== null && (
              <p className="rule">{slot.named === null ? slot.rule : `or: ${slot.rule}`}</p>
            )}
            {slot.reason !== null && <p className="soft small">Why: {slot.reason}</p>}
            {slot.blend.length > 0 && <p className="soft small">Itself a blend: {slot.blend.join(", ")}</p>}
            <p className="soft small">
              {slot.here === null
                ? slot.named === null
                  ? "Open: you choose what stands here."
                  : "Not among your whiskeys: the line stays open until you fill it."
                : `You have it: ${slot.here.label}.`}
            </p>
          </li>
        ))}
      </ol>
      <Facts preview={preview} />
      <p>
        This adds one recipe{already === null ? "" : " more"}. It adds no whiskey and no bottle, and changes
        nothing that is here.
      </p>
      {preview.unknownFields.length > 0 && (
        <p className="soft small">
          A newer version wrote it. What this one does not know is kept and passed on with it:{" "}
          {preview.unknownFields.join(", ")}.
        </p>
      )}
      <IssueSummary say={say} />
      {already !== null && (
        <>
          <p>
            This very file is here already, as{" "}
            <Link to={`/h/${household.id}/recipes/${already.recipeId}`}>{already.name}</Link>.
          </p>
          <Tick label="Take it in once more" value={again} onChange={setAgain} />
        </>
      )}
      <div className="form-actions">
        <Button kind="main" busy={say.busy} disabled={already !== null && !again} onClick={take}>
          Take in the recipe
        </Button>
      </div>
    </Section>
  );
}

function Facts({ preview }: { readonly preview: RecipeTakeInPreview }) {
  const { waterTo, restDays, oak, note, credits, findings, lineage, sha256 } = preview;
  const rows: readonly (readonly [string, string | null])[] = [
    ["Water", waterTo === null ? null : `to ${printAbv(waterTo)}`],
    ["Rest", restDays === null ? null : `${restDays} days`],
    ["Oak", oak || null],
    ["Note", note || null],
    ["From", lineage.length === 0 ? null : lineage.map((one) => one.name).join(", before it ")],
    ["Thanks to", credits.length === 0 ? null : credits.join(", ")],
    [
      "Found so far",
      findings === null
        ? null
        : `${findings.flights} blind flights, ${findings.sheets} sheets. ${findings.summary}`.trim(),
    ],
    ["Its hash", sha256],
  ];
  return (
    <dl className="told">
      {rows.map(([what, value]) =>
        value === null ? null : (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
    </dl>
  );
}
