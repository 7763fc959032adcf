import { readFile } from "node:fs/promises";
import process from "node:process";
import { text } from "node:stream/consumers";
import { issueAt, refuse } from "../flags/index.ts";

/** @throws BadInput when there is no such file or it is no UTF-8. */
export async function readTextFile(file: string, path: readonly string[]): Promise<string> {
  if (file === "-") return text(process.stdin);
  const bytes = await readFile(file).catch((error: unknown) => {
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    return refuse(issueAt(path, "file_not_read", "a file that can be read", file, ` (${code})`));
  });
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return refuse(issueAt(path, "text_unreadable", "a file of UTF-8 text", file));
  }
}
