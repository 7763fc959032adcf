import { abv20OfStrength, proof60FFromAbv20 } from "@partsproof/core/alcoholometry";
import type { GrainShare, StatedStrength, Whiskey } from "../../protocol/index.ts";
import { born, edited } from "../birth.ts";
import type { Handlers } from "../handler.ts";
import { knownHousehold } from "../known.ts";
import { matching, pageOf } from "../pages.ts";
import { refuse, staleEdit, unknownId } from "../refuse.ts";
import type { WhiskeyRow } from "../rows.ts";
import { strengthOf } from "./shelf.ts";
import { whiskeyLabel } from "./shelf-names.ts";
import { usesOfWhiskey } from "./uses.ts";

type Routes = "listWhiskeys" | "addWhiskey" | "getWhiskey" | "editWhiskey" | "removeWhiskey";

export const whiskeyHandlers: Handlers<Routes> = {
  listWhiskeys: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      const words = (query.q ?? "").toLowerCase().split(/\s+/).filter(Boolean);
      const rows = await records.list("whiskey", at.household);
      const found = (row: WhiskeyRow) => {
        const text = whiskeyLabel(row).toLowerCase();
        return words.every((word) => text.includes(word));
      };
      return pageOf(query, matching(rows, found), shownWhiskey);
    }),

  addWhiskey: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      await knownHousehold(records, at.household);
      checkFacts(body);
      const row: WhiskeyRow = { ...born(house, at.household), ...body };
      await records.insert("whiskey", row);
      return shownWhiskey(row);
    }),

  getWhiskey: ({ house, at }) =>
    house.store.transaction(async (records) => {
      const id = at["whiskey"] ?? "";
      return shownWhiskey(
        (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]),
      );
    }),

  editWhiskey: ({ house, at, body }) =>
    house.store.transaction(async (records) => {
      const id = at["whiskey"] ?? "";
      const old = (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]);
      const { version, ...facts } = body;
      checkFacts(facts);
      const row = { ...edited(house, "whiskey", old, version), ...given(facts) };
      if (!(await records.replace("whiskey", row))) staleEdit("whiskey", version, row.version);
      return shownWhiskey(row);
    }),

  removeWhiskey: ({ house, at, query }) =>
    house.store.transaction(async (records) => {
      const id = at["whiskey"] ?? "";
      const old = (await records.find("whiskey", at.household, id)) ?? unknownId("whiskey", id, ["whiskey"]);
      if (old.version !== query.version) staleEdit("whiskey", query.version, old.version);
      const uses = await usesOfWhiskey(records, at.household, id);
      if (uses.length > 0) {
        refuse(409, {
          code: "whiskey_in_use",
          path: ["whiskey"],
          limit: "a whiskey that no bottle, recipe or flight uses",
          received: uses,
          message: `removing a whiskey requires one that nothing uses, got ${whiskeyLabel(old)}, used by ${uses.join(", ")}`,
        });
      }
      await records.remove("whiskey", at.household, id);
      return undefined;
    }),
};

function shownWhiskey({ householdId: _, kind, availability, grains, casks, ...row }: WhiskeyRow): Whiskey {
  const strength = abv20OfStrength(strengthOf(row.strength));
  return {
    ...row,
    kind: kind as Whiskey["kind"],
    availability: availability as Whiskey["availability"],
    grains: grains === null ? null : [...grains],
    casks: [...casks],
    abv20: strength,
    proof60F: row.strength.basis === "proof60F" ? row.strength.value : proof60FFromAbv20(strength),
  };
}

/** A grain bill is written in whole or half per cent, so it may miss 100 by a rounding. */
const GRAINS_OFF_BY = 0.5;

function checkFacts(facts: {
  readonly strength?: StatedStrength | undefined;
  readonly grains?: readonly GrainShare[] | null | undefined;
}): void {
  if (facts.strength?.value === 0) {
    refuse(422, {
      code: "strength_zero",
      path: ["strength", "value"],
      limit: "more than 0",
      received: 0,
      message: "strength of a whiskey requires more than 0, got 0",
    });
  }
  if (!facts.grains) return;
  const sum = facts.grains.reduce((all, { percent }) => all + percent, 0);
  // The last bit of a sum of decimals is not held against the writer: 99.5 may come to 99.49999999999999.
  if (Math.abs(sum - 100) > GRAINS_OFF_BY + 1e-9) {
    refuse(422, {
      code: "grains_not_100",
      path: ["grains"],
      limit: `shares that add up to 100 % within ${GRAINS_OFF_BY} %`,
      received: sum,
      message: `grain bill requires shares that add up to 100 % within ${GRAINS_OFF_BY} %, got ${Number(sum.toFixed(6))} %`,
    });
  }
}

/** Only the fields that were sent. */
function given<T extends object>(facts: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
