import type { Archive } from "../../protocol/index.ts";
import { canonicalJson } from "../filling/index.ts";
import { refuse } from "../refuse.ts";

/** The name of the head among the tables. */
export const HEAD = "(head)";

type Tables = Readonly<Record<string, readonly unknown[]>>;

/** By table: SHA-256 of its canonical form, so that a file that was changed on the way says where. */
export async function checksumsOf(tables: Tables): Promise<Record<string, string>> {
  const sums: Record<string, string> = {};
  for (const [name, rows] of Object.entries(tables)) sums[name] = await sha256(canonicalJson(rows));
  return sums;
}

/** Of what stands beside the tables. */
export const headSum = ({
  format,
  formatVersion,
  exportedAt,
  household,
}: Omit<Archive, "tables">): Promise<string> =>
  sha256(canonicalJson({ format, formatVersion, exportedAt, household }));

/** H4: everything as it was written, or nothing is read. A file from before there were checksums is read without. */
export async function checkChecksums(archive: Archive): Promise<void> {
  const { tables, household, checksums: said } = archive;
  if (said === undefined && household.id === undefined) return;
  if (said === undefined) damaged([], "its checksums", null);
  if (said[HEAD] !== (await headSum(archive)))
    damaged([], `a head whose SHA-256 is ${said[HEAD]}`, "another");
  const found: Record<string, string> = await checksumsOf(tables).catch(() =>
    damaged([], "whole Unicode characters", null),
  );
  for (const name of new Set([...Object.keys(said), ...Object.keys(found)]))
    if (name !== HEAD && said[name] !== found[name])
      damaged([name], `the rows whose SHA-256 is ${said[name] ?? "said"}`, found[name] ?? null);
}

function damaged(path: readonly string[], limit: string, received: string | null): never {
  refuse(422, {
    code: "archive_damaged",
    path: ["tables", ...path],
    limit,
    received,
    message: `${["tables", ...path].join(".")} of the file requires ${limit}, got ${received ?? "none"}: the file is not as it was written`,
  });
}

async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
