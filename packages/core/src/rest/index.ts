export { openRest } from "./open-rest.ts";
export type { LevelBelief, RestBelief } from "./open-rest.ts";
export type { CheckTasting, Conditions, Course, Form, RestSettings, WoodIn } from "./question.ts";
export type { Window } from "./likely-window.ts";
export type { TellingDay } from "./telling-days.ts";
export { EFFECTS, HORIZON_DAYS, PRIORS, REFERENCE } from "./priors.data.ts";
export { MOST_PIECES } from "./question.ts";
