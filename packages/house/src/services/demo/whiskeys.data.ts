import { bourbonsAndGrains } from "./bourbons-and-grains.data.ts";
import { malts } from "./malts.data.ts";
import { potStills } from "./pot-stills.data.ts";
import { ryesAndWheats } from "./ryes-and-wheats.data.ts";
import type { WhiskeyFacts } from "./whiskey-facts.ts";

const all = { ...potStills, ...malts, ...ryesAndWheats, ...bourbonsAndGrains };

/** What the diary calls a whiskey. */
export type WhiskeyKey = keyof typeof all;
export const whiskeys: Readonly<Record<WhiskeyKey, WhiskeyFacts>> = all;
