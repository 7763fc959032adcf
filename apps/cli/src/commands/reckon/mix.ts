import { abv20OfStrength, mixParts } from "@partsproof/core/alcoholometry";
import { millilitres20 } from "@partsproof/core/quantity";
import { MixDraft, type MixResult } from "@partsproof/house/protocol";
import { issueAt, one, readPart, readVolume, refuse, some } from "../../flags/index.ts";
import { printMix } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";
import { asStrength } from "./as-strength.ts";

const DEFAULT_ML = 100;

export const mix = reckoning({
  name: "mix",
  says: "Parts and strengths in, strength and proof out, contraction counted.",
  flags: {
    part: some(readPart, "<parts>@<strength>", "again for each liquid; 2@62.4 or 2@124.8proof; water is 1@0"),
    volume: one(
      readVolume,
      "<volume>",
      `the sum poured, before contraction, at 20 °C; else ${DEFAULT_ML} ml`,
    ),
  },
  example: "mix --part 2@62.4 --part 1@46 --volume 750ml",
  run: ({ part, volume = DEFAULT_ML }) => {
    // How many parts a mix may have is the house's limit, not one of our own.
    if (!MixDraft.safeParse({ parts: part, volumeMl: volume }).success) {
      refuse(issueAt(["part"], "value_too_large", "at most 24 parts", part.length));
    }
    if (part.every(({ parts }) => parts === 0)) {
      refuse(issueAt(["part"], "parts_all_zero", "at least one part above 0", 0));
    }
    const whole = mixParts(
      part.map(({ parts, strength }) => ({ parts, abv20: abv20OfStrength(asStrength(strength)) })),
      millilitres20(volume),
    );
    const { abv20, proof60F, volumeMl, contractionMl, massG, naiveAbv20 } = whole;
    const json: MixResult = { abv20, proof60F, volumeMl, contractionMl, massG, naiveAbv20 };
    return { json, text: () => printMix(volume, json) };
  },
});
