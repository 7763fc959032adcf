import { batches } from "./batches.data.ts";
import { bench } from "./bench.data.ts";
import type { Entry } from "./entry.ts";
import { flights } from "./flights.data.ts";
import { oddEnds } from "./odd-ends.data.ts";
import { recipes } from "./recipes.data.ts";
import { shelf } from "./shelf.data.ts";

const minutesAgo = ({ at: [daysAgo, time] }: Entry): number => {
  const [hours, minutes] = time.split(":").map(Number);
  return daysAgo * 24 * 60 - (hours ?? 0) * 60 - (minutes ?? 0);
};

/** All that happened in the household, oldest first. */
export const diary: readonly Entry[] = [
  ...shelf,
  ...bench,
  ...oddEnds,
  ...recipes,
  ...batches,
  ...flights,
].toSorted((a, b) => minutesAgo(b) - minutesAgo(a));
