import {
  abv20FromMassFraction,
  massFractionFromAbv20,
  massFractionFromProof60F,
  proof60FFromMassFraction,
} from "@partsproof/core/alcoholometry";
import { abv20, type MassFraction, massFraction, proof60F } from "@partsproof/core/quantity";
import type { AnswerOf } from "@partsproof/house/protocol";
import { issueAt, one, readNumber, readStrengthOn, refuse } from "../../flags/index.ts";
import { printConvert } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";

export const convert = reckoning({
  name: "convert",
  says: "Strength by volume at 20 °C, US proof at 60 °F and per cent by mass, from any one of them.",
  flags: {
    abv: one(readStrengthOn("abv20"), "<% vol>", "per cent by volume at 20 °C"),
    proof: one(readStrengthOn("proof60F"), "<proof>", "US proof at 60 °F"),
    "mass-percent": one(readNumber("mass percent", 0, 100, "%"), "<%>", "per cent by mass"),
  },
  example: "convert --abv 40",
  run: (given) => {
    const p = theOne(given);
    const json: AnswerOf<"reckonConvert"> = {
      abv20: abv20FromMassFraction(p),
      proof60F: proof60FFromMassFraction(p),
      massPercent: 100 * p,
    };
    return { json, text: () => printConvert(json) };
  },
});

function theOne(given: {
  readonly abv: number | undefined;
  readonly proof: number | undefined;
  readonly "mass-percent": number | undefined;
}): MassFraction {
  const names = Object.entries(given).flatMap(([name, value]) => (value === undefined ? [] : [name]));
  const asked = ["abv", "proof", "mass-percent"].filter((name) => names.includes(name));
  const limit = "one of --abv, --proof and --mass-percent";
  if (asked.length === 0) refuse(issueAt([], "flag_missing", limit, null));
  if (asked.length > 1)
    refuse(issueAt([asked[1] ?? ""], "flags_exclude", limit, asked.map((n) => `--${n}`).join(" ")));
  if (given.abv !== undefined) return massFractionFromAbv20(abv20(given.abv));
  if (given.proof !== undefined) return massFractionFromProof60F(proof60F(given.proof));
  return massFraction((given["mass-percent"] ?? 0) / 100);
}
