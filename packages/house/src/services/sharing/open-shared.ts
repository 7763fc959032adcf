import { type Opened, RecipeFile, readRecipeLink } from "../../protocol/index.ts";
import { checkRecipe } from "../filling/index.ts";
import { refuse } from "../refuse.ts";
import { PAGE_RECIPE } from "./share-page.ts";

/** What was passed on, read again: a recipe file's text, the page, or a link with whatever stands around it. */
export async function openShared(text: string): Promise<Opened> {
  const read = RecipeFile.safeParse(parsed(await jsonIn(text)), { reportInput: true });
  if (!read.success) {
    const [issue] = read.error.issues;
    const path = (issue?.path ?? []).map((key) => (typeof key === "number" ? key : String(key)));
    wrong(422, "recipe_wrong", ["text", ...path], issue?.message ?? "a recipe file", issue?.input ?? null);
  }
  return { recipe: read.data, check: await checkRecipe(read.data) };
}

async function jsonIn(text: string): Promise<string> {
  const trimmed = text.trim();
  if (trimmed.startsWith("{")) return trimmed;
  const inside = new RegExp(`<script type="application/json" id="${PAGE_RECIPE}">([^<]*)</script>`, "u").exec(
    trimmed,
  );
  if (inside) return inside[1]!;
  const link = await readRecipeLink(trimmed);
  return link.ok ? link.text : wrong(422, link.code, ["text"], link.limit, `${trimmed.length} characters`);
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return wrong(422, "json_unreadable", ["text"], "JSON (RFC 8259)", json.slice(0, 80));
  }
}

function wrong(
  status: 422,
  code: string,
  path: readonly (string | number)[],
  limit: string,
  received: unknown,
): never {
  refuse(status, {
    code,
    path: [...path],
    limit,
    received: received ?? null,
    message: `a recipe that was passed on requires ${limit}, got ${JSON.stringify(received)?.slice(0, 80)}`,
  });
}
