import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient, NOTE_LONGEST } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");

test("a note is read with no household, and what was not spoken of is not there", async () => {
  const text = "Nose: a hint of smoke. Palate: plum, no, cherry, and no honey. Lovely.";
  const read = await client("readNote", { body: { text } });
  expect(read.observations.map(({ attribute, where, stance }) => [attribute, where, stance])).toEqual([
    ["smoke.smoke", "nose", "present"],
    ["fruit.stone", "palate", "present"],
    ["sweet.honey", "palate", "absent"],
  ]);
  expect(read.observations.map(({ quote }) => text.slice(...quote))).toEqual(["smoke", "cherry", "honey"]);
  expect(Object.keys(read.profile).toSorted()).toEqual(["fruit.stone", "smoke.smoke", "sweet.honey"]);
  expect(Object.keys(read.sections).toSorted()).toEqual(["nose", "palate"]);
  expect(read.remarks).toMatchObject([{ kind: "liking", liking: 1 }]);
});

test("the part of the sheet holds where the note names none", async () => {
  const read = await client("readNote", { body: { text: "oak", where: "finish" } });
  expect(read.observations[0]?.where).toBe("finish");
});

test("an empty note says nothing; one too long is refused", async () => {
  expect(await client("readNote", { body: { text: "" } })).toEqual({
    observations: [],
    profile: {},
    sections: {},
    remarks: [],
  });
  const refused = await refusalOf(client("readNote", { body: { text: "a".repeat(NOTE_LONGEST + 1) } }));
  expect(refused.issues[0]?.path).toEqual(["text"]);
});
