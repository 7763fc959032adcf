import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { acceptList } from "./accept-list.ts";
import { exportShelf } from "./export-shelf.ts";
import { previewList } from "./preview-list.ts";

export const shelfFileHandlers: Handlers<"previewShelfList" | "acceptShelfList" | "exportShelf"> = {
  previewShelfList: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const { currency } = await knownHousehold(records, at.household);
      return previewList(body, await records.list("whiskey", at.household), currency);
    }),
  acceptShelfList: ({ house, at, body }) => acceptList(house, at.household, body),
  exportShelf: ({ house, at, query }) =>
    house.store.transaction((records) => exportShelf(records, at.household, query.as)),
};
