import { abv20OfStrength, waterToFill, waterToStrength } from "@partsproof/core/alcoholometry";
import { millilitres20 } from "@partsproof/core/quantity";
import type { ReduceResult } from "@partsproof/house/protocol";
import { issueAt, needed, one, readStrength, readVolume, refuse } from "../../flags/index.ts";
import { printReduce } from "../../print/reckoned.ts";
import { reckoning } from "../command.ts";
import { asStrength } from "./as-strength.ts";

export const reduce = reckoning({
  name: "reduce",
  says: "How much water takes a liquid down to a strength.",
  flags: {
    from: needed(readStrength, "<strength>", "what it has: 60 or 120proof"),
    to: needed(readStrength, "<strength>", "what it is to have"),
    volume: one(readVolume, "<volume>", "the liquid before water"),
    fill: one(readVolume, "<volume>", "instead of --volume: what is to come out in all"),
  },
  example: "reduce --from 60 --to 43 --volume 700ml",
  run: ({ from, to, volume, fill }) => {
    const ask = { from: abv20OfStrength(asStrength(from)), to: abv20OfStrength(asStrength(to)) };
    const json = reached(volume, fill, ask);
    return { json, text: () => printReduce(json) };
  },
});

type Ask = Pick<Parameters<typeof waterToFill>[0], "from" | "to">;

function reached(volume: number | undefined, fill: number | undefined, ask: Ask): ReduceResult {
  if (volume === undefined && fill === undefined) {
    refuse(issueAt(["volume"], "flag_missing", "--volume <volume> or --fill <volume>", null));
  }
  if (volume !== undefined && fill !== undefined) {
    refuse(issueAt(["fill"], "flags_exclude", "no --volume beside it", fill));
  }
  const result =
    volume === undefined
      ? waterToFill({ finalMl: millilitres20(fill ?? 0), ...ask })
      : { liquidMl: volume, ...waterToStrength({ volumeMl: millilitres20(volume), ...ask }) };
  if (!result.ok) {
    const { code, limit, received, message } = result.issue;
    refuse({ code, path: ["to"], limit: `${limit} % vol`, received, message });
  }
  const { liquidMl, waterMl, waterG, finalMl, naiveWaterMl } = result;
  return { liquidMl, waterMl, waterG, finalMl, naiveWaterMl };
}
