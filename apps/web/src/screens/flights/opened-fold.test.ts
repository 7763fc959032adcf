import type { LiveMessage } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { foldOpened, type Opened } from "./opened-fold.ts";

const told = (number: number): LiveMessage => ({
  kind: "event",
  seq: 1,
  at: "2031-10-11T19:00:00.000Z",
  what: "glass opened",
  sheetId: null,
  number,
});
const after = (here: Opened, counts: readonly number[]): Opened =>
  counts.reduce((so, count) => foldOpened(so, told(count)), here);

test("who only watches has open what the table tells", () => {
  expect(after({ open: 0, awaited: null }, [1, 2])).toStrictEqual({ open: 2, awaited: null });
  expect(after({ open: 5, awaited: null }, [0])).toStrictEqual({ open: 0, awaited: null });
});

test("what is told before one's own count comes back shuts nothing that one opened", () => {
  const opened: Opened = { open: 1, awaited: 1 };
  expect(foldOpened(opened, told(0))).toStrictEqual(opened);
  expect(after(opened, [0, 1])).toStrictEqual({ open: 1, awaited: null });
  expect(after(opened, [0, 1, 2])).toStrictEqual({ open: 2, awaited: null });
});
