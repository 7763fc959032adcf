import type { NextThing } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { dueNow, keyOf } from "./due-now.ts";

const thing = (kind: NextThing["kind"], at: string | null): NextThing => ({
  kind,
  text: "Taste November: day 9 on oak",
  at,
  subject: { kind: "batch", id: "0".repeat(26) },
});
const now = Date.parse("2026-11-12T09:00:00.000Z");

test("a day that has come is said once; one to come, one long past and what has no day are not", () => {
  const due = thing("check tasting due", "2026-11-10T12:00:00.000Z");
  const today = thing("flight planned", "2026-11-12T12:00:00.000Z");
  const things = [
    due,
    today,
    thing("pull window", "2026-11-13T12:00:00.000Z"),
    thing("batch rested", "2026-10-01T12:00:00.000Z"),
    thing("check tasting planned", "2026-11-11T12:00:00.000Z"),
    thing("check tasting due", null),
  ];
  expect(dueNow(things, new Set(), now)).toEqual([due, today]);
  expect(dueNow(things, new Set([keyOf(due)]), now)).toEqual([today]);
});
