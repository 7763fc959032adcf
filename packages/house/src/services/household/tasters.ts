import type { Taster } from "../../protocol/index.ts";
import type { Handlers } from "../handler.ts";
import { newId } from "../ids.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import { staleEdit, unknownId } from "../refuse.ts";
import type { TasterRow } from "../rows.ts";

const shown = ({ id, version, name, createdAt }: TasterRow): Taster => ({ id, version, name, createdAt });

export const tasterHandlers: Handlers<"listTasters" | "addTaster" | "editTaster"> = {
  listTasters: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      return pageOf(
        query,
        (q) => records.list("taster", at.household, { ...q, where: { guest: false } }),
        shown,
      );
    }),

  addTaster: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const now = house.clock.now().toISOString();
      const row: TasterRow = {
        id: newId(house),
        householdId: at.household,
        version: 1,
        createdAt: now,
        updatedAt: now,
        name: body.name,
        guest: false,
      };
      await records.insert("taster", row);
      return shown(row);
    }),

  editTaster: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["taster"] ?? "";
      const old = await records.find("taster", at.household, id);
      if (!old) unknownId("taster", id, ["taster"]);
      if (old.version !== body.version) staleEdit("taster", body.version, old.version);
      const row: TasterRow = {
        ...old,
        version: old.version + 1,
        updatedAt: house.clock.now().toISOString(),
        name: body.name ?? old.name,
      };
      if (!(await records.replace("taster", row))) staleEdit("taster", body.version, old.version + 1);
      return shown(row);
    }),
};
