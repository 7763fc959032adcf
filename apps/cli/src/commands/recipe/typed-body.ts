import type { BodyOf, RecipeBody } from "@partsproof/house/protocol";
import { type AtHousehold, findSlot } from "../../door/index.ts";
import {
  type GivenFlags,
  issueAt,
  many,
  one,
  readAnyText,
  readSlot,
  readStrength,
  readWhole,
  refuse,
  yes,
} from "../../flags/index.ts";

/** What a recipe says, as flags. */
export const bodyFlags = {
  slot: many(
    readSlot,
    "<parts>@<whiskey>",
    "again for each: whole parts of a whiskey or of a batch made before",
  ),
  "water-to": one(readStrength, "<strength>", "water to this strength after mixing"),
  "no-water": yes("no water"),
  rest: one(readWhole("rest", 0, 3650, "days"), "<days>", "how long it stands before it is judged"),
  "no-rest": yes("no rest asked"),
  oak: one(readAnyText, "<text>", "piece, toast, how long"),
  note: one(readAnyText, "<text>", "whatever else matters"),
};

type Given = GivenFlags<typeof bodyFlags>;
type Typed = Pick<NonNullable<BodyOf<"addRecipe">>, "slots" | "waterTo" | "restDays" | "oak" | "note">;

/** The body the flags tell of; what they leave out is as in `before`, the version that is revised. */
export async function typedBody(here: AtHousehold, flags: Given, before: RecipeBody | null): Promise<Typed> {
  refuseBoth(flags, "water-to", "no-water");
  refuseBoth(flags, "rest", "no-rest");
  if (flags.slot.length === 0 && before === null) {
    refuse(issueAt(["slot"], "flag_missing", "--slot <parts>@<whiskey>", null));
  }
  const slots = [];
  for (const [index, { parts, of }] of flags.slot.entries()) {
    slots.push({ parts, of: await findSlot(here, of, ["slot", index]) });
  }
  return {
    slots: slots.length === 0 ? (before?.slots ?? []) : slots,
    waterTo: flags["no-water"] ? null : (flags["water-to"] ?? before?.waterTo ?? null),
    restDays: flags["no-rest"] ? null : (flags.rest ?? before?.restDays ?? null),
    oak: flags.oak ?? before?.oak ?? "",
    note: flags.note ?? before?.note ?? "",
  };
}

function refuseBoth(flags: Given, some: "water-to" | "rest", none: "no-water" | "no-rest"): void {
  if (flags[some] === undefined || !flags[none]) return;
  refuse(issueAt([none], "flags_exclude", `no --${some} beside it`, `--${some} --${none}`));
}
