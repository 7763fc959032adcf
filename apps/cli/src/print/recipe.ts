import type { Recipe, RecipePreview, RecipeVersion } from "@partsproof/house/protocol";
import { columns } from "./columns.ts";
import { contentsFacts } from "./contents.ts";
import { type Fact, facts } from "./facts.ts";
import { day, g, ml, plural, stated } from "./figures.ts";

/** Labels of whiskeys and batches by id. */
export type Labels = ReadonlyMap<string, string>;

type Slot = RecipeVersion["slots"][number];

/** What a slot stands for, by name; an open one by its rule, or by the name it had elsewhere. */
function slotName({ of, rule }: Slot, labels: Labels): string {
  if (of.kind === "open")
    return of.named === null ? (rule ?? "anything") : `${of.named.name}, which is not here`;
  const id = of.kind === "whiskey" ? of.whiskeyId : of.batchId;
  return labels.get(id) ?? id;
}

/** Beside what stands in it: the rule for any other, and why. */
function slotLine(slot: Slot, labels: Labels): string {
  const { of, rule, reason } = slot;
  const open = of.kind === "open" && of.named === null;
  return [
    `${slot.parts} of ${slotName(slot, labels)}`,
    ...(rule === undefined || open ? [] : [`or: ${rule}`]),
    ...(reason === undefined ? [] : [`because: ${reason}`]),
  ].join("; ");
}

const partsOf = ({ slots }: RecipeVersion): string => slots.map(({ parts }) => parts).join(":");

const versionFacts = (version: RecipeVersion, labels: Labels): readonly Fact[] => [
  ["Version", `${version.number}, of ${day(version.createdAt)}`],
  ["Parts", version.slots.map((slot) => slotLine(slot, labels)).join("\n")],
  ["Water", version.waterTo === null ? "none" : `to ${stated(version.waterTo)}`],
  ["Rest", version.restDays === null ? "none asked" : plural(version.restDays, "day")],
  ["Oak", version.oak === "" ? null : version.oak],
  ["Note", version.note === "" ? null : version.note],
];

export const printRecipes = (recipes: readonly Recipe[], labels: Labels): string =>
  columns(
    recipes,
    [
      { head: "Recipe", cell: ({ name }) => name },
      { head: "Version", cell: ({ latest }) => String(latest.number), right: true },
      { head: "Parts", cell: ({ latest }) => partsOf(latest) },
      {
        head: "Of",
        cell: ({ latest }) => latest.slots.map((slot) => slotName(slot, labels)).join(", "),
      },
      { head: "Id", cell: ({ id }) => id },
    ],
    "No recipe yet: recipe add",
  );

export const printRecipe = (recipe: Recipe, labels: Labels): string =>
  facts([
    ["Recipe", recipe.name],
    [
      "Target",
      recipe.targetWhiskeyId === null ? null : (labels.get(recipe.targetWhiskeyId) ?? recipe.targetWhiskeyId),
    ],
    ...versionFacts(recipe.latest, labels),
    ["Id", recipe.id],
  ]);

export const printVersions = (versions: readonly RecipeVersion[], labels: Labels): string =>
  versions.map((version) => facts(versionFacts(version, labels))).join("\n\n");

export const printPreview = (preview: RecipePreview, currency: string): string =>
  facts([
    ["Poured", `${ml(preview.pouredMl)} of whiskey`],
    ["Water", preview.water === null ? null : `${ml(preview.water.ml)} or ${g(preview.water.g)}`],
    ["No water", preview.waterRefused],
    ["Contraction", `${preview.contractionMl.toFixed(2)} mL`],
    ...contentsFacts(preview.result, currency),
  ]);
