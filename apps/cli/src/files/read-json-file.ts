import { readFile } from "node:fs/promises";
import { issueAt, refuse } from "../flags/index.ts";

/** @throws BadInput when there is no such file or it holds no JSON. */
export async function readJsonFile(file: string, path: readonly string[]): Promise<unknown> {
  const text = await readFile(file, "utf8").catch((error: unknown) => {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    return refuse(issueAt(path, "file_not_read", "a file that can be read", file, ` (${code})`));
  });
  try {
    return JSON.parse(text);
  } catch {
    return refuse(issueAt(path, "json_unreadable", "a file of JSON (RFC 8259)", file));
  }
}
