import { issueAt, needed, one, readText, refuse } from "../../flags/index.ts";
import { RecoveryFile } from "@partsproof/house/protocol";
import { readHidden } from "@partsproof/server/read-hidden";
import { openRecovery } from "@partsproof/server/recovery";
import { readJsonFile } from "../../files/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";

export const householdRestore = houseCommand({
  name: "household restore",
  says: "A new household from such a file, all of it or nothing. A flight not revealed yet comes back as called off, unless --recovery has its key.",
  flags: {
    from: needed(readText("from"), "<file>", "what `household export` wrote"),
    recovery: one(
      readText("recovery"),
      "<file>",
      "what `household recovery` wrote, so that flights under way go on; its passphrase is asked for",
    ),
  },
  example: "household restore --from kitchen-table.json",
  run: async ({ flags }, { client }) => {
    const archive = await readJsonFile(flags.from, ["from"]);
    const recovery = flags.recovery === undefined ? undefined : await keysIn(flags.recovery);
    const body = recovery === undefined ? archive : { ...(archive as object), recovery };
    // Not read by us: the house says what is wrong with it, row by row.
    const household = await client("restoreHousehold", { body: body as never });
    return { json: household, text: () => printHousehold(household) };
  },
});

async function keysIn(path: string): Promise<Record<string, string>> {
  const read = RecoveryFile.safeParse(await readJsonFile(path, ["recovery"]));
  if (!read.success)
    return refuse(issueAt(["recovery"], "recovery_wrong", "a file that `household recovery` wrote", path));
  const passphrase = await readHidden(`Passphrase of ${path} (it is not shown): `);
  const keys = await openRecovery(read.data, passphrase);
  return (
    keys ??
    refuse(issueAt(["recovery"], "recovery_closed", "its own passphrase, and to be as it was written", path))
  );
}
