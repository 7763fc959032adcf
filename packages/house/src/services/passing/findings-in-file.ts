import type { RecipeFile } from "../../protocol/index.ts";
import type { House, Records } from "../ports.ts";
import type { RecipeRow } from "../rows.ts";
import { kitchensOf } from "./kitchens-of.ts";

type Findings = NonNullable<RecipeFile["findings"]>;

/** Counts of blind flights and sheets, here and in kitchens that sent a result, beside what the file said before. Nobody is named. */
export async function findingsInFile(
  house: House,
  records: Records,
  recipe: RecipeRow,
  before: Findings | undefined,
): Promise<Findings | undefined> {
  const { kitchens, liked, close } = await kitchensOf(house, records, recipe);
  const flights = (liked?.flights ?? 0) + (close?.flights ?? 0);
  const sheets = (liked?.sheets ?? 0) + (close?.sheets ?? 0);
  if (sheets === 0) return before;
  const many = kitchens.filter((one) => one.liked !== null || one.close !== null).length;
  const said = [liked?.sentence, close?.sentence].filter((text) => text !== undefined);
  const summary = [
    ...(before?.summary === undefined ? [] : [before.summary]),
    `In ${many} ${many === 1 ? "kitchen" : "kitchens"}: ${said.join(" ")}`,
  ].join(" ");
  return {
    ...before,
    flights: flights + (before?.flights ?? 0),
    sheets: sheets + (before?.sheets ?? 0),
    summary: summary.slice(0, 8000),
  };
}
