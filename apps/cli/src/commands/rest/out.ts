import type { Rest } from "@partsproof/house/protocol";
import { issueAt, one, readVolume, readWhole, refuse, yes } from "../../flags/index.ts";
import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, dayFlag, findRest, momentOn } from "./of-batch.ts";

export const restOut = householdCommand({
  name: "rest out",
  says: "Take one piece of wood out, the others stay in; the rest goes on.",
  args: batchArg,
  flags: {
    piece: one(readWhole("piece", 1, 1000), "<number>", "which, as rest show numbers them"),
    count: one(readWhole("count", 1, 1000), "<number>", "how many of several like it, all where left out"),
    loss: one(readVolume, "<volume>", "lost with it, none where left out"),
    on: dayFlag,
    "still-in": yes("it is in still: takes back that it came out"),
  },
  example: 'rest out "First try" --piece 2',
  places: { lossMl: "loss", at: "on" },
  run: async ({ args, flags }, here) => {
    const rest = await findRest(here, args.batch);
    const still = flags["still-in"];
    const { id, version } = pieceOf(rest, flags.piece, still);
    const json = await here.client("takeOakOut", {
      at: { household: here.household.id, rest: rest.id, piece: id },
      body: {
        version,
        ...(flags.count === undefined ? {} : { count: flags.count }),
        ...(flags.loss === undefined ? {} : { lossMl: flags.loss }),
        ...(still ? { at: null } : momentOn(flags.on)),
      },
    });
    return { json, text: () => printRested(json, null) };
  },
});

/** The piece of this number, or the only one that can be meant. */
function pieceOf({ oak }: Rest, number: number | undefined, still: boolean): Rest["oak"][number] {
  if (number !== undefined) {
    const piece = oak[number - 1];
    return piece ?? refuse(issueAt(["piece"], "unknown_piece", `1 to ${oak.length}`, number));
  }
  const [only, ...more] = oak.filter(({ outAt }) => (outAt === null) !== still);
  if (only !== undefined && more.length === 0) return only;
  const limit =
    only === undefined
      ? `a piece that is ${still ? "out" : "in"}`
      : `--piece, ${oak.length === 1 ? "1" : `1 to ${oak.length}`} as rest show numbers them`;
  return refuse(issueAt(["piece"], "flag_missing", limit, null));
}
