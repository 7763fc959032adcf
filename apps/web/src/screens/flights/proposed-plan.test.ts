import { expect, test } from "vitest";
import { newPlan } from "./plan.ts";
import { proposedPlan } from "./proposed-plan.ts";

const pourable = (vesselId: string, nameId: string) => ({
  vesselId,
  label: vesselId,
  nameId,
  name: nameId,
  blend: false,
  abv20: 43,
  freeMl: 100,
  ethanolPerMl: 0.34,
});
const cupboard = {
  pourables: [pourable("a", "whiskey:1"), pourable("b", "batch:2")],
  names: new Map([["whiskey:1", { nameId: "whiskey:1", label: "One", freeMl: 100, ethanolPerMl: 0.34 }]]),
};
const plan = newPlan("26 November");

test("a proposed flight is filled in: what is on the shelf once, and the target where it is poured", () => {
  const filled = proposedPlan(plan, new URLSearchParams("pour=b,a,gone,b&towards=whiskey:1"), cupboard);
  expect(filled.pours).toEqual([
    { vesselId: "b", glasses: 1 },
    { vesselId: "a", glasses: 1 },
  ]);
  expect(filled).toMatchObject({ targetNameId: "whiskey:1", question: "how_close" });
});

test("a target that is in no glass is none; an address that proposes nothing changes nothing", () => {
  expect(proposedPlan(plan, new URLSearchParams("pour=b&towards=whiskey:1"), cupboard)).toMatchObject({
    targetNameId: null,
    question: plan.question,
  });
  expect(proposedPlan(plan, new URLSearchParams("pour=gone"), cupboard)).toBe(plan);
});
