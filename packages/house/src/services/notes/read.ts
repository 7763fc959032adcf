import { type NotedAttribute, type NoteReader, profileOf } from "@partsproof/core/notes";
import { type BodyRead, NoteWhere, type AnswerOf } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { wordsOf } from "../words/index.ts";
import { readerFor } from "./reader-for.ts";

/** Needs no household and writes nothing. */
export const noteHandlers: Handlers<"readNote"> = {
  readNote: async ({ body }) => shown(readerFor([]), body),
};

/** V4: by the household's own words. */
export const noteHereHandlers: Handlers<"readNoteHere"> = {
  readNoteHere: async ({ house, at, body }) => {
    const words = await house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return wordsOf(records, at.household);
    });
    return shown(readerFor(words), body);
  },
};

function shown(read: NoteReader, { text, where }: BodyRead<"readNote">): AnswerOf<"readNote"> {
  const { observations, remarks } = read(text, where);
  const spoken = NoteWhere.options.filter((part) => observations.some((one) => one.where === part));
  return {
    observations: observations.map((one) => ({
      ...one,
      quote: [...one.quote],
      attribute: one.attribute as NotedAttribute,
    })),
    profile: profileOf(observations),
    sections: Object.fromEntries(spoken.map((part) => [part, profileOf(observations, part)])),
    remarks: remarks.map((remark) => ({ ...remark, quote: [...remark.quote] })),
  };
}
