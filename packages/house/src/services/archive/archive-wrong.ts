import { refuse } from "../refuse.ts";

/** H2: the file is refused as a whole, and the first thing wrong with it named. */
export function archiveWrong(path: readonly (string | number)[], limit: string, received: unknown): never {
  const where = ["tables", ...path];
  refuse(422, {
    code: "archive_wrong",
    path: where,
    limit,
    received: received ?? null,
    message: `${where.join(".")} of the file requires ${limit}, got ${JSON.stringify(received)?.slice(0, 80) ?? "nothing"}`,
  });
}
