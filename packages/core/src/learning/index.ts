export { nextFlight } from "./next-flight.ts";
export type { FlightWanted, NextFlight, NextGlass } from "./next-flight.ts";
export { whatIf } from "./what-if.ts";
export type { WhatIf } from "./what-if.ts";
export type { StopAdvice } from "./stop-advice.ts";
export type { History } from "./learn-taste.ts";
export type { KnownWhiskey, Parts, TriedRanking, TriedRecipe } from "./recipe.ts";
export { keepsRules } from "./keeps-rules.ts";
export type { NextRules } from "./keeps-rules.ts";
