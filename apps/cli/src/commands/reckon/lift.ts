import { issueAt, many, needed, one, readStrength, readVolume, refuse } from "../../flags/index.ts";
import { printLift } from "../../print/reduced.ts";
import { reckoning } from "../command.ts";
import { field } from "./instrument-flags.ts";

export const lift = reckoning({
  name: "lift",
  says: "Which second bottle, and how much of it, takes this one to a strength.",
  flags: {
    from: needed(readStrength, "<strength>", "what it has"),
    volume: needed(readVolume, "<volume>", "how much there is of it, at 20 °C"),
    to: needed(readStrength, "<strength>", "what it is to have"),
    with: many(readStrength, "<strength>", "again for each bottle at hand"),
    room: one(readVolume, "<volume>", "how much can be added: says how strong it would have to be"),
  },
  example: "lift --from 46 --volume 350ml --to 58 --with 62.4 --with 60",
  places: { from: "from", to: "to", with: "with", volumeMl: "volume", roomMl: "room" },
  run: async ({ from, volume, to, with: bottles, room }, client) => {
    if (bottles.length === 0 && room === undefined) {
      refuse(issueAt(["with"], "flag_missing", "--with <strength> or --room <volume>", null));
    }
    const body = { from, volumeMl: volume, to, with: [...bottles], ...field("roomMl", room) };
    const json = await client("reckonLift", { body });
    return { json, text: () => printLift(json) };
  },
});
