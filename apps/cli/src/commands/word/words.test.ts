import type { AnswerOf, ProfileBoard, Word } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { cliAt, issuesOf } from "../../fixtures/cli.ts";

test("a word is taught, read by, changed and forgotten; a whiskey's profile is as the shelf has it", async () => {
  await using here = await cliAt();
  await here.ask("household", "add", "Kitchen table");
  await here.ask("taster", "add", "Ilka");
  const whose = ["--taster", "Ilka"];
  const taught: Word = await here.ask("word", "teach", "Grandad's Van", "--means", "wood.old", ...whose);
  expect(taught).toMatchObject({ phrase: "grandad's van", means: "wood.old", state: "in use" });
  expect(taught.history[0]?.taster).toBe("Ilka");
  const text = "a hint of grandad's van";
  type Read = AnswerOf<"readNote">;
  const plain: Read = await here.ask("read", text);
  expect(plain.observations).toEqual([]);
  const read: Read = await here.ask("read", text, "--household", "Kitchen table");
  expect(read.observations.map(({ attribute }) => attribute)).toEqual(["wood.old"]);
  const again = await here.run(["word", "teach", "grandad's van", "--means", "nothing", "--json"]);
  expect([again.code, issuesOf(again)[0]?.code]).toEqual([2, "word_taught"]);
  await here.ask("word", "teach", "grandad's van", "--means", "nothing", "--instead", "wood.old");
  const shown = await here.run(["word", "list"]);
  expect(shown.stdout).toMatch(/grandad's van +nothing/);
  const unknown = await here.run(["word", "teach", "shed", "--means", "wood.dusty", "--json"]);
  expect(issuesOf(unknown)[0]).toMatchObject({ code: "unknown_word", path: ["means"] });
  await here.ask("word", "forget", "grandad's van");
  expect(await here.ask("word", "list")).toMatchObject({ items: [{ means: null, state: "forgotten" }] });

  const barnDoor = ["--maker", "Dunnage Row", "--name", "Barn Door", "--strength", "62.4"];
  await here.ask("shelf", "add", ...barnDoor);
  const board: ProfileBoard = await here.ask("profile", "whiskey", "Barn Door");
  expect(board.headline).toMatch(/^Nothing is known yet of what .*Barn Door tastes of/);
});
