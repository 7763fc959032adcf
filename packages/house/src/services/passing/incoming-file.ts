import { RecipeFile } from "../../protocol/index.ts";
import type { Reads } from "../ports.ts";

/** The file that a recipe came in with: as it was, and its hash. */
interface IncomingFile {
  readonly file: RecipeFile;
  readonly sha256: string;
}

/** Null where it was written here. */
export async function incomingFile(
  records: Pick<Reads, "list">,
  household: string,
  recipeId: string,
): Promise<IncomingFile | null> {
  const [row] = await records.list("passedFile", household, { where: { recipeId, way: "in" }, limit: 1 });
  if (row?.text === undefined || row.text === null) return null;
  return { file: RecipeFile.parse(JSON.parse(row.text)), sha256: row.sha256 };
}
