import { readHidden } from "@partsproof/server/read-hidden";
import { writeRecovery } from "@partsproof/server/recovery";
import { Passphrase, PASSPHRASE_LEAST } from "@partsproof/house/protocol";
import { chooseHousehold } from "../../door/index.ts";
import { writeWhole } from "../../files/index.ts";
import { issueAt, needed, readText, refuse } from "../../flags/index.ts";
import { printJson } from "../../print/json.ts";
import { maybeAtHousehold } from "../command.ts";

export const householdRecovery = maybeAtHousehold({
  name: "household recovery",
  says: "The keys of flights under way in a file of its own, under a passphrase that is asked for: with it a restored household's flights go on. Made only where the house's seal key is.",
  flags: { to: needed(readText("to"), "<file>", "a file that is not there yet") },
  example: "household recovery --to kitchen-table.keys.json",
  run: async ({ flags }, which, { open }) => {
    if (which.house !== undefined)
      refuse(
        issueAt(["house"], "flags_exclude", "none: such a file is made where the seal key is", which.house),
      );
    const { client, sealKey } = await open(which);
    if (sealKey === undefined)
      return refuse(issueAt(["data"], "seal_key_missing", "a house opened in this process", null));
    const household = await chooseHousehold(client, which.household);
    const archive = await client("exportHousehold", { at: { household: household.id } });
    const passphrase = await readHidden(
      `Passphrase of the file, at least ${PASSPHRASE_LEAST} characters (it is not shown): `,
    );
    if (!Passphrase.safeParse(passphrase).success)
      refuse(issueAt(["passphrase"], "passphrase_short", `at least ${PASSPHRASE_LEAST} characters`, null));
    const file = await writeRecovery(archive, sealKey, passphrase);
    await writeWhole(flags.to, `${printJson(file)}\n`, ["to"]);
    const flights = file.flights.length;
    return {
      json: { file: flags.to, household: household.name, flights },
      text: () =>
        `${flights === 1 ? "1 flight" : `${flights} flights`} under way: their keys are in ${flags.to}`,
      notes: [
        "Whoever has this file, its passphrase and the household's file can open those flights before their reveal.",
      ],
    };
  },
});
