import type { Household } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import { refuse, staleEdit } from "../refuse.ts";
import type { HouseholdRow } from "../rows.ts";

export const shownHousehold = ({
  id,
  version,
  name,
  currency,
  demo,
  createdAt,
}: HouseholdRow): Household => ({
  id,
  version,
  name,
  currency,
  demo,
  createdAt,
});

export const householdHandlers: Handlers<
  "listHouseholds" | "addHousehold" | "getHousehold" | "editHousehold" | "removeHousehold"
> = {
  listHouseholds: ({ house, query }) =>
    house.store.transaction((records) => pageOf(query, (q) => records.households(q), shownHousehold)),

  addHousehold: ({ house, body }) =>
    house.store.transaction(async (records) => {
      const { householdId: _, ...row } = born(house, "");
      const household: HouseholdRow = { ...row, householdId: row.id, ...body, demo: false };
      await records.insert("household", household);
      return shownHousehold(household);
    }),

  getHousehold: ({ house, at }) =>
    house.store.transaction(async (records) => shownHousehold(await knownHousehold(records, at.household))),

  editHousehold: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const old = await knownHousehold(records, at.household);
      const row: HouseholdRow = {
        ...edited(house, "household", old, body.version),
        name: body.name ?? old.name,
        currency: body.currency ?? old.currency,
      };
      if (!(await records.replace("household", row))) staleEdit("household", body.version, row.version);
      return shownHousehold(row);
    }),

  removeHousehold: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const { name } = await knownHousehold(records, at.household);
      if (query.confirm !== name) {
        refuse(422, {
          code: "confirm_wrong",
          path: ["confirm"],
          limit: `the household's name, ${name}`,
          received: query.confirm,
          message: `removing a household requires its name ${name} to confirm, got ${query.confirm}`,
        });
      }
      await records.removeHousehold(at.household);
      return undefined;
    }),
};
