import { ENGLISH, type NotedAttribute, openReader, profileOf } from "@partsproof/core/notes";
import { NoteWhere } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";

const read = openReader(ENGLISH);

/** Needs no household and writes nothing. */
export const noteHandlers: Handlers<"readNote"> = {
  readNote: async ({ body: { text, where } }) => {
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
  },
};
