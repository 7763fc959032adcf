import { needed, readLevelAt, readStrength, readVolume } from "../../flags/index.ts";
import { printFill } from "../../print/reduced.ts";
import { reckoning } from "../command.ts";

export const fill = reckoning({
  name: "fill",
  says: "How much of a liquid fills a vessel exactly, contraction counted, and how strong it is then.",
  flags: {
    held: needed(readLevelAt, "<volume>@<strength>", "what is in it: 350ml@62.4"),
    with: needed(readStrength, "<strength>", "what it is filled with; water is 0"),
    vessel: needed(readVolume, "<volume>", "what it holds, at 20 °C"),
  },
  example: "fill --held 350ml@62.4 --with 46 --vessel 700ml",
  places: { held: "held", with: "with", vesselMl: "vessel" },
  run: async ({ held, with: added, vessel }, client) => {
    const json = await client("reckonFill", { body: { held, with: added, vesselMl: vessel } });
    return { json, text: () => printFill(json) };
  },
});
