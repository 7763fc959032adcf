import type { Household } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { pageOf } from "../pages.ts";
import { refuse, staleEdit } from "../refuse.ts";
import type { Records } from "../ports.ts";
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
      if (body.currency !== undefined && body.currency !== old.currency)
        await needNoPrices(records, old, body.currency);
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

/** Prices are kept in the one currency of the household: another would turn so many dollars into as many euros. */
async function needNoPrices(records: Records, { id, currency }: HouseholdRow, asked: string): Promise<void> {
  const priced = [...(await records.list("whiskey", id)), ...(await records.list("vessel", id))].filter(
    ({ priceMinor }) => priceMinor !== null,
  );
  if (priced.length === 0) return;
  refuse(409, {
    code: "currency_in_use",
    path: ["currency"],
    limit: `${currency}, in which ${priced.length} prices are kept`,
    received: asked,
    message: `currency of a household requires ${currency}, in which ${priced.length} prices are kept, got ${asked}`,
  });
}
