import { parseStrength } from "@partsproof/core/quantity";
import type { Issue, Recipe, RecipeVersion, Slot } from "@partsproof/house/protocol";
import { statedAsTyped } from "../../figures/index.ts";
import { slotKey, slotOfKey } from "../../mixing/index.ts";

export interface TypedSlot {
  /** Steady while the slot moves about. */
  readonly id: number;
  readonly parts: number;
  /** As `slotKey`; "" where nothing is chosen yet. */
  readonly key: string;
  /** What else the line says: its rule, the reason for it, where it came from. It goes with the line, and its rule with another whiskey too. */
  readonly more?: Pick<Slot, "rule" | "reason" | "from">;
  /** Of an open slot: the whiskey that another house named. */
  readonly open?: Extract<Slot["of"], { kind: "open" }>;
}

/** A recipe as it is typed. */
export interface TypedRecipe {
  readonly name: string;
  /** "" for none. */
  readonly target: string;
  readonly slots: readonly TypedSlot[];
  readonly water: string;
  readonly rest: string;
  readonly oak: string;
  readonly note: string;
  /** Recipes it came from. */
  readonly lineage?: NonNullable<RecipeVersion["lineage"]>;
}

export const BLANK: TypedRecipe = {
  name: "",
  target: "",
  slots: [
    { id: 1, parts: 2, key: "" },
    { id: 2, parts: 1, key: "" },
  ],
  water: "",
  rest: "28",
  oak: "",
  note: "",
};

export function asTyped(recipe: Recipe): TypedRecipe {
  return { name: recipe.name, target: recipe.targetWhiskeyId ?? "", ...bodyAsTyped(recipe.latest) };
}

function bodyAsTyped(body: RecipeVersion): Omit<TypedRecipe, "name" | "target"> {
  return {
    slots: body.slots.map(({ parts, of, ...more }, i) => ({
      id: i + 1,
      parts,
      key: slotKey(of),
      more,
      ...(of.kind === "open" ? { open: of } : {}),
    })),
    water: body.waterTo === null ? "" : statedAsTyped(body.waterTo),
    rest: body.restDays === null ? "" : String(body.restDays),
    oak: body.oak,
    note: body.note,
    ...(body.lineage === undefined ? {} : { lineage: body.lineage }),
  };
}

export interface ReadBody {
  readonly slots: Slot[];
  readonly waterTo: RecipeVersion["waterTo"];
  readonly restDays: number | null;
  readonly oak: string;
  readonly note: string;
  readonly lineage?: NonNullable<RecipeVersion["lineage"]>;
}

/** Reads the parts of a recipe; what cannot be read comes back as issues with the paths the house would use. */
export function readBody(
  typed: TypedRecipe,
):
  | { readonly ok: true; readonly body: ReadBody }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const slots = typed.slots.map((slot, i): Slot => {
    if (slot.key === "") {
      const limit = "a whiskey or a batch";
      const message = `slot ${i + 1} requires ${limit}, got nothing`;
      issues.push({ code: "slot_empty", path: ["slots", i, "of"], limit, received: null, message });
    }
    return asSlot(slot);
  });
  const water = typed.water.trim() === "" ? null : parseStrength(typed.water);
  if (water?.ok === false) issues.push({ ...water.issue, path: ["waterTo"] });
  const rest = typed.rest.trim();
  if (rest !== "" && !/^\d{1,4}$/.test(rest)) {
    const limit = "whole days from 0 to 3650, or nothing";
    const message = `rest requires ${limit}, got "${rest}"`;
    issues.push({ code: "rest_unreadable", path: ["restDays"], limit, received: rest, message });
  }
  if (issues.length > 0) return { ok: false, issues };
  return {
    ok: true,
    body: {
      slots,
      waterTo: water?.ok === true ? water.value : null,
      restDays: rest === "" ? null : Number(rest),
      oak: typed.oak.trim(),
      note: typed.note,
      ...(typed.lineage === undefined ? {} : { lineage: [...typed.lineage] }),
    },
  };
}

/** The line as the house keeps it. */
export const asSlot = ({ parts, key, more, open }: TypedSlot): Slot => ({
  parts,
  of: key === "open" && open !== undefined ? open : slotOfKey(key),
  ...more,
});

/** Whether the parts, water, rest, oak or note differ: a change of these is a new version. */
export function isOtherBody(a: TypedRecipe, b: TypedRecipe): boolean {
  const body = ({ slots, water, rest, oak, note }: TypedRecipe): string =>
    JSON.stringify([slots.map(({ parts, key }) => [parts, key]), water, rest, oak, note]);
  return body(a) !== body(b);
}
