import type { BodyRead, RecipeFile } from "../../protocol/index.ts";
import { born } from "../birth.ts";
import { checkRecipe, printed } from "../filling/index.ts";
import type { Handlers } from "../handler.ts";
import type { House, Records } from "../ports.ts";
import { knownRecipe } from "../recipes/index.ts";
import type { RecipeRow } from "../rows.ts";
import { findingsInFile } from "./findings-in-file.ts";
import { recipeFileOf } from "./recipe-file-of.ts";
import { RecipeFile as RecipeFileSchema } from "../../protocol/index.ts";
import { HouseRefusal } from "../refuse.ts";

/** X1, X2: what goes out is remembered by its hash, so that a result which names it finds its recipe again. */
export const exportRecipeHandlers: Handlers<"exportRecipe"> = {
  exportRecipe: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const recipe = await knownRecipe(records, at.household, at["recipe"] ?? "", ["recipe"]);
      const { file, version } = await recipeFileOf(records, recipe);
      const asked = chosen(file, body);
      const found = body.withFindings
        ? await findingsInFile(house, records, recipe, asked.findings)
        : asked.findings;
      const whole: RecipeFile = {
        ...asked,
        ...(body.withNote && version.body.note !== "" ? { note: version.body.note } : {}),
        ...(found === undefined ? {} : { findings: found }),
      };
      checkWhole(whole);
      await rememberOut(house, records, recipe, (await checkRecipe(whole)).sha256);
      return whole;
    }),
};

/** Rules, reasons and credits given with the request stand in place of the recipe's own, slot by slot. */
function chosen(file: RecipeFile, { rules, reasons, credits }: BodyRead<"exportRecipe">): RecipeFile {
  const slots = file.slots.map((slot, n) => {
    const { rule: _, reason: __, ...bare } = slot;
    const rule = rules?.[n] === undefined ? slot.rule : rules[n];
    const reason = reasons?.[n] === undefined ? slot.reason : reasons[n];
    return {
      ...bare,
      ...(typeof rule === "string" ? { rule: rules?.[n] === undefined ? rule : printed(rule) } : {}),
      ...(typeof reason === "string" ? { reason } : {}),
    };
  });
  const all = [...(file.credits ?? []), ...(credits ?? [])];
  return { ...file, slots, ...(all.length === 0 ? {} : { credits: [...new Set(all)] }) };
}

/** A rule taken off a slot that names nothing, or one that looks at a slot which is not there, makes no file. */
function checkWhole(file: RecipeFile): void {
  const read = RecipeFileSchema.safeParse(file, { reportInput: true });
  if (read.success) return;
  throw new HouseRefusal(
    422,
    read.error.issues.map(({ path, message, input }) => ({
      code: "recipe_file_wrong",
      path: path.map((key) => (typeof key === "number" ? key : String(key))),
      limit: message,
      received: typeof input === "string" || typeof input === "number" ? input : null,
      message: `a recipe file requires ${message}`,
    })),
  );
}

/** Once for each recipe and hash. */
async function rememberOut(
  house: House,
  records: Records,
  { id: recipeId, householdId, latestNumber }: RecipeRow,
  sha256: string,
): Promise<void> {
  const where = { recipeId, way: "out", sha256 } as const;
  const [known] = await records.list("passedFile", householdId, { where, limit: 1 });
  if (known !== undefined) return;
  await records.insert("passedFile", {
    ...born(house, householdId),
    ...where,
    number: latestNumber,
    text: null,
  });
}
