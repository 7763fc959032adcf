export { nextFlight } from "./next-flight.ts";
export type { FlightWanted, NextFlight } from "./next-flight.ts";
export type { StopAdvice } from "./stop-advice.ts";
export type { History } from "./learn-taste.ts";
export type { KnownWhiskey, Parts, TriedRanking, TriedRecipe } from "./recipe.ts";
