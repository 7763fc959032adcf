import type { Vessel } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { matching, pageOf } from "../pages.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { VesselRow } from "../rows.ts";
import { type Shelf, shelfState } from "./shelf.ts";
import { contentsOf } from "./shelf-contents.ts";
import { keptMl } from "./shelf-kept.ts";
import { usesOfVessel } from "./uses.ts";

type Routes = "listVessels" | "addVessel" | "getVessel" | "editVessel" | "removeVessel";

export const vesselHandlers: Handlers<Routes> = {
  listVessels: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const shelf = await shelfState(records, at.household);
      const fits = ({ kind, whiskeyId }: VesselRow) =>
        (query.kind === undefined || kind === query.kind) &&
        (query.whiskeyId === undefined || whiskeyId === query.whiskeyId);
      return pageOf(query, matching([...shelf.vessels.values()], fits), (row) => shownVessel(shelf, row));
    }),

  addVessel: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const row: VesselRow = {
        ...born(house, at.household),
        ...body,
        whiskeyId: null,
        batchId: null,
        priceMinor: null,
        openedAt: null,
      };
      await records.insert("vessel", row);
      return shownVessel(await shelfState(records, at.household), row);
    }),

  getVessel: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const id = at["vessel"] ?? "";
      const row = (await records.find("vessel", at.household, id)) ?? unknownId("vessel", id, ["vessel"]);
      return shownVessel(await shelfState(records, at.household), row);
    }),

  editVessel: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["vessel"] ?? "";
      const old = (await records.find("vessel", at.household, id)) ?? unknownId("vessel", id, ["vessel"]);
      const head = edited(house, "vessel", old, body.version);
      if (body.opened && old.kind !== "bottle") {
        refuse(422, {
          code: "not_a_bottle",
          path: ["opened"],
          limit: "a bottle",
          received: old.kind,
          message: `opening requires a bottle, got a ${old.kind}`,
        });
      }
      const row: VesselRow = {
        ...head,
        label: body.label ?? old.label,
        openedAt: body.opened ? (old.openedAt ?? head.updatedAt) : old.openedAt,
      };
      if (!(await records.replace("vessel", row))) staleEdit("vessel", body.version, row.version);
      return shownVessel(await shelfState(records, at.household), row);
    }),

  removeVessel: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const id = at["vessel"] ?? "";
      const old = (await records.find("vessel", at.household, id)) ?? unknownId("vessel", id, ["vessel"]);
      if (old.version !== query.version) staleEdit("vessel", query.version, old.version);
      const { uses, undone } = await usesOfVessel(records, at.household, id);
      if (uses.length > 0) {
        refuse(409, {
          code: "vessel_in_use",
          path: ["vessel"],
          limit: "a vessel that no transfer, batch or flight uses",
          received: uses,
          message: `removing a vessel requires one that nothing uses, got ${old.label}, used by ${uses.join(", ")}`,
        });
      }
      // What was undone counts for nothing and goes with the vessel it names.
      for (const transfer of undone) await records.remove("transfer", at.household, transfer.id);
      await records.remove("vessel", at.household, id);
      return undefined;
    }),
};

export function shownVessel(shelf: Shelf, { householdId: _, updatedAt: __, ...row }: VesselRow): Vessel {
  return {
    ...row,
    kind: row.kind as Vessel["kind"],
    sealed: row.kind === "bottle" && row.openedAt === null,
    contents: contentsOf(shelf, row.id),
    keptMl: keptMl(shelf, row.id),
  };
}
