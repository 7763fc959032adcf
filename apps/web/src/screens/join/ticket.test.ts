import { Ticket } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { ticketInAddress, ticketTyped } from "./ticket.ts";

test("a join link's secret is read from behind the #, and nothing else is taken for one", () => {
  const link = "0123456789abcdef".repeat(4);
  expect(ticketInAddress(`#${link}`)).toEqual({ kind: "link", link });
  expect(Ticket.safeParse(ticketInAddress(`#${link}`)).success).toBe(true);
  for (const hash of ["", "#", `#${link}0`, `#${link.toUpperCase()}`, link]) {
    expect(ticketInAddress(hash)).toBeNull();
  }
});

test("a code is eight characters; spaces, hyphens and capitals do not matter", () => {
  for (const typed of ["ABCD-EFGH", "abcd efgh", " abcdefgh "]) {
    expect(ticketTyped(typed)).toEqual({ kind: "code", code: "ABCDEFGH" });
  }
  for (const typed of ["", "ABCD", "ABCD-EFGHI", "ABCD!EFG"]) expect(ticketTyped(typed)).toBeNull();
});
