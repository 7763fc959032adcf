import { expect, test } from "vitest";
import type { Pourable } from "./cupboard.ts";
import { newPlan } from "./plan.ts";
import { withCarried } from "./with-carried.ts";

const pourables = ["a", "b", "c"].map(
  (vesselId) => ({ vesselId, nameId: `whiskey:${vesselId}` }) as Pourable,
);
const plan = newPlan("today");
const carried = (text: string) => withCarried(plan, new URLSearchParams(text), { pourables });

test("an address carries glasses, what is asked of them and a name", () => {
  expect(carried("glasses=c,a&question=like_best&name=Bench")).toMatchObject({
    name: "Bench",
    question: "like_best",
    pours: [
      { vesselId: "c", glasses: 1 },
      { vesselId: "a", glasses: 1 },
    ],
  });
});

test("what is not on the shelf, named twice or no question is left out", () => {
  expect(carried("glasses=x,a,a&question=tell_all").pours).toEqual([{ vesselId: "a", glasses: 1 }]);
  expect(carried("glasses=x&question=like_best&name=Bench")).toEqual(plan);
  expect(carried("")).toEqual(plan);
});

test("towards asks how close all come to a glass that is poured, and nothing where it is not", () => {
  expect(carried("glasses=c,a&towards=whiskey:a&name=Next")).toMatchObject({
    name: "Next",
    question: "how_close",
    targetNameId: "whiskey:a",
    pours: [
      { vesselId: "c", glasses: 1 },
      { vesselId: "a", glasses: 1 },
    ],
  });
  expect(carried("glasses=c,b&towards=whiskey:a").question).toBe(plan.question);
});
