import { NoteWhere } from "@partsproof/house/protocol";
import { readTextFile } from "../../files/index.ts";
import { one, onlyOne, readText, readWord } from "../../flags/index.ts";
import { printRead } from "../../print/note.ts";
import { reckoning } from "../command.ts";

export const read = reckoning({
  name: "read",
  says: "What a tasting note says: attributes, where, how strong, and the profile that makes.",
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
  run: async ({ file, where }, client, { text }) => {
    onlyOne({ text, file });
    const note = text ?? (await readTextFile(file ?? "", ["file"]));
    const json = await client("readNote", {
      body: { text: note, ...(where === undefined ? {} : { where }) },
    });
    return { json, text: () => printRead(json, note) };
  },
});
