import { readRecipeLink, ResultFile } from "../../protocol/index.ts";
import { refuse } from "../refuse.ts";

/** X7: a result as it was sent back: its file's own text, or a link with whatever stands around it. Nothing is fetched. */
export async function resultInText(text: string): Promise<ResultFile> {
  const trimmed = text.trim();
  const json = trimmed.startsWith("{") ? trimmed : await inLink(trimmed);
  const read = ResultFile.safeParse(parsed(json), { reportInput: true });
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  const path = (issue?.path ?? []).map((key) => (typeof key === "number" ? key : String(key)));
  return wrong("result_wrong", ["text", ...path], issue?.message ?? "a result file", issue?.input ?? null);
}

async function inLink(text: string): Promise<string> {
  const link = await readRecipeLink(text);
  return link.ok ? link.text : wrong(link.code, ["text"], link.limit, `${text.length} characters`);
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return wrong("json_unreadable", ["text"], "JSON (RFC 8259)", json.slice(0, 80));
  }
}

function wrong(code: string, path: readonly (string | number)[], limit: string, received: unknown): never {
  refuse(422, {
    code,
    path: [...path],
    limit,
    received,
    message: `a result that was sent back requires ${limit}, got ${JSON.stringify(received)?.slice(0, 80)}`,
  });
}
