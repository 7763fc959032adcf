export { keepUp, leftAt } from "./keep-up.ts";
export { compositionAt, courseOf, youngestAt } from "./course.ts";
export type { KeptUpPart } from "./course.ts";
export type { Addition, KeptUp, KeptUpStep, NotKeptUp } from "./step.ts";
