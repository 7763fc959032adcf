import type { Entry } from "./entry.ts";
import type { Play } from "./play.ts";
import { playBatch, playRemark } from "./play-batch.ts";
import { playFlight } from "./play-flight.ts";
import { playPour, playUndo } from "./play-pour.ts";
import { playCheck, playOak } from "./play-rest.ts";
import { playRecipe, playVersion } from "./play-recipe.ts";
import { playBottle, playVessel } from "./play-shelf.ts";

/** Plays the diary's lines, each at its time. */
export async function playDiary(play: Play, diary: readonly Entry[]): Promise<void> {
  for (const entry of diary) {
    play.clock.goTo(entry.at);
    await playEntry(play, entry);
  }
}

function playEntry(play: Play, entry: Entry): Promise<void> {
  switch (entry.does) {
    case "shelve":
      return playBottle(play, entry);
    case "set out":
      return playVessel(play, entry);
    case "pour":
      return playPour(play, entry);
    case "undo":
      return playUndo(play, entry);
    case "write":
      return playRecipe(play, entry);
    case "rewrite":
      return playVersion(play, entry);
    case "make":
      return playBatch(play, entry);
    case "remark":
      return playRemark(play, entry);
    case "lay":
      return playOak(play, entry);
    case "check":
      return playCheck(play, entry);
    case "taste":
      return playFlight(play, entry);
  }
}
