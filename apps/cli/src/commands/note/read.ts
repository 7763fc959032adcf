import { NoteWhere } from "@partsproof/house/protocol";
import { chooseHousehold } from "../../door/index.ts";
import { readTextFile } from "../../files/index.ts";
import { one, onlyOne, readText, readWord } from "../../flags/index.ts";
import { printRead } from "../../print/note.ts";
import { asksHouse, maybeAtHousehold } from "../command.ts";

export const read = maybeAtHousehold({
  name: "read",
  says: "What a tasting note says: attributes, where, how strong, and the profile that makes; by a household's own words where one is named.",
  maybe: { text: "the note; or --file" },
  flags: {
    file: one(readText("file"), "<file>", "a note in a file of text; - for standard input"),
    where: one(
      readWord("where", NoteWhere.options),
      `<${NoteWhere.options.join("|")}>`,
      "the part the note is of, until it says another; whole where left out",
    ),
  },
  example: `read "On the nose a hint of smoke, honey. Long finish."`,
  run: async ({ args: { text }, flags: { file, where } }, which, { plain, open }) => {
    onlyOne({ text, file });
    const note = text ?? (await readTextFile(file ?? "", ["file"]));
    const body = { text: note, ...(where === undefined ? {} : { where }) };
    if (!asksHouse(which)) {
      const json = await (await plain())("readNote", { body });
      return { json, text: () => printRead(json, note) };
    }
    const { client } = await open(which);
    const household = await chooseHousehold(client, which.household);
    const json = await client("readNoteHere", { at: { household: household.id }, body });
    return { json, text: () => printRead(json, note) };
  },
});
