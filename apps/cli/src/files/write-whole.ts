import { open, rename, unlink } from "node:fs/promises";
import { issueAt, refuse } from "../flags/index.ts";

/**
 * Writes a file that was not there, whole or not at all: its name is taken first, the text is written beside it and
 * then renamed over it. (A hard link would do it in one step, but not on the sticks people keep copies on.) Readable by
 * its owner only. Gives the bytes written.
 *
 * @throws BadInput when the file is there already, or cannot be written.
 */
export async function writeWhole(file: string, text: string, path: readonly string[]): Promise<number> {
  const draft = `${file}.${process.pid}.part`;
  const bytes = Buffer.from(text, "utf8");
  let taken = false;
  try {
    await (await open(file, "wx", 0o600)).close();
    taken = true;
    await writeSynced(draft, bytes);
    await rename(draft, file);
  } catch (error) {
    if (taken) await Promise.allSettled([unlink(draft), unlink(file)]);
    const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
    if (code === "EEXIST") refuse(issueAt(path, "file_exists", "a file that is not there yet", file));
    refuse(issueAt(path, "file_not_written", "a place that can be written to", file, ` (${code})`));
  }
  return bytes.length;
}

async function writeSynced(file: string, bytes: Uint8Array): Promise<void> {
  const handle = await open(file, "w", 0o600);
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}
